// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/heading.h"
#include "core/shop/measured_edge.h"
#include "core/shop/step_text.h"

namespace kerfwall {
namespace {

/// The edge a line is laid from, where that is one.
std::optional<Edge> edgeLaidFrom(const Place& place) {
    const Base* base = nullptr;
    if (const ByOffset* offset = std::get_if<ByOffset>(&place)) base = &offset->from;
    if (const ByAngle* angle = std::get_if<ByAngle>(&place)) base = &angle->from;
    const Edge* edge = base ? std::get_if<Edge>(base) : nullptr;
    return edge ? std::optional(*edge) : std::nullopt;
}

std::string laidWords(const Project& project, const Place& place) {
    if (const ByOffset* offset = std::get_if<ByOffset>(&place)) {
        return lengthWords(project, std::abs(offset->distance)) + " from";
    }
    return "by an angle of " + degreesText(std::get<ByAngle>(place).angle) + " to";
}

std::string remedyWords(const Project& project, const SolvedLine& line, const Place& place, Edge from) {
    const Panel& panel = project.panel;
    std::string words = from == oppositeOf(panel.referenceEdge)
                            ? "Check that all four corners are true, measure both sizes and say so"
                            : "Check the " + cornerWord(panel.referenceEdge, from) + " with a square and say that it is true";
    const Edge other = oppositeOf(from);
    if (std::holds_alternative<ByOffset>(place) && isMeasuredFrom(panel, other)) {
        words += ", or lay " + line.id + " " + lengthWords(project, distanceFromEdge(panel, other, line.from)) + " from the " +
                 edgeWord(other) + " edge";
    }
    return words + ".";
}

}  // namespace

std::vector<Finding> edgeFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    for (const SolvedLine& line : solved.lines) {
        if (line.index >= project.lines.size()) continue;
        const Place& place = project.lines[line.index].place;
        const auto from = edgeLaidFrom(place);
        if (!from || isMeasuredFrom(project.panel, *from)) continue;
        Finding& finding = all.emplace_back();
        finding.code = "edge-untrue";
        finding.severity = Severity::Care;
        finding.at = 0.5 * (line.from + line.to);
        finding.lines = {line.id};
        finding.text = line.id + " is laid " + laidWords(project, place) + " the " + edgeWord(*from) +
                       " edge, which is not said to be true. " + remedyWords(project, line, place, *from);
    }
    return all;
}

}  // namespace kerfwall

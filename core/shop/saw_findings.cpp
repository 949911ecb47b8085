// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/geometry/edge_place.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/heading.h"
#include "core/shop/kerf_steps.h"
#include "core/shop/limits.h"
#include "core/shop/saw_limit.h"
#include "core/shop/step_text.h"
#include "core/shop/word_list.h"

namespace kerfwall {
namespace {

AskedCut askedCut(const SolvedLine& line, const Kerf& kerf) { return {line.from, line.to, kerf.depth, kerf.stopped}; }

Finding beyondBench(const SolvedLine& line) {
    Finding finding;
    finding.code = "bench-limit";
    finding.severity = Severity::Stop;
    finding.at = 0.5 * (line.from + line.to);
    finding.lines = {line.id};
    return finding;
}

Finding withoutSaw(const Project& project, const SolvedLine& line, const Kerf& kerf) {
    Finding finding = beyondBench(line);
    finding.text = "No saw on the bench can cut the kerf of " + line.id + "; it is drawn " +
                   lengthWords(project, kerf.width) + " wide.";
    for (const Saw& saw : benchOf(project).saws) {
        if (const auto beyond = limitBeyond(saw, askedCut(line, kerf), project.panel)) {
            finding.text += " " + saw.id + ": " + limitWords(project, saw, *beyond) + ".";
        }
    }
    finding.text += " Add a saw that reaches " + atLeastWords(project, distance(line.from, line.to)) +
                    " along this line, or lay the line along or square to the reference edge.";
    return finding;
}

/// What saw would do: one that has what this one lacks.
std::string otherSawWords(const Project& project, const SolvedLine& line, const BeyondSaw& beyond) {
    const std::string asked = beyond.limit == SawLimit::Angle ? degreesText(beyond.asked.value_or(0))
                                                              : atLeastWords(project, beyond.asked.value_or(0));
    switch (beyond.limit) {
        case SawLimit::CannotStop:
            return "a saw that can stop, or let the kerf run through, " +
                   lengthWords(project, distance(line.from, line.to));
        case SawLimit::Direction:
            return "another saw for its " + lengthWords(project, distance(line.from, line.to));
        case SawLimit::Blade:
            return "one with a blade wider than " + asked + ", or saw less deep";
        case SawLimit::Fence:
        case SawLimit::Cut:
        case SawLimit::Angle:
        case SawLimit::Rail:
            break;
    }
    return "one that reaches " + asked + ", or another kind of saw";
}

Finding beyondNamedSaw(const Project& project, const SolvedLine& line, const Saw& saw, const BeyondSaw& beyond) {
    Finding finding = beyondBench(line);
    finding.value = beyond.asked;
    finding.limit = beyond.most;
    if (beyond.asked) finding.unit = beyond.limit == SawLimit::Angle ? "°" : "mm";
    finding.text = "Saw " + saw.id + " cannot cut " + line.id + ": " + limitWords(project, saw, beyond) +
                   ". Take " + otherSawWords(project, line, beyond) + ".";
    return finding;
}

/// The edge that would have to lie on the fence, were it true; none where that would not help.
std::optional<Edge> edgeThatWouldServe(const Saw& saw, const AskedCut& cut, Panel panel) {
    panel.squareCorner = SquareCorner::All;
    const std::vector<Edge> edges = trueEdges(panel);
    const auto edge = std::ranges::find_if(edges, [&](Edge each) { return reaches(saw, cut, each, panel); });
    return edge == edges.end() ? std::nullopt : std::optional(*edge);
}

Finding againstUntrueEdge(const SolvedLine& line, const Saw& saw, Edge against) {
    Finding finding;
    finding.code = "edge-untrue";
    finding.severity = Severity::Care;
    finding.at = 0.5 * (line.from + line.to);
    finding.lines = {line.id};
    finding.text = "On saw " + saw.id + ", " + line.id + " would be cut against the " + edgeWord(against) +
                   " edge, which is not said to be true. True all four corners to 90° and say so, with both sizes "
                   "measured, or cut " +
                   line.id + " with another saw.";
    return finding;
}

void addBeyond(std::vector<Finding>& all, const Project& project, const Solved& solved, const PlannedKerf& planned) {
    const SolvedLine& line = solved.lines[planned.line];
    const Kerf& kerf = line.kerfs[planned.kerf];
    if (!planned.way.saw) {
        all.push_back(withoutSaw(project, line, kerf));
        return;
    }
    const Saw& saw = benchOf(project).saws[*planned.way.saw];
    const AskedCut cut = askedCut(line, kerf);
    if (const auto beyond = limitBeyond(saw, cut, project.panel)) {
        all.push_back(beyondNamedSaw(project, line, saw, *beyond));
        if (const auto edge = edgeThatWouldServe(saw, cut, project.panel)) {
            all.push_back(againstUntrueEdge(line, saw, *edge));
        }
    }
}

struct OnFence {
    std::size_t saw = 0;
    Edge against = Edge::Bottom;
    std::vector<LineId> lines;
};

/// The kerfs cut on rip fences, by saw and edge.
std::vector<OnFence> onFences(const Bench& bench, const Solved& solved, const std::vector<PlannedKerf>& planned) {
    std::vector<OnFence> all;
    for (const PlannedKerf& kerf : planned) {
        const Way& way = kerf.way;
        if (way.beyondSaw || !way.saw || !way.against || bench.saws[*way.saw].kind != SawKind::RipFence) continue;
        auto at = std::ranges::find_if(
            all, [&](const OnFence& on) { return on.saw == *way.saw && on.against == *way.against; });
        if (at == all.end()) at = all.insert(all.end(), {*way.saw, *way.against, {}});
        const LineId& id = solved.lines[kerf.line].id;
        if (std::ranges::find(at->lines, id) == at->lines.end()) at->lines.push_back(id);
    }
    return all;
}

std::optional<Finding> smallStock(const Project& project, const OnFence& on) {
    const double edge = edgeLength(project.panel, on.against);
    const double across = edgeLength(project.panel, nextOf(on.against));
    LimitPair limits = limitsOf("small-stock", project);
    const auto own = project.limits.find("small-stock");
    const bool careIsOwn = own != project.limits.end() && own->second.care;
    if (!careIsOwn) limits.care = std::max(limits.care.value_or(0), across);
    const auto crossed = crossedBelow(edge, limits);
    if (!crossed) return std::nullopt;
    Finding finding;
    finding.code = "small-stock";
    finding.severity = crossed->severity;
    finding.at = markPlace(project.panel, {on.against, edge / 2});
    finding.lines = on.lines;
    finding.value = edge;
    finding.limit = crossed->limit;
    finding.unit = "mm";
    const bool byShape = crossed->severity == Severity::Care && crossed->limit == across;
    finding.text = "At saw " + benchOf(project).saws[on.saw].id + " only " + lengthWords(project, edge) +
                   " of the panel lie on the rip fence, less than " + lengthWords(project, crossed->limit) +
                   (byShape ? ", its size across" : "") + ": it is hard to hold there. Cut " + listText(on.lines) +
                   " with a saw that has the panel clamped, or take a panel with an edge of " +
                   atLeastWords(project, std::max(*limits.care, limits.stop.value_or(0))) +
                   " or more and cut it down last.";
    return finding;
}

}  // namespace

std::vector<Finding> sawFindings(const Project& project, const Solved& solved) {
    const std::vector<PlannedKerf> planned = plannedKerfs(project, solved);
    std::vector<Finding> found;
    for (std::size_t i = 0; i < solved.lines.size(); ++i) {
        const auto beyond = std::ranges::find_if(
            planned, [&](const PlannedKerf& kerf) { return kerf.line == i && kerf.way.beyondSaw; });
        if (beyond != planned.end()) addBeyond(found, project, solved, *beyond);
    }
    for (const OnFence& on : onFences(benchOf(project), solved, planned)) {
        addFinding(found, smallStock(project, on));
    }
    return found;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/measurable.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/shop/heading.h"
#include "core/shop/measured.h"
#include "core/shop/step_way.h"

namespace kerfwall {

namespace {

/// Drawn sizes are told without what was lost in working them out, to 1 nm.
double tidy(double mm) { return std::round(mm * 1e6) / 1e6; }

/// The edge the line's wall is set from; the reference edge where it is cut to marks.
Edge setFrom(const Project& project, const OrderOfWork& order, const SolvedLine& line) {
    const WorkStep* step = stepCutting(order, line.id, line.kerfs.front().side);
    if (step != nullptr && step->setting.stop && step->stopEdge) {
        return *step->stopEdge;
    }
    return step != nullptr && step->against ? *step->against : project.panel.referenceEdge;
}

void addFromEdges(std::vector<Record>& all, const Project& project, const OrderOfWork& order, const SolvedLine& line) {
    const Edge first = setFrom(project, order, line);
    for (const Edge edge : {first, oppositeOf(first), nextOf(first), previousOf(first)}) {
        if (headingFrom(edge, line.from, line.to) == Heading::Along) {
            Record entry;
            entry.line = {line.id, edge};
            entry.measured = tidy(distanceFromEdge(project.panel, edge, line.from));
            all.push_back(entry);
        }
    }
}

/// Once for a pair, whichever way round.
void addOnce(std::vector<Record>& all, const Record& entry) {
    if (std::ranges::none_of(all, [&](const Record& each) { return measureTheSame(each, entry); })) {
        all.push_back(entry);
    }
}

}  // namespace

std::vector<Record> measurables(const Project& project, const Solved& solved, const OrderOfWork& order) {
    std::vector<Record> all;
    for (const SolvedLine& line : solved.lines) {
        if (wasteSide(line)) {
            addFromEdges(all, project, order, line);
        }
    }
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const FacingSize& size : cutout.sizes) {
            Record entry;
            entry.between = {size.first, size.second};
            entry.measured = tidy(size.distance);
            addOnce(all, entry);
        }
        for (const Corner& corner : cutout.corners) {
            if (corner.boreRadius) {
                Record entry;
                entry.bore = {corner.first, corner.second};
                entry.measured = 2 * *corner.boreRadius;
                addOnce(all, entry);
            }
        }
    }
    return all;
}

}  // namespace kerfwall

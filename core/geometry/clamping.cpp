// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/clamping.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/edge_place.h"

namespace kerfwall {
namespace {

constexpr double kUsualHole = 8;    // mm; common practice, no source
constexpr double kWoodBeside = 3.5;  // mm above and below a hole; common practice, no source
constexpr double kLeastHole = 3;     // mm; a thinner drill wanders
constexpr double kUsualDepth = 50;  // mm; common practice, no source

/// The mark nearest to a place, on whole steps from the end a maker measures from.
EdgeMark steppedMark(const Panel& panel, Point place, double step) {
    EdgeMark mark = nearestMark(panel, place);
    mark.at = std::clamp(std::round(mark.at / step) * step, 0.0, edgeLength(panel, mark.edge));
    return mark;
}

/// The corner drill, or what the panel's thickness can bear where that is less.
double usualHole(const Project& project) {
    const double bears = project.panel.thickness - 2 * kWoodBeside;
    return std::max(kLeastHole, std::min(benchOf(project).cornerDrill.value_or(kUsualHole), bears));
}

}  // namespace

ClampHole clampHoleAt(const Project& project, Point place, double step) {
    const Bench& bench = benchOf(project);
    const EdgeMark mark = steppedMark(project.panel, place, step);
    ClampHole hole;
    hole.edge = mark.edge;
    hole.at = mark.at;
    hole.diameter = bench.clamps.empty() ? usualHole(project) : bench.clamps.front().hole;
    const bool hasInsert = !bench.clamps.empty() && bench.clamps.front().insert > 0;
    const bool level = mark.edge == Edge::Left || mark.edge == Edge::Right;
    const double across = level ? project.panel.width : project.panel.height;
    hole.depth = std::min(hasInsert ? bench.clamps.front().insert : kUsualDepth, across / 2);
    return hole;
}

Project withHoleAt(const Project& project, std::size_t hole, Point place, double step) {
    Project next = project;
    const EdgeMark mark = steppedMark(project.panel, place, step);
    next.clampHoles.at(hole).edge = mark.edge;
    next.clampHoles.at(hole).at = mark.at;
    return next;
}

Project withHoleMoved(const Project& project, std::size_t hole, Point shift) {
    Project next = project;
    ClampHole& moved = next.clampHoles.at(hole);
    moved.at = std::clamp(moved.at + dot(shift, edgeHeading(moved.edge)), 0.0, edgeLength(project.panel, moved.edge));
    return next;
}

}  // namespace kerfwall

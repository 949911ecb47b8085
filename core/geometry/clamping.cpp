// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/clamping.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/geometry/nearest.h"
#include "core/geometry/whole_step.h"

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

/// How far it is from an edge to the opposite one.
double across(const Panel& panel, Edge edge) {
    return edge == Edge::Left || edge == Edge::Right ? panel.width : panel.height;
}

double blindDepth(const Panel& panel, Edge edge, double depth) {
    return std::clamp(depth, kLeastDepth, across(panel, edge) - kLeastDepth);
}

}  // namespace

std::vector<HoleKind> holesAtHand(const Project& project) {
    const Bench& bench = benchOf(project);
    std::vector<HoleKind> kinds;
    for (std::size_t i = 0; i < bench.clamps.size(); ++i) {
        const Clamp& clamp = bench.clamps[i];
        if (clamp.hole < kLeastHole) continue;  // it clamps without a hole
        kinds.push_back({clamp.hole, clamp.insert > 0 ? clamp.insert : kUsualDepth, i});
    }
    kinds.push_back({usualHole(project), kUsualDepth, {}});
    return kinds;
}

ClampHole clampHoleFor(const Project& project, const HoleWish& wish) {
    const Panel& panel = project.panel;
    const EdgeMark mark = wish.edge ? markOnEdge(panel, *wish.edge, wish.place) : nearestMark(panel, wish.place);
    ClampHole hole;
    hole.edge = mark.edge;
    hole.at = std::clamp(stepped(mark.at, wish.step), 0.0, edgeLength(panel, mark.edge));
    hole.diameter = wish.kind.diameter;
    hole.depth = std::min(wish.kind.depth, across(panel, mark.edge) / 2);
    const bool drilled = wish.edge && distanceFromEdge(panel, mark.edge, wish.place) > wish.reach;
    if (drilled) hole.depth = depthAt(project, mark.edge, wish.place, wish.step, wish.step);
    return hole;
}

std::optional<NearHole> holeGripNear(const Project& project, Point place, double reach) {
    const auto hole = holeNear(project, place, reach);
    if (!hole) return std::nullopt;
    const ClampHole& of = project.clampHoles[*hole];
    const double toPoint = std::abs(of.depth - distanceFromEdge(project.panel, of.edge, place));
    return NearHole{*hole, toPoint <= std::min(reach, of.depth / 2) ? HoleGrip::Point : HoleGrip::Whole};
}

double depthAt(const Project& project, Edge edge, Point place, double step, double hold) {
    const double in = distanceFromEdge(project.panel, edge, place);
    double depth = stepped(in, step);
    double nearest = hold;
    for (const Clamp& clamp : benchOf(project).clamps) {
        const double away = std::abs(clamp.insert - in);
        if (clamp.insert <= 0 || away > nearest) continue;
        nearest = away;
        depth = clamp.insert;
    }
    return blindDepth(project.panel, edge, depth);
}

Project withHoleDepth(const Project& project, std::size_t hole, double depth) {
    Project next = project;
    ClampHole& drilled = next.clampHoles.at(hole);
    drilled.depth = blindDepth(project.panel, drilled.edge, depth);
    return next;
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

Project withHoleNudged(const Project& project, std::size_t hole, Point shift) {
    const ClampHole& of = project.clampHoles.at(hole);
    const double deeper = dot(shift, leftOf(edgeHeading(of.edge)));
    return withHoleDepth(withHoleMoved(project, hole, shift), hole, of.depth + deeper);
}

}  // namespace kerfwall

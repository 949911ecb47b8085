// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/heading.h"

#include <array>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/geometry/edge_place.h"

namespace kerfwall {

namespace {

Edge turned(Edge edge, std::size_t quarters) {
    return kEdges.at((static_cast<std::size_t>(edge) + quarters) % kEdges.size());
}

}  // namespace

Edge oppositeOf(Edge edge) { return turned(edge, 2); }
Edge nextOf(Edge edge) { return turned(edge, 1); }
Edge previousOf(Edge edge) { return turned(edge, 3); }

double alongFrom(Edge edge, Point place, const Panel& panel) {
    return distanceFromEdge(panel, previousOf(edge), place);
}

Heading headingFrom(Edge edge, Point from, Point to) {
    const Point run = to - from;
    const Point direction = edgeHeading(edge);
    if (std::abs(cross(direction, run)) < kSameHeading) {
        return Heading::Along;
    }
    return std::abs(dot(direction, run)) < kSameHeading ? Heading::Square : Heading::Askew;
}

double leanFrom(Edge edge, Point from, Point to) {
    const Point direction = edgeHeading(edge);
    const double along = dot(direction, to - from);
    const double inward = cross(direction, to - from);
    if (std::abs(inward) < kSameHeading) {
        return 90;
    }
    return degrees(std::atan2(inward < 0 ? along : -along, std::abs(inward)));
}

std::vector<Edge> trueEdges(const Panel& panel) {
    const Edge reference = panel.referenceEdge;
    if (panel.squareCorner != SquareCorner::All) {
        return {reference};
    }
    return {reference, oppositeOf(reference), previousOf(reference), nextOf(reference)};
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/heading.h"

#include <array>
#include <cmath>
#include <numbers>

namespace kerfwall {

namespace {

Edge turned(Edge edge, std::size_t quarters) {
    return kEdges.at((static_cast<std::size_t>(edge) + quarters) % kEdges.size());
}

}  // namespace

Point directionOf(Edge edge) {
    switch (edge) {
        case Edge::Bottom:
            return {1, 0};
        case Edge::Right:
            return {0, 1};
        case Edge::Top:
            return {-1, 0};
        case Edge::Left:
            break;
    }
    return {0, -1};
}

Point startOf(Edge edge, const Panel& panel) {
    switch (edge) {
        case Edge::Bottom:
            return {0, 0};
        case Edge::Right:
            return {panel.width, 0};
        case Edge::Top:
            return {panel.width, panel.height};
        case Edge::Left:
            break;
    }
    return {0, panel.height};
}

double lengthOf(Edge edge, const Panel& panel) {
    return edge == Edge::Bottom || edge == Edge::Top ? panel.width : panel.height;
}

Edge oppositeOf(Edge edge) { return turned(edge, 2); }
Edge nextOf(Edge edge) { return turned(edge, 1); }
Edge previousOf(Edge edge) { return turned(edge, 3); }

double depthFrom(Edge edge, Point place, const Panel& panel) {
    switch (edge) {
        case Edge::Bottom:
            return place.y;
        case Edge::Right:
            return panel.width - place.x;
        case Edge::Top:
            return panel.height - place.y;
        case Edge::Left:
            break;
    }
    return place.x;
}

double alongFrom(Edge edge, Point place, const Panel& panel) {
    return depthFrom(previousOf(edge), place, panel);
}

Heading headingFrom(Edge edge, Point from, Point to) {
    const Point run = to - from;
    const Point direction = directionOf(edge);
    if (std::abs(cross(direction, run)) < kSameHeading) {
        return Heading::Along;
    }
    return std::abs(dot(direction, run)) < kSameHeading ? Heading::Square : Heading::Askew;
}

double leanFrom(Edge edge, Point from, Point to) {
    const Point direction = directionOf(edge);
    const double along = dot(direction, to - from);
    const double inward = cross(direction, to - from);
    if (std::abs(inward) < kSameHeading) {
        return 90;
    }
    return std::atan2(inward < 0 ? along : -along, std::abs(inward)) * 180 / std::numbers::pi;
}

std::vector<Edge> trueEdges(const Panel& panel) {
    const Edge reference = panel.referenceEdge;
    if (panel.squareCorner != SquareCorner::All) {
        return {reference};
    }
    return {reference, oppositeOf(reference), previousOf(reference), nextOf(reference)};
}

}  // namespace kerfwall

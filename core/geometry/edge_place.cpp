// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/edge_place.h"

#include <algorithm>
#include <cmath>

namespace kerfwall {

double edgeLength(const Panel& panel, Edge edge) {
    return edge == Edge::Bottom || edge == Edge::Top ? panel.width : panel.height;
}

Point edgeHeading(Edge edge) {
    switch (edge) {
        case Edge::Bottom: return {1, 0};
        case Edge::Right: return {0, 1};
        case Edge::Top: return {-1, 0};
        case Edge::Left: return {0, -1};
    }
    return {1, 0};
}

Point markPlace(const Panel& panel, const EdgeMark& mark) {
    switch (mark.edge) {
        case Edge::Bottom: return {mark.at, 0};
        case Edge::Right: return {panel.width, mark.at};
        case Edge::Top: return {panel.width - mark.at, panel.height};
        case Edge::Left: return {0, panel.height - mark.at};
    }
    return {};
}

EdgeMark markOnEdge(const Panel& panel, Edge edge, Point place) {
    const Point start = markPlace(panel, {edge, 0});
    const double at = dot(place - start, edgeHeading(edge));
    return {edge, std::clamp(at, 0.0, edgeLength(panel, edge))};
}

EdgeMark nearestMark(const Panel& panel, Point place) {
    EdgeMark best = markOnEdge(panel, Edge::Bottom, place);
    for (const Edge edge : kEdges) {
        const EdgeMark mark = markOnEdge(panel, edge, place);
        if (distance(markPlace(panel, mark), place) < distance(markPlace(panel, best), place)) best = mark;
    }
    return best;
}

double distanceFromEdge(const Panel& panel, Edge edge, Point place) {
    switch (edge) {
        case Edge::Bottom: return place.y;
        case Edge::Right: return panel.width - place.x;
        case Edge::Top: return panel.height - place.y;
        case Edge::Left: return place.x;
    }
    return 0;
}

bool liesOnPanel(const Panel& panel, Point place, double slack) {
    return place.x >= -slack && place.x <= panel.width + slack && place.y >= -slack &&
           place.y <= panel.height + slack;
}

Edge squareEdge(const Panel& panel) {
    const auto index = static_cast<std::size_t>(panel.referenceEdge);
    const std::size_t turn = panel.squareCorner == SquareCorner::End ? 1 : 3;
    return kEdges.at((index + turn) % 4);
}

}  // namespace kerfwall

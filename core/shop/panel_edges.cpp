// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/panel_edges.h"

#include <algorithm>

#include "core/geometry/distance.h"
#include "core/geometry/edge_name.h"
#include "core/geometry/edge_place.h"

namespace kerfwall {

OutlinePiece edgePiece(const Panel& panel, Edge edge) {
    return straight(markPlace(panel, {edge, 0}), markPlace(panel, {edge, edgeLength(panel, edge)}));
}

OutlinePiece axisOf(const Panel& panel, const ClampHole& hole) {
    const OutlinePiece edge = edgePiece(panel, hole.edge);
    const Point along = unit(edge.to - edge.from);
    const Point mouth = edge.from + hole.at * along;
    return straight(mouth, mouth + hole.depth * leftOf(along));
}

double heightOf(const Panel& panel, const ClampHole& hole) {
    return hole.height.value_or(panel.thickness / 2);
}

bool liesOnEdge(const OutlinePiece& piece) {
    return std::ranges::any_of(kEdges, [&](Edge edge) { return piece.on == edgeName(edge); });
}

}  // namespace kerfwall

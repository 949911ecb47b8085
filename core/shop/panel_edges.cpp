// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/panel_edges.h"

#include "core/geometry/distance.h"

namespace kerfwall {

OutlinePiece edgePiece(const Panel& panel, Edge edge) {
    const Point bottomLeft{0, 0};
    const Point bottomRight{panel.width, 0};
    const Point topRight{panel.width, panel.height};
    const Point topLeft{0, panel.height};
    switch (edge) {
        case Edge::Bottom:
            return straight(bottomLeft, bottomRight);
        case Edge::Right:
            return straight(bottomRight, topRight);
        case Edge::Top:
            return straight(topRight, topLeft);
        case Edge::Left:
            return straight(topLeft, bottomLeft);
    }
    return {};
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

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/inset.h"

#include <algorithm>
#include <optional>

#include "core/geometry/edge_name.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/panel_clip.h"
#include "core/geometry/rolling.h"

namespace kerfwall {
namespace {

std::optional<Edge> edgeUnder(const OutlinePiece& piece) {
    const auto edge = std::ranges::find(kEdges, piece.on, [](Edge is) { return std::string(edgeName(is)); });
    return edge == kEdges.end() ? std::nullopt : std::optional(*edge);
}

/// The loop's corners, those on a panel edge carried out of the panel by `away`: there is no wood there.
///
///     +-------+        a corner between two stretches on edges goes out both ways
///     |  off  |
///  ---+       +---     panel edge
///      \ in  /
std::vector<Point> cornersOffPanel(const OutlineLoop& loop, double away) {
    std::vector<Point> corners;
    const auto out = [away](Edge edge) { return -away * leftOf(edgeHeading(edge)); };
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const auto before = edgeUnder(loop[(i + loop.size() - 1) % loop.size()]);
        const auto after = edgeUnder(loop[i]);
        const Point at = loop[i].from;
        if (before && after && *before != *after) {
            corners.push_back(at + out(*before) + out(*after));
        } else if (after && !before) {
            corners.insert(corners.end(), {at, at + out(*after)});
        } else if (before && !after) {
            corners.insert(corners.end(), {at + out(*before), at});
        } else if (!before) {
            corners.push_back(at);
        }
    }
    return corners;
}

OutlinePiece pieceOf(const Curve& curve, const std::optional<Edge>& edge) {
    OutlinePiece piece;
    piece.isArc = curve.isArc;
    piece.from = curve.from;
    piece.to = curve.to;
    piece.centre = curve.centre;
    piece.radius = curve.radius;
    if (curve.isArc) piece.turn = curve.anticlockwise ? Turn::Left : Turn::Right;
    if (edge) piece.on = edgeName(*edge);
    return piece;
}

}  // namespace

Outline insetOf(const Outline& drawn, double by, const Panel& panel) {
    std::vector<Curve> curves;
    for (const OutlineLoop& loop : drawn.loops) {
        const std::vector<Point> corners = cornersOffPanel(loop, 4 * by);
        for (std::size_t i = 0; i < corners.size(); ++i) {
            const Point to = corners[(i + 1) % corners.size()];
            if (distance(corners[i], to) > 0) curves.push_back(straight(corners[i], to));
        }
    }
    std::vector<OutlineLoop> loops;
    for (const ClippedLoop& clipped : clipToPanel(roll(joinToRim(std::move(curves)), by).rim, panel)) {
        OutlineLoop loop;
        for (std::size_t i = 0; i < clipped.curves.size(); ++i) {
            loop.push_back(pieceOf(clipped.curves[i], clipped.edges[i]));
        }
        loops.push_back(std::move(loop));
    }
    return makeOutline(std::move(loops));
}

}  // namespace kerfwall

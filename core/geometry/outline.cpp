// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/outline.h"

#include <algorithm>
#include <limits>

#include "core/geometry/curve.h"

namespace kerfwall {
namespace {

Rim rimOf(const OutlineLoop& loop) {
    Rim rim;
    for (const OutlinePiece& piece : loop) {
        rim.next.push_back((rim.curves.size() + 1) % loop.size());
        rim.curves.push_back(curveOf(piece));
    }
    return rim;
}

std::vector<std::size_t> wholeOf(const Rim& rim) {
    std::vector<std::size_t> all(rim.curves.size());
    for (std::size_t i = 0; i < all.size(); ++i) all[i] = i;
    return all;
}

}  // namespace

Curve curveOf(const OutlinePiece& piece) {
    return piece.isArc ? arcThrough(piece.centre, piece.radius, piece.from, piece.to, piece.turn == Turn::Left)
                       : straight(piece.from, piece.to);
}

double sweepOf(const OutlinePiece& arc) { return curveOf(arc).size; }

double signedArea(const OutlineLoop& loop) {
    const Rim rim = rimOf(loop);
    return signedArea(rim, wholeOf(rim));
}

Outline makeOutline(std::vector<OutlineLoop> loops) {
    Outline outline;
    constexpr double kFar = std::numeric_limits<double>::infinity();
    Box bounds{{kFar, kFar}, {-kFar, -kFar}};
    for (const OutlineLoop& loop : loops) {
        outline.area += signedArea(loop);
        for (const OutlinePiece& piece : loop) {
            const Curve curve = curveOf(piece);
            outline.perimeter += curve.lengthInMm();
            const Box box = curve.bounds();
            bounds.low = {std::min(bounds.low.x, box.low.x), std::min(bounds.low.y, box.low.y)};
            bounds.high = {std::max(bounds.high.x, box.high.x), std::max(bounds.high.y, box.high.y)};
        }
    }
    if (!loops.empty()) outline.bounds = bounds;
    outline.loops = std::move(loops);
    return outline;
}

bool isInside(const Outline& outline, Point place) {
    int turns = 0;
    for (const OutlineLoop& loop : outline.loops) {
        const Rim rim = rimOf(loop);
        turns += windingRound(rim, wholeOf(rim), place);
    }
    return turns > 0;
}

}  // namespace kerfwall

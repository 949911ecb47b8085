// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/outline.h"

#include <algorithm>
#include <limits>
#include <utility>

#include "core/geometry/curve.h"

namespace kerfwall {
namespace {

std::vector<Curve> curvesOf(const OutlineLoop& loop) {
    std::vector<Curve> curves;
    curves.reserve(loop.size());
    for (const OutlinePiece& piece : loop) curves.push_back(curveOf(piece));
    return curves;
}

}  // namespace

Curve curveOf(const OutlinePiece& piece) {
    return piece.isArc ? arcThrough(piece.centre, piece.radius, piece.from, piece.to, piece.turn == Turn::Left)
                       : straight(piece.from, piece.to);
}

OutlineLoop polygonLoop(const std::vector<Point>& corners) {
    OutlineLoop loop;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        OutlinePiece piece;
        piece.from = corners[i];
        piece.to = corners[(i + 1) % corners.size()];
        loop.push_back(std::move(piece));
    }
    return loop;
}

OutlineLoop circleLoop(Point centre, double radius) {
    OutlinePiece half;
    half.isArc = true;
    half.centre = centre;
    half.radius = radius;
    half.from = centre + Point{radius, 0};
    half.to = centre - Point{radius, 0};
    OutlinePiece back = half;
    std::swap(back.from, back.to);
    return {half, back};
}

double sweepOf(const OutlinePiece& arc) { return curveOf(arc).size; }

double signedArea(const OutlineLoop& loop) { return signedArea(curvesOf(loop)); }

Outline makeOutline(std::vector<OutlineLoop> loops) {
    Outline outline;
    constexpr double kFar = std::numeric_limits<double>::infinity();
    Box bounds{{kFar, kFar}, {-kFar, -kFar}};
    for (const OutlineLoop& loop : loops) {
        const std::vector<Curve> curves = curvesOf(loop);
        outline.area += signedArea(curves);
        for (const Curve& curve : curves) {
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
    for (const OutlineLoop& loop : outline.loops) turns += windingRound(curvesOf(loop), place);
    return turns > 0;
}

}  // namespace kerfwall

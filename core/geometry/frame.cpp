// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/frame.h"

#include <algorithm>
#include <limits>

#include "core/geometry/angle.h"

namespace kerfwall {

Frame frameRound(const std::vector<Point>& places, double margin) {
    constexpr int kSides = 16;
    struct Support {
        Point away;  ///< unit, outwards
        double far;
    };
    std::vector<Support> sides;
    for (int i = 0; i < kSides; ++i) {
        const double angle = i * kTurn / kSides;
        const Point away{std::cos(angle), std::sin(angle)};
        double far = -std::numeric_limits<double>::infinity();
        for (const Point& place : places) far = std::max(far, dot(away, place));
        sides.push_back({away, far + margin});
    }
    Frame frame;
    for (int i = 0; i < kSides; ++i) {
        const Support& before = sides[static_cast<std::size_t>((i + kSides - 1) % kSides)];
        const Support& after = sides[static_cast<std::size_t>(i)];
        const double turn = cross(before.away, after.away);
        frame.corners.push_back({(before.far * after.away.y - after.far * before.away.y) / turn,
                                 (after.far * before.away.x - before.far * after.away.x) / turn});
    }
    return frame;
}

std::vector<Point> cornersOf(const Box& box) {
    return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
}

Frame frameOf(const Box& box) {
    return {cornersOf(box), false, {}, {}};
}

Frame frameRoundPanel(double width, double height, double margin) {
    return {cornersOf({{-margin, -margin}, {width + margin, height + margin}}), true, {}, {}};
}

bool comesNear(const Frame& frame, Point on, Point along, double near) {
    if (frame.hollow) return true;
    bool left = false;
    bool right = false;
    for (const Point& corner : frame.corners) {
        const double side = cross(along, corner - on);
        left = left || side >= -near;
        right = right || side <= near;
    }
    return left && right;
}

bool holds(const std::vector<Point>& polygon, const std::vector<Point>& places) {
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point& from = polygon[i];
        const Point side = polygon[(i + 1) % polygon.size()] - from;
        const bool all = std::ranges::all_of(places, [&](Point place) { return cross(side, place - from) > 0; });
        if (!all) return false;
    }
    return true;
}

}  // namespace kerfwall

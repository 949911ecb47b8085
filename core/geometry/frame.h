// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/point.h"

namespace kerfwall {

/// How much of the world is looked at: a convex polygon, anticlockwise.
struct Frame {
    std::vector<Point> corners;
};

/// Sixteen sides round `places`, each `margin` from the one that is farthest that way: nothing nearer to them than
/// `margin` is left out.
/// Requires  at least one place; margin > 0, so that every side has a length.
[[nodiscard]] Frame frameRound(const std::vector<Point>& places, double margin);

[[nodiscard]] Frame frameOf(const Box& box);

/// True where the endless line through `on` along unit `along` comes within `near` of the frame.
[[nodiscard]] bool comesNear(const Frame& frame, Point on, Point along, double near);

[[nodiscard]] bool holds(const Frame& frame, const Frame& inner);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/point.h"

namespace kerfwall {

/// How much of the world is looked at: what lies in a convex polygon, anticlockwise. Where it has a hollow, what lies
/// inside that only if it lies in `near` too.
struct Frame {
    std::vector<Point> corners;
    bool whole = false;  ///< it stands off the panel all round: beyond it there is nothing more
    std::optional<Box> hollow;
    std::vector<Point> near;  ///< convex, anticlockwise
};

/// Sixteen sides round `places`, each `margin` from the one that is farthest that way: nothing nearer to them than
/// `margin` is left out.
/// Requires  at least one place; margin > 0, so that every side has a length.
[[nodiscard]] Frame frameRound(const std::vector<Point>& places, double margin);

[[nodiscard]] Frame frameOf(const Box& box);
[[nodiscard]] std::vector<Point> cornersOf(const Box& box);

/// Round a whole panel, as far off as `margin`.
[[nodiscard]] Frame frameRoundPanel(double width, double height, double margin);

/// True where the endless line through `on` along unit `along` comes within `near` of the frame.
[[nodiscard]] bool comesNear(const Frame& frame, Point on, Point along, double near);

/// True where a convex polygon, anticlockwise, holds all of these places.
[[nodiscard]] bool holds(const std::vector<Point>& polygon, const std::vector<Point>& places);

}  // namespace kerfwall

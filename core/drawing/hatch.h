// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "core/geometry/outline.h"

namespace kerfwall {

/// The stretches of parallel lines that lie inside the loops (even-odd), for hatching.
/// `spacing` in mm between lines, > 0; `angle` in degrees anticlockwise from +x. The lines pass through
/// the origin's multiples of `spacing`, so hatchings of one spacing never jump while a shape moves.
/// Lines that pass `within` by are left out, where it is given.
/// Gives     nothing where there would be more than 5000 lines.
[[nodiscard]] std::vector<std::pair<Point, Point>> hatchOf(const std::vector<OutlineLoop>& loops,
                                                           double spacing, double angle = 45,
                                                           const std::optional<Box>& within = std::nullopt);

/// Where the line through `origin` along the unit vector `along` crosses the loops, as distances along
/// it, in rising order. An odd number never comes out: touched places count twice or not at all.
[[nodiscard]] std::vector<double> crossings(const std::vector<OutlineLoop>& loops, Point origin, Point along);

}  // namespace kerfwall

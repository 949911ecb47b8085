// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/geometry/outline.h"

namespace kerfwall {

/// A polygon run round anticlockwise, whichever way it was given; without points that repeat.
[[nodiscard]] std::vector<Point> anticlockwise(std::vector<Point> polygon);

/// The polygon with its corners rounded by exact arcs, `radii` one a corner (0: sharp).
/// A corner over 180 degrees stays sharp: there the cutter runs round outside. A radius larger than its
/// sides have room for is taken as large as they have: half of a side that is rounded at both ends.
/// Requires  anticlockwise, one radius a point.
/// Source    set-back = radius / tan(angle / 2).
[[nodiscard]] OutlineLoop roundedLoop(const std::vector<Point>& polygon, std::span<const double> radii);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/outline.h"

namespace kerfwall::oracle {

/// Distance from `place` to the joined convex polygons (anticlockwise), mm; 0 inside them.
[[nodiscard]] double distanceTo(const std::vector<std::vector<Point>>& faces, Point place);

/// The greatest distance from the joined faces of a point within `border` and within `reach` of `corner`:
/// by dense search along every piece and round the reach, narrowed to 1e-9 mm.
/// Requires  pieces that run left to right or right to left throughout, as the exact route gives them.
[[nodiscard]] double greatestStep(const std::vector<OutlinePiece>& border,
                                  const std::vector<std::vector<Point>>& faces, Point corner, double reach);

}  // namespace kerfwall::oracle

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// True strictly inside a convex polygon that runs anticlockwise.
[[nodiscard]] bool isInFace(const std::vector<Point>& face, Point place);

/// The middle of a convex face, on a tenth of a millimetre where the face is wide enough: a number a person reads.
[[nodiscard]] Point seedOf(const std::vector<Point>& face);

/// The face that the cut lines and the panel's edges bound round a place.
[[nodiscard]] std::vector<Point> faceRound(const Panel& panel, const std::vector<SolvedLine>& lines, Point place);

/// One seed in each part of a convex region on the panel that the cut lines make of it. Slivers less wide than
/// rounding makes them count as nothing.
[[nodiscard]] std::vector<Point> seedsWithin(const Panel& panel, const std::vector<SolvedLine>& lines, const std::vector<Point>& region);

}  // namespace kerfwall

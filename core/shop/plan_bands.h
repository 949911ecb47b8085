// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// The corners of a convex shape in plan, in order; two of them are a stretch of line.
using PlanShape = std::vector<Point>;

/// True where two convex shapes share more than a touch: they overlap by more than 1e-9 mm in every
/// direction.
/// Source    separating axes: two convex shapes are apart where some side's normal parts them.
[[nodiscard]] bool overlapInPlan(const PlanShape& a, const PlanShape& b);

/// A kerf's band from `from` to `to` mm along its line.
[[nodiscard]] PlanShape bandOf(const SolvedLine& line, const Kerf& kerf, double from, double to);

/// The stretch of `width` on both sides of from -> to.
[[nodiscard]] PlanShape stripRound(Point from, Point to, double width);

/// How far past its full depth the round of a kerf's blade is at least `depth` deep; 0 where the kerf is
/// not that deep, or where it runs through.
/// Requires  the blade's radius is greater than the kerf's depth.
/// Source    reachOfRound.
[[nodiscard]] double roundReach(const Kerf& kerf, double bladeRadius, double depth);

/// Radius of the blade a kerf is cut with, mm: its saw's, else the first saw's on the bench, else the
/// stock table saw's.
[[nodiscard]] double bladeRadiusOf(const Project& project, const Kerf& kerf);

}  // namespace kerfwall

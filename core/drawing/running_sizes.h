// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/drawing/step_parts.h"

namespace kerfwall {

/// How far places stand from an edge, each distance once: thin lines from the places to the panel's outside at the edge `beside`,
/// square to `from`, and there the numbers in a row, moved apart where they would lie over one another. All from one edge, as
/// running dimensions are (ISO 129-1).
void addRunningSizes(StepSheet& sheet, Edge from, Edge beside, std::vector<Point> places);

/// A number that stands off the panel at `at` and reads along the way out: from below or from the right, as drawings are read.
[[nodiscard]] Label outsideNumber(const StepSheet& sheet, Point at, Point out, const std::string& number, const std::string& id);

/// The places nearest to those asked for, in sum of squares, that stand at least `gap` apart; in their order.
/// Requires  `wanted` is sorted.
[[nodiscard]] std::vector<double> movedApart(const std::vector<double>& wanted, double gap);

inline constexpr double kRunningRoom = 24;  ///< mm on paper the numbers take beside the panel

}  // namespace kerfwall

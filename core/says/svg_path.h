// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <string>
#include <string_view>
#include <vector>

#include "core/geometry/point.h"

namespace kerfwall {

/// An outline drawn otherwise is taken for one of straight sides that is nowhere farther from it, mm.
inline constexpr double kSvgTolerance = 0.05;

/// The one closed outline of an SVG path's data as a polygon, in the path's own units and directions (y down). Curves and
/// arcs become sides whose corners lie on them and that leave them by `tolerance` at most; corners in the same place are
/// one. All commands: M L H V Z C S Q T A, absolute and relative.
/// Requires  tolerance > 0.
/// Refuses   in one sentence, with the place in the text counted from 1 and what would be right: text that is no path,
///           several outlines, an open one, one that encloses nothing, numbers or counts beyond what a panel can hold.
/// Source    W3C SVG 2, 9.3 (path data) and B.2 (arcs: end points to centre, radii too small made larger).
[[nodiscard]] std::expected<std::vector<Point>, std::string> readSvgPath(std::string_view data, double tolerance);

/// Its numbers, apart by spaces and at most one comma; none where it holds anything else.
[[nodiscard]] std::expected<std::vector<double>, std::string> readSvgNumbers(std::string_view text);

inline constexpr std::size_t kMostSvgCorners = 2000;  ///< of one outline
inline constexpr double kLargestSvgNumber = 1e7;

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/geometry/point.h"
#include "core/says/project.h"

namespace kerfwall {

/// A line of a list that is no corner.
struct BadCorner {
    int line = 0;          ///< counted from 1
    std::string sentence;  ///< "Line 3: ...", with the remedy
    bool operator==(const BadCorner&) const = default;
};

/// Corners as a maker types or pastes them.
struct CornerList {
    std::vector<Point> corners;
    std::vector<BadCorner> bad;
    bool operator==(const CornerList&) const = default;
};

/// Reads one corner a line, x and y as lengths (readLength: sums, fractions, units). Between them stands a semicolon, a
/// tab, or a comma; of a comma's two meanings it is the sign between where a space follows it or where it is the middle
/// one or the only one. Round brackets about a line, and empty lines, are passed over.
[[nodiscard]] CornerList readCorners(std::string_view text, Units units);

/// The list of those corners as readCorners takes it, a line each.
[[nodiscard]] std::string cornersText(const std::vector<Point>& corners, Units units, char decimalSign = '.');

inline constexpr std::size_t kMostCorners = 100;  ///< more lines are bad; a project holds 500 lines

}  // namespace kerfwall

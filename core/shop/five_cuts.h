// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <string>
#include <string_view>

#include "core/says/project.h"

namespace kerfwall {

/// What a maker measures after the five-cut test: four sides of a board trimmed on the sled, each time with the side
/// cut last on the fence, then a strip off the first side again. Lengths in one unit.
struct FiveCuts {
    double farWidth = 0;   ///< the strip's width at its end away from the fence
    double nearWidth = 0;  ///< and at its end by the fence
    double length = 0;     ///< of the strip
};

/// How far the sled's cut strays from square over a metre, in thousandths of the length; positive where the strip is
/// wider away from the fence.
/// Refuses   a width or length that is not more than 0, in one sentence.
/// Source    the error shows four times over in the fifth cut: (far - near) / (4 length).
[[nodiscard]] std::expected<double, std::string> strayByFiveCuts(const FiveCuts& cuts);

/// The same of the three lengths as typed, set apart by semicolons: "25.42; 25.30; 300".
/// Refuses   more or fewer than three, what is no length, and a sled that strays by more than a saw may (tool_ranges.h).
[[nodiscard]] std::expected<double, std::string> strayFromText(std::string_view text, Units units);

}  // namespace kerfwall

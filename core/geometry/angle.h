// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <numbers>

namespace kerfwall {

/// A whole turn, radians.
inline constexpr double kTurn = 2 * std::numbers::pi;

[[nodiscard]] constexpr double radians(double degrees) { return degrees * std::numbers::pi / 180; }
[[nodiscard]] constexpr double degrees(double radians) { return radians * 180 / std::numbers::pi; }

}  // namespace kerfwall

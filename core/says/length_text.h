// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <string>
#include <string_view>

#include "core/says/project.h"

namespace kerfwall {

inline constexpr double kMillimetresPerInch = 25.4;

/// Reads a length as a maker types it and gives mm.
/// A bare number counts in `units`. Units may follow: mm, cm, m, in, ", ft, '. Fractions: 3/64, 1-3/4,
/// 1 3/4, 2' 3-1/2". Comma or dot is the decimal sign, never grouping; a hyphen between whole and
/// fraction is never a minus.
/// Refuses   with a reason in one sentence: 1-3/0, 3/, 1--3/4, "", words.
[[nodiscard]] std::expected<double, std::string> readLength(std::string_view text, Units units);

/// Reads an angle in degrees: a decimal, "°" may follow.
[[nodiscard]] std::expected<double, std::string> readAngle(std::string_view text);

/// A length for a person: millimetres with `decimals` places (trailing zeros kept), or inches to the
/// nearest 1/64 as "3 15/16". `decimalSign` is '.' or ','. No unit is added.
[[nodiscard]] std::string lengthText(double mm, Units units, int decimals = 1, char decimalSign = '.');

/// The same with " mm" or the inch sign behind it.
[[nodiscard]] std::string lengthWithUnit(double mm, Units units, int decimals = 1, char decimalSign = '.');

/// How many decimals a length needs for the saw: one where it lies on a tenth of a millimetre, else two.
[[nodiscard]] int decimalsAtSaw(double mm);

}  // namespace kerfwall

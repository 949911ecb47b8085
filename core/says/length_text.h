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
/// 1 3/4, 2' 3-1/2". Comma or dot is the decimal sign, never grouping.
/// Arithmetic: + - * / and round brackets, × ÷ too; a sign may stand before the first part of a sum. What binds first:
///   1. A stroke between two whole numbers is a fraction, and the unit behind belongs to all of it: 1/2 in, 6/2 in = 3 in.
///   2. A fraction behind a whole number and a space, or a hyphen that touches it, is a mixed number: 1 1/2, 1-3/4;
///      behind a hyphen only a proper one. So 100-3/4 is 100 3/4, but 100 - 3/4, 100−3/4 and 100-3/2 take away.
///   3. * and / from the left, then + and - from the left. A bare number added to a length counts in `units`.
/// Worked in exact fractions: 100.1+0.2 is the double nearest to 100.3.
/// Refuses   with a reason in one sentence, before it the place where it is not the beginning ("At character 5: ..."):
///           1-3/0, 3/, 1--3/4, "", words; a length times or divided by a length; brackets not closed, or over 32 deep.
[[nodiscard]] std::expected<double, std::string> readLength(std::string_view text, Units units);

/// Reads an angle in degrees: a decimal, "°" may follow.
[[nodiscard]] std::expected<double, std::string> readAngle(std::string_view text);

/// A length for a person: millimetres with `decimals` places (trailing zeros kept), or inches to the
/// nearest 1/64 as "3 15/16". `decimalSign` is '.' or ','. No unit is added.
[[nodiscard]] std::string lengthText(double mm, Units units, int decimals = 1, char decimalSign = '.');

/// The same with " mm" or the inch sign behind it.
[[nodiscard]] std::string lengthWithUnit(double mm, Units units, int decimals = 1, char decimalSign = '.');

/// A length as it is set at a saw or marked on an edge: millimetres to a tenth, or a hundredth where it lies on no
/// tenth; inches as a fraction where a 64th is right to a hundredth of a millimetre, else to a thousandth: "5.476".
[[nodiscard]] std::string lengthAtSaw(double mm, Units units, char decimalSign = '.');

/// How many decimals a length needs for the saw: one where it lies on a tenth of a millimetre, else two.
[[nodiscard]] int decimalsAtSaw(double mm);

}  // namespace kerfwall

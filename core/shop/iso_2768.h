// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

namespace kerfwall {

/// The tolerance classes of ISO 2768-1: f, m, c, v.
enum class ToleranceClass { Fine, Medium, Coarse, VeryCoarse };

/// "f", "m", "c", "v".
[[nodiscard]] std::string classWord(ToleranceClass kept);

/// What a length of `mm` may be off in that class, ± mm; none where the class has no figure for it.
/// Source    ISO 2768-1, table of linear dimensions but broken edges.
[[nodiscard]] std::optional<double> lengthTolerance(ToleranceClass in, double mm);

/// What an angle may be off in that class, ± degrees, by the shorter of its legs, mm.
/// Source    ISO 2768-1, table of angular dimensions.
[[nodiscard]] double angleTolerance(ToleranceClass in, double shorterLeg);

/// The finest class a length keeps that may be off by ± `plusMinus` mm; none where it keeps none.
[[nodiscard]] std::optional<ToleranceClass> lengthClassKept(double mm, double plusMinus);

/// The finest class an angle keeps that may be off by ± `plusMinus` degrees.
[[nodiscard]] std::optional<ToleranceClass> angleClassKept(double shorterLeg, double plusMinus);

}  // namespace kerfwall

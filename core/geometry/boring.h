// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/geometry/solved.h"

namespace kerfwall {

inline constexpr double kLargestBore = 150;  // mm radius; bores are at most 300 in diameter

/// The radius a corner is bored to at first: the smallest bore at hand that is larger than the trimming bit,
/// else twice the bit. mm.
[[nodiscard]] double usualBoreRadius(const Project& project);

/// The bore radius asked for at that corner of a cutout; none where it is left to the trimming bit.
[[nodiscard]] std::optional<double> boreRadiusAt(const Project& project, const SolvedCutout& cutout, const Corner& corner);

/// The project with that corner bored to `radius` (mm), or left to the trimming bit where there is none.
/// Requires  the cutout and corner are of this project's answer; radius over 0 and at most kLargestBore.
[[nodiscard]] Project withBore(const Project& project, const SolvedCutout& cutout, const Corner& corner,
                               std::optional<double> radius);

}  // namespace kerfwall

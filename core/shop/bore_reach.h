// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// What the trimming bit may leave beside a bore for the hand, mm thick at most. Common practice, no source.
inline constexpr double kHandRest = 0.5;

/// One bore at a wall as it was made: how far its round reaches past the wall's line, away from the waste; under 0 it
/// falls short of it. 0 where nothing was measured.
struct BoreReach {
    LineId first;  ///< the lines of its corner
    LineId second;
    double past = 0;  ///< mm
    bool measured = false;
    bool operator==(const BoreReach&) const = default;
};

/// The bores that a kerf's walls must touch, with what the project's record says of them.
/// Source    its centre as planned and half the measured diameter: (measured - planned) / 2.
[[nodiscard]] std::vector<BoreReach> boresAt(const Project& project, const Solved& solved, const LineId& line, Side waste);

/// The one that reaches farthest: the wall goes to it and never past it, the others are faired by hand.
/// Requires  at least one.
[[nodiscard]] const BoreReach& outermost(const std::vector<BoreReach>& bores);

/// How deep a kerf nicks a bore of `radius` that runs `past` its tangent point; also how thick a rest stands where the
/// trimming bit stops so far short of it, mm.
/// Source    R - sqrt(R^2 - u^2).  Requires  past <= radius.
[[nodiscard]] double restAt(double radius, double past);

/// How far short of the tangent point the bit may stop, to leave a rest no thicker than `thick`, mm.
/// Source    sqrt(R^2 - (R - thick)^2).  Requires  thick <= radius.
[[nodiscard]] double stopShortFor(double radius, double thick);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/curve.h"

namespace kerfwall {

/// Where a disc's centre runs while the disc rolls along a rim, and what it rests on.
struct Track {
    Rim rim;  ///< what is free for the centre on its left
    /// For each curve: the curve of the rim below it rests on; or, on a lip, the curve that arrives there.
    struct Rest {
        std::size_t curve = 0;
        bool onLip = false;
        bool operator==(const Rest&) const = default;
    };
    std::vector<Rest> rests;
    std::vector<Point> gaps;  ///< ends that could not be joined
};

/// Rolls a disc of `radius` along the free side of every loop of `rim`: all places at exactly `radius`
/// from the rim with nothing nearer. One piece for each stretch of contact: a shifted side, or an arc
/// about a lip. Pieces meet where the contact changes.
/// Requires  radius > 0.
/// Exact to  rounding of the shapes; a step of kBite or more in a wall is followed.
[[nodiscard]] Track roll(const Rim& rim, double radius);

}  // namespace kerfwall

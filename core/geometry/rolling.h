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
///
/// Steps of a nanometre: walls that end 1e-9 to 1e-6 mm past each other.
///   Felt      A stretch goes where, at its middle between two changes of what is nearest, a wall is nearer than
///             radius - kBite. So a smaller step is not felt, and a stretch may run on past where its contact ends
///             by 2 sqrt(2 r kBite), along itself (r: the radius it parts from its neighbour with; 7e-5 mm at 6.35),
///             while no place of it comes nearer to a wall than radius - 4 kBite. Stretches under kBite are dropped.
///   Ordered   Contacts are not followed one from another. Each end joins a start by distance alone, nearest pair
///             first in steps of kBite, then the narrowest free wedge, then the order of the rim; no farther than
///             kJoin. About a step of s the lip's arc is sqrt(2 r s) long (1e-4 mm for 1e-9 at 5), so beside
///             it more than one start can be in reach, and it is the order of distances that keeps them apart.
///   Lost      A run longer than kJoin that ends in nothing is a gap. A shorter one is taken for dust and left out
///             in silence: it bounds at most kJoin²; two ends joined over a gap stay up to kJoin apart.
///   Not said  That nearest first is always right. Laws over fixed seeds hold it to rim x step + 1e-6 mm² of area
///             (nanometre_law_test.cpp), and what comes of it is proved each time it is used (proof.h).
[[nodiscard]] Track roll(const Rim& rim, double radius);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <vector>

#include "core/geometry/arranged.h"
#include "core/geometry/border.h"
#include "core/geometry/kerf_layout.h"
#include "core/geometry/opening.h"

namespace kerfwall {

/// What every opening of a project is cut from.
struct World {
    const Project& project;
    const Arranged& arranged;
    const std::vector<LaidKerf>& kerfs;
    double widestKerf = 0;
};

/// An opening with the rim its disc rolled along.
struct RolledOpening {
    VoidRim rim;
    Opening opening;
};

/// Rolls by `roll`, which is given the frame to look at: near by at first, and wider, up to the whole panel, as long
/// as the room comes to the frame. `radius` is that of the disc, or the sum of those that roll one after the other;
/// `smallest` the smallest of them.
///
/// Near is enough where no room touches the frame: all faces lie inside it, so every part of the room begins
/// inside, and a part goes on outside only through the frame. Where it touches it off the panel this counts
/// too: the disc may come back by another mouth. The frame round the whole panel stands more than a
/// diameter off, so that a disc passes between the two all round, as it would with no frame.
[[nodiscard]] RolledOpening lookAsFarAsNeeded(const World& world, const Border& border, double radius, double smallest,
                                              const std::function<RolledOpening(const Frame&)>& roll);

/// A rolled opening with the doubts that its proof raises (proof.h) among its own.
[[nodiscard]] RolledOpening proved(RolledOpening rolled, double room, double sweep, const Panel& panel);

/// The opening that a disc whose centre keeps `room` from the rim of the drawn void sweeps with radius `sweep`.
[[nodiscard]] RolledOpening openingWithin(const World& world, const ArrangedCutout& cutout, const Border& border,
                                          double room, double sweep);

}  // namespace kerfwall

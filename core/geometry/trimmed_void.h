// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/void_rim.h"

namespace kerfwall {

/// The rim of the void a guide rolls in after trimming: what the trimming bit swept (its cutter runs through
/// the whole thickness), the bores, everything off the panel, and the kerfs open at the guide's height.
///
/// `swept` is the bit's sweep, the void on its left; its closed loops count. `kerfs` counts with what is open
/// in the kerfs' band; none where the guide rides clear of them.
///
///      drawn wall        ====.            .====   swept: straight on the walls, rounds in the corners;
///      kerf's far side   ----+------------+----   the kerf opens the round again as far as it is wide
///
/// Where the sweep and a kerf's side lie on one another, facing the same way, the sweep keeps the rim; where
/// they face one another no wood is left. Both are decided by which way they run, not by area. Gives doubts
/// where the rim could not be closed.
[[nodiscard]] VoidRim trimmedVoidRim(const Project& project, const Arranged& arranged, const Border& border,
                                     const std::vector<LaidKerf>& kerfs, const Rim& swept, const Frame& frame);

}  // namespace kerfwall

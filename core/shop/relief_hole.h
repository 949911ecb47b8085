// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// A jigsaw's blade needs a hole of this diameter to start from, mm. Common practice, no source: 8 to 10.
inline constexpr double kStarterHole = 10;
/// A relief hole from this diameter on lets it in too, mm.
inline constexpr double kSmallestStart = 8;

/// Relief holes in the corners, one step for each diameter and cutout, and a starter hole in a closed cutout
/// that has neither a relief hole nor a bored corner for the jigsaw to start from.
/// None in a cutout the bit does not fit into.
[[nodiscard]] std::vector<WorkStep> drillSteps(const Project& project, const Solved& solved);

}  // namespace kerfwall

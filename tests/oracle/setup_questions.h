// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "core/shop/kerf_ways.h"

namespace kerfwall::oracle {

/// Kerfs to choose ways for, with the project they belong to.
struct SetupQuestion {
    Project project;
    std::vector<CutAsked> cuts;
};

/// `kerfs` kerfs on a panel of 600 x 600 true all round with the stock bench, the fewest set-ups preferred:
/// half of them on level lines, half on upright ones, at places from a grid of 0.8 mm (a quarter of a kerf), so
/// that many settings could be shared and no choice is plain. Drawn from `seed`, the same on every machine.
[[nodiscard]] SetupQuestion setupQuestion(int kerfs, std::uint64_t seed);

}  // namespace kerfwall::oracle

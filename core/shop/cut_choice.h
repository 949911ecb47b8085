// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/shop/kerf_ways.h"

namespace kerfwall {

/// The way chosen for a kerf. The saw is none where none can cut it; then `way` says nothing.
struct CutChoice {
    std::optional<std::size_t> saw;  ///< index into the bench's saws
    std::size_t way = 0;             ///< index into waysAt of that saw
    bool operator==(const CutChoice&) const = default;
};

/// The ways chosen for all kerfs together.
struct ChosenCuts {
    std::vector<CutChoice> cuts;  ///< beside the kerfs asked for
    int setups = 0;
    int lowerBound = 0;  ///< no choice has fewer; equal to `setups` where it is proved the least
};

/// Ways for all kerfs with the fewest set-ups; of such the one with the fewest kerfs cut to marks alone, then
/// with the fewest machines (rip fence, sled and gauge of one kerf and blade are one table saw), then the best liked (see kerfWays), then with the least travel of fences and stops.
/// The first three are proved as far as the search goes (40 kerfs and more, see DEVELOPERS.md); the rest is the
/// best that changing one set-up at a time finds. Same input, same choice.
[[nodiscard]] ChosenCuts chooseCuts(const Project& project, const std::vector<CutAsked>& cuts);

}  // namespace kerfwall

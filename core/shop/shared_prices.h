// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/cheapest_cover.h"

namespace kerfwall {

/// A price below which no cover can go: each job names a share, and no offer's jobs name more together than
/// the offer costs. The shares are bettered by steps, until they reach `known`, the price of a cover at hand.
/// Source    Lagrangian relaxation of set covering, subgradient steps.
[[nodiscard]] long sharedPrices(const std::vector<Offer>& offers,
                                const std::vector<std::vector<std::size_t>>& doersOfJob, long known);

}  // namespace kerfwall

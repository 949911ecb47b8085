// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

namespace kerfwall {

/// Something that does several jobs at one price: a set-up that could cut several kerfs.
struct Offer {
    std::vector<std::size_t> jobs;  ///< in rising order, each once
    long price = 1;                 ///< > 0
};

/// Offers that do every job together.
struct Cover {
    std::vector<std::size_t> offers;  ///< in rising order
    long price = 0;                   ///< their sum
    long bound = 0;                   ///< no cover is cheaper; equal to `price` where the cover is proved cheapest
    bool operator==(const Cover&) const = default;
};

/// The cheapest offers that do all of `jobs` jobs: proved so, or the best found after `steps` steps of the
/// search with a bound below which none can go. Same input, same cover; of equals, offers that stand earlier
/// are liked better.
/// Requires  every job is done by some offer.
/// Source    set covering by branch and bound: offers and jobs that others dominate fall away, what hangs
///           together is searched by itself, bounds are prices shared out among the jobs (a solution of the
///           dual of the linear relaxation).
[[nodiscard]] Cover cheapestCover(std::size_t jobs, const std::vector<Offer>& offers, std::size_t steps);

}  // namespace kerfwall

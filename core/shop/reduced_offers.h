// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/cheapest_cover.h"

namespace kerfwall {

/// What is left to decide of a covering once offers and jobs that cannot matter have fallen away: an offer that
/// alone does some job is taken; one falls away where another does all it does and costs no more; a job falls away
/// where whoever does another job does it too.
/// Requires  every job is done by some offer.
class ReducedOffers {
  public:
    ReducedOffers(std::size_t jobs, const std::vector<Offer>& offers);

    [[nodiscard]] const std::vector<std::size_t>& taken() const { return m_taken; }
    [[nodiscard]] const std::vector<std::size_t>& jobs() const { return m_jobsLeft; }
    [[nodiscard]] const std::vector<std::size_t>& offers() const { return m_offersLeft; }
    /// The jobs still to do that an offer does; the offers left that do a job.
    [[nodiscard]] const std::vector<std::size_t>& jobsOf(std::size_t offer) const { return m_does[offer]; }
    [[nodiscard]] const std::vector<std::size_t>& doersOf(std::size_t job) const { return m_doers[job]; }

  private:
    void refresh();
    bool takeTheOnlyOnes();
    [[nodiscard]] bool isDear(std::size_t offer) const;
    bool dropDearOffers();
    [[nodiscard]] bool isEasy(std::size_t job) const;
    bool dropEasyJobs();

    const std::vector<Offer>& m_offers;
    std::vector<std::size_t> m_jobsLeft;
    std::vector<std::size_t> m_offersLeft;
    std::vector<std::size_t> m_taken;
    std::vector<std::vector<std::size_t>> m_does;
    std::vector<std::vector<std::size_t>> m_doers;
};

}  // namespace kerfwall

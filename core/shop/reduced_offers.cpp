// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/reduced_offers.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace kerfwall {

namespace {

using Index = std::size_t;
using Indices = std::vector<Index>;

bool isPartOf(const Indices& part, const Indices& whole) { return std::ranges::includes(whole, part); }

}  // namespace

ReducedOffers::ReducedOffers(Index jobs, const std::vector<Offer>& offers)
    : m_offers(offers), m_jobsLeft(jobs), m_doers(jobs) {
    std::iota(m_jobsLeft.begin(), m_jobsLeft.end(), Index{0});
    m_offersLeft.resize(offers.size());
    std::iota(m_offersLeft.begin(), m_offersLeft.end(), Index{0});
    refresh();
    while (takeTheOnlyOnes() || dropDearOffers() || dropEasyJobs()) {
    }
}

void ReducedOffers::refresh() {
    m_does.assign(m_offers.size(), {});
    for (Index job : m_jobsLeft) m_doers[job].clear();
    Indices useful;
    for (const Index offer : m_offersLeft) {
        std::ranges::set_intersection(m_offers[offer].jobs, m_jobsLeft, std::back_inserter(m_does[offer]));
        if (m_does[offer].empty()) continue;
        useful.push_back(offer);
        for (const Index job : m_does[offer]) m_doers[job].push_back(offer);
    }
    m_offersLeft = std::move(useful);
}

bool ReducedOffers::takeTheOnlyOnes() {
    Indices only;
    for (const Index job : m_jobsLeft) {
        assert(!m_doers[job].empty());
        if (m_doers[job].size() == 1) only.push_back(m_doers[job].front());
    }
    if (only.empty()) return false;
    std::ranges::sort(only);
    only.erase(std::ranges::unique(only).begin(), only.end());
    for (const Index offer : only) {
        m_taken.push_back(offer);
        std::erase_if(m_jobsLeft, [&](Index job) { return std::ranges::binary_search(m_does[offer], job); });
    }
    refresh();
    return true;
}

bool ReducedOffers::isDear(Index offer) const {
    return std::ranges::any_of(m_doers[m_does[offer].front()], [&](Index other) {
        if (other == offer || m_offers[other].price > m_offers[offer].price) return false;
        if (!isPartOf(m_does[offer], m_does[other])) return false;
        const bool same = m_offers[other].price == m_offers[offer].price &&
                          m_does[other].size() == m_does[offer].size();
        return !same || other < offer;
    });
}

bool ReducedOffers::dropDearOffers() {
    const Index before = m_offersLeft.size();
    Indices kept;
    for (const Index offer : m_offersLeft) {
        if (!isDear(offer)) kept.push_back(offer);
    }
    m_offersLeft = std::move(kept);
    if (m_offersLeft.size() == before) return false;
    refresh();
    return true;
}

bool ReducedOffers::isEasy(Index job) const {
    // Whoever does `other` does this job too.
    return std::ranges::any_of(m_doers[job], [&](Index offer) {
        return std::ranges::any_of(m_does[offer], [&](Index other) {
            if (other == job || !isPartOf(m_doers[other], m_doers[job])) return false;
            return m_doers[other].size() < m_doers[job].size() || other < job;
        });
    });
}

bool ReducedOffers::dropEasyJobs() {
    Indices hard;
    for (const Index job : m_jobsLeft) {
        if (!isEasy(job)) hard.push_back(job);
    }
    if (hard.size() == m_jobsLeft.size()) return false;
    m_jobsLeft = std::move(hard);
    refresh();
    return true;
}

}  // namespace kerfwall

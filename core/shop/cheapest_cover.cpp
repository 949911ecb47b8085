// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/cheapest_cover.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <optional>

#include "core/shop/reduced_offers.h"
#include "core/shop/shared_prices.h"

namespace kerfwall {

namespace {

using Index = std::size_t;
using Indices = std::vector<Index>;

/// Branch and bound over what hangs together.
class Search {
  public:
    Search(std::vector<Offer> offers, Index jobs, Index steps)
        : m_offers(std::move(offers)), m_doers(jobs), m_done(jobs, 0), m_barred(m_offers.size(), false), m_steps(steps) {
        for (Index offer = 0; offer < m_offers.size(); ++offer) {
            for (const Index job : m_offers[offer].jobs) m_doers[job].push_back(offer);
        }
    }

    Cover run() {
        m_best = greedy();
        m_bestPrice = priceOf(m_best);
        const long root = sharedPrices(m_offers, m_doers, m_bestPrice);
        if (root < m_bestPrice) branch(0);
        std::ranges::sort(m_best);
        return {m_best, m_bestPrice, m_spent ? std::min(root, m_bestPrice) : m_bestPrice};
    }

  private:
    [[nodiscard]] long priceOf(const Indices& offers) const {
        return std::transform_reduce(offers.begin(), offers.end(), 0L, std::plus{},
                                     [&](Index offer) { return m_offers[offer].price; });
    }

    [[nodiscard]] Index newJobs(Index offer) const {
        return static_cast<Index>(
            std::ranges::count_if(m_offers[offer].jobs, [&](Index job) { return m_done[job] == 0; }));
    }

    void take(Index offer) {
        m_taken.push_back(offer);
        for (const Index job : m_offers[offer].jobs) ++m_done[job];
    }

    void giveBack() {
        for (const Index job : m_offers[m_taken.back()].jobs) --m_done[job];
        m_taken.pop_back();
    }

    /// The offer with most new jobs for its price, again and again; then without those that others make needless.
    Indices greedy() {
        while (std::ranges::find(m_done, 0) != m_done.end()) {
            Index best = 0;
            double most = 0;
            for (Index offer = 0; offer < m_offers.size(); ++offer) {
                const double share = static_cast<double>(newJobs(offer)) / static_cast<double>(m_offers[offer].price);
                if (share > most) {
                    most = share;
                    best = offer;
                }
            }
            take(best);
        }
        Indices kept = m_taken;
        for (const Index offer : m_taken) {
            if (std::ranges::all_of(m_offers[offer].jobs, [&](Index job) { return m_done[job] > 1; })) {
                std::erase(kept, offer);
                for (const Index job : m_offers[offer].jobs) --m_done[job];
            }
        }
        std::ranges::fill(m_done, 0);
        m_taken.clear();
        return kept;
    }

    /// Jobs not done, those with the fewest offers first; empty offers make the branch hopeless.
    [[nodiscard]] std::vector<std::pair<Index, Index>> openJobs() const {
        std::vector<std::pair<Index, Index>> open;
        for (Index job = 0; job < m_doers.size(); ++job) {
            if (m_done[job] > 0) continue;
            open.emplace_back(std::ranges::count_if(m_doers[job], [&](Index offer) { return !m_barred[offer]; }), job);
        }
        std::ranges::sort(open);
        return open;
    }

    /// What the open jobs cost at least: each takes what is left of the price of its cheapest offer.
    long leastFor(const std::vector<std::pair<Index, Index>>& open) {
        m_left.resize(m_offers.size());
        for (Index offer = 0; offer < m_offers.size(); ++offer) m_left[offer] = m_offers[offer].price;
        long sum = 0;
        for (const auto& [count, job] : open) {
            long least = std::numeric_limits<long>::max();
            for (const Index offer : m_doers[job]) {
                if (!m_barred[offer]) least = std::min(least, m_left[offer]);
            }
            if (least == 0) continue;
            for (const Index offer : m_doers[job]) m_left[offer] -= std::min(least, m_left[offer]);
            sum += least;
        }
        return sum;
    }

    void branch(long price) {
        if (m_spent || m_steps-- == 0) {
            m_spent = true;
            return;
        }
        const auto open = openJobs();
        if (open.empty()) {
            m_best = m_taken;
            m_bestPrice = price;
            return;
        }
        if (open.front().first == 0 || price + leastFor(open) >= m_bestPrice) return;
        Indices doers;
        std::ranges::copy_if(m_doers[open.front().second], std::back_inserter(doers),
                             [&](Index offer) { return !m_barred[offer]; });
        std::ranges::stable_sort(doers, std::greater{}, [&](Index offer) { return newJobs(offer); });
        for (const Index offer : doers) {
            take(offer);
            branch(price + m_offers[offer].price);
            giveBack();
            m_barred[offer] = true;
        }
        for (const Index offer : doers) m_barred[offer] = false;
    }

    std::vector<Offer> m_offers;
    std::vector<Indices> m_doers;
    std::vector<int> m_done;
    std::vector<bool> m_barred;
    std::vector<long> m_left;
    Indices m_taken;
    Indices m_best;
    long m_bestPrice = 0;
    Index m_steps;
    bool m_spent = false;
};

/// Jobs that offers tie together, group by group.
std::vector<Indices> groupsOf(const ReducedOffers& reduced, Index jobs) {
    Indices leader(jobs);
    std::iota(leader.begin(), leader.end(), Index{0});
    const auto find = [&](Index job) {
        while (leader[job] != job) job = leader[job] = leader[leader[job]];
        return job;
    };
    for (const Index offer : reduced.offers()) {
        for (const Index job : reduced.jobsOf(offer)) leader[find(job)] = find(reduced.jobsOf(offer).front());
    }
    std::vector<Indices> groups(jobs);
    for (const Index job : reduced.jobs()) groups[find(job)].push_back(job);
    std::erase_if(groups, [](const Indices& group) { return group.empty(); });
    return groups;
}

Cover searchGroup(const ReducedOffers& reduced, const std::vector<Offer>& offers, const Indices& group, Index steps) {
    Indices known;
    for (const Index job : group) {
        known.insert(known.end(), reduced.doersOf(job).begin(), reduced.doersOf(job).end());
    }
    std::ranges::sort(known);
    known.erase(std::ranges::unique(known).begin(), known.end());
    std::vector<Offer> local;
    for (const Index offer : known) {
        Offer& is = local.emplace_back();
        is.price = offers[offer].price;
        for (const Index job : reduced.jobsOf(offer)) {
            is.jobs.push_back(static_cast<Index>(std::ranges::lower_bound(group, job) - group.begin()));
        }
    }
    Cover cover = Search(std::move(local), group.size(), steps).run();
    for (Index& offer : cover.offers) offer = known[offer];
    return cover;
}

}  // namespace

Cover cheapestCover(std::size_t jobs, const std::vector<Offer>& offers, std::size_t steps) {
    const ReducedOffers reduced(jobs, offers);
    Cover cover;
    cover.offers = reduced.taken();
    for (const Index offer : cover.offers) cover.price += offers[offer].price;
    cover.bound = cover.price;
    for (const Indices& group : groupsOf(reduced, jobs)) {
        const Cover part = searchGroup(reduced, offers, group, steps);
        cover.offers.insert(cover.offers.end(), part.offers.begin(), part.offers.end());
        cover.price += part.price;
        cover.bound += part.bound;
    }
    std::ranges::sort(cover.offers);
    return cover;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/cut_choice.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include "core/shop/cheapest_cover.h"

namespace kerfwall {

namespace {

using Index = std::size_t;

constexpr long kSetupPrice = 1'000'000;  ///< more than all kerfs together that may be cut to marks
constexpr Index kSearchSteps = 20'000;   ///< of the search, for each group of kerfs that hang together
constexpr Index kMostMachines = 6;           ///< every choice of so many machines is tried

bool isTableSaw(SawKind kind) {
    return kind == SawKind::RipFence || kind == SawKind::CrosscutSled || kind == SawKind::MitreGauge;
}

/// The machine a saw of the bench stands for: the first saw there that is the same one. Rip fence, sled and gauge are
/// one table saw where kerf and blade are the same.
Index machineOf(const Bench& bench, Index saw) {
    const Saw& is = bench.saws[saw];
    const auto same = std::ranges::find_if(bench.saws, [&](const Saw& other) {
        return &other == &is || (isTableSaw(is.kind) && isTableSaw(other.kind) && other.kerf == is.kerf && other.blade == is.blade);
    });
    return static_cast<Index>(same - bench.saws.begin());
}

/// A set-up that could be made, with the kerfs it could cut.
struct Setup {
    std::optional<Index> saw;
    std::optional<Index> machine;
    bool toMarks = false;
    Setting setting;
    std::vector<Index> kerfs;  ///< in rising order
    std::map<Index, Index> wayOf;  ///< kerf to the best liked of its ways in this set-up
};

/// How good a choice is: the less the better, compared from the left.
struct Worth {
    int dislike = 0;
    double travel = 0;
    auto operator<=>(const Worth&) const = default;
};

class Choice {
  public:
    Choice(const Project& project, const std::vector<CutAsked>& cuts) : m_bench(benchOf(project)) {
        std::map<std::string, Index> known;
        for (Index kerf = 0; kerf < cuts.size(); ++kerf) {
            m_ways.push_back(kerfWays(project, cuts[kerf]));
            for (Index w = 0; w < m_ways[kerf].size(); ++w) add(known, kerf, w);
        }
    }

    ChosenCuts choose() {
        if (m_ways.empty()) return {};
        const std::vector<Index> machines = machinesAtHand();
        const Cover fewest = coverWith(everyMachine(machines));
        std::vector<Index> best = withFewestMachines(machines, fewest);
        better(best);
        ChosenCuts chosen;
        std::set<Index> used;
        for (Index kerf = 0; kerf < m_ways.size(); ++kerf) {
            const Index setup = setupFor(kerf, best);
            used.insert(setup);
            const KerfWay& way = m_ways[kerf][m_setups[setup].wayOf.at(kerf)];
            chosen.cuts.push_back({way.saw, way.way});
        }
        chosen.setups = static_cast<int>(used.size());
        chosen.lowerBound = std::min(chosen.setups, setupsFor(fewest.bound));
        return chosen;
    }

  private:
    using Machines = std::set<std::optional<Index>>;

    void add(std::map<std::string, Index>& known, Index kerf, Index w) {
        const KerfWay& way = m_ways[kerf][w];
        const auto [at, isNew] = known.try_emplace(way.setup, m_setups.size());
        if (isNew) {
            const auto machine = way.saw ? std::optional(machineOf(m_bench, *way.saw)) : std::nullopt;
            m_setups.push_back({way.saw, machine, way.is.toMarks, way.is.setting, {}, {}});
        }
        Setup& setup = m_setups[at->second];
        if (setup.kerfs.empty() || setup.kerfs.back() != kerf) setup.kerfs.push_back(kerf);
        const auto [best, first] = setup.wayOf.try_emplace(kerf, w);
        if (!first && way.dislike < m_ways[kerf][best->second].dislike) best->second = w;
    }

    [[nodiscard]] long priceOf(const Setup& setup) const {
        return kSetupPrice + (setup.toMarks ? static_cast<long>(setup.kerfs.size()) : 0);
    }

    /// The fewest set-ups whose price can reach that of a bound.
    [[nodiscard]] int setupsFor(long bound) const {
        const long atMost = static_cast<long>(m_ways.size());
        return static_cast<int>((std::max(0L, bound - atMost) + kSetupPrice - 1) / kSetupPrice);
    }

    [[nodiscard]] std::vector<Index> machinesAtHand() const {
        std::set<Index> machines;
        for (const Setup& setup : m_setups) {
            if (setup.machine) machines.insert(*setup.machine);
        }
        return {machines.begin(), machines.end()};
    }

    static Machines everyMachine(const std::vector<Index>& machines) {
        Machines all(machines.begin(), machines.end());
        all.insert(std::nullopt);
        return all;
    }

    [[nodiscard]] bool areEnough(const Machines& machines) const {
        std::vector<bool> isCut(m_ways.size(), false);
        for (const Setup& setup : m_setups) {
            if (!machines.contains(setup.machine)) continue;
            for (const Index kerf : setup.kerfs) isCut[kerf] = true;
        }
        return std::ranges::find(isCut, false) == isCut.end();
    }

    /// The cheapest set-ups at these machines. Requires  they are enough.
    [[nodiscard]] Cover coverWith(const Machines& machines) const {
        std::vector<Index> known;
        std::vector<Offer> offers;
        for (Index i = 0; i < m_setups.size(); ++i) {
            if (!machines.contains(m_setups[i].machine)) continue;
            known.push_back(i);
            offers.push_back({m_setups[i].kerfs, priceOf(m_setups[i])});
        }
        Cover cover = cheapestCover(m_ways.size(), offers, kSearchSteps);
        for (Index& offer : cover.offers) offer = known[offer];
        return cover;
    }

    [[nodiscard]] Machines machinesOf(const std::vector<Index>& setups) const {
        Machines machines;
        for (const Index setup : setups) machines.insert(m_setups[setup].machine);
        return machines;
    }

    /// Of all choices of machines that do with no dearer set-ups one of the smallest, the best liked of them.
    [[nodiscard]] std::vector<Index> withFewestMachines(const std::vector<Index>& machines, const Cover& fewest) const {
        std::vector<Index> best = fewest.offers;
        std::tuple<Index, Worth> least{machinesOf(best).size(), worthOf(best)};
        const auto consider = [&](const Machines& with) {
            if (!areEnough(with)) return;
            const Cover cover = coverWith(with);
            if (cover.price > fewest.price) return;
            const std::tuple<Index, Worth> is{machinesOf(cover.offers).size(), worthOf(cover.offers)};
            if (is >= least) return;
            least = is;
            best = cover.offers;
        };
        if (machines.size() <= kMostMachines) {
            for (unsigned chosen = 1; chosen < (1u << machines.size()); ++chosen) {
                if (static_cast<Index>(std::popcount(chosen)) > std::get<0>(least)) continue;
                Machines with{std::nullopt};
                for (Index i = 0; i < machines.size(); ++i) {
                    if ((chosen >> i & 1u) != 0) with.insert(machines[i]);
                }
                consider(with);
            }
            return best;
        }
        for (const Index without : machines) {
            Machines with = machinesOf(best);
            if (with.erase(without) > 0) consider(with);
        }
        return best;
    }

    /// The set-up among `setups` that cuts the kerf: one with fence or stop before marks, then the best liked.
    [[nodiscard]] Index setupFor(Index kerf, const std::vector<Index>& setups) const {
        Index best = m_setups.size();
        std::tuple<bool, int> least;
        for (const Index setup : setups) {
            const auto way = m_setups[setup].wayOf.find(kerf);
            if (way == m_setups[setup].wayOf.end()) continue;
            const std::tuple<bool, int> is{m_setups[setup].toMarks, m_ways[kerf][way->second].dislike};
            if (best == m_setups.size() || is < least) {
                best = setup;
                least = is;
            }
        }
        return best;
    }

    [[nodiscard]] Worth worthOf(const std::vector<Index>& setups) const {
        Worth worth;
        for (Index kerf = 0; kerf < m_ways.size(); ++kerf) {
            const Setup& setup = m_setups[setupFor(kerf, setups)];
            worth.dislike += m_ways[kerf][setup.wayOf.at(kerf)].dislike;
        }
        worth.travel = travelOf(setups);
        return worth;
    }

    /// How far fences and stops move, saw by saw, angle by angle, from the nearest setting to the farthest.
    [[nodiscard]] double travelOf(const std::vector<Index>& setups) const {
        std::map<std::tuple<std::optional<Index>, double>, std::pair<double, double>> spans;
        for (const Index i : setups) {
            const Setup& is = m_setups[i];
            const auto at = is.setting.fence ? is.setting.fence : is.setting.stop;
            if (!at) continue;
            const auto [span, isNew] =
                spans.try_emplace({is.saw, is.setting.angle.value_or(0)}, std::pair{*at, *at});
            span->second = {std::min(span->second.first, *at), std::max(span->second.second, *at)};
        }
        double travel = 0;
        for (const auto& [saw, span] : spans) travel += span.second - span.first;
        return travel;
    }

    /// Puts one set-up in another's place as long as that makes the choice better.
    void better(std::vector<Index>& setups) const {
        Worth worth = worthOf(setups);
        bool again = true;
        for (int round = 0; again && round < 3; ++round) {
            again = false;
            for (Index i = 0; i < setups.size(); ++i) {
                for (const Index other : inPlaceOf(setups[i], setups)) {
                    std::vector<Index> changed = setups;
                    changed[i] = other;
                    const Worth is = worthOf(changed);
                    if (!(is < worth)) continue;
                    worth = is;
                    setups = changed;
                    again = true;
                }
            }
        }
    }

    /// Set-ups at the same price, at machines in use, that could cut all that only this one cuts.
    [[nodiscard]] std::vector<Index> inPlaceOf(Index setup, const std::vector<Index>& setups) const {
        std::vector<Index> own;
        for (const Index kerf : m_setups[setup].kerfs) {
            if (setupFor(kerf, setups) == setup) own.push_back(kerf);
        }
        const Machines machines = machinesOf(setups);
        std::vector<Index> others;
        if (own.empty()) return others;
        for (Index other = 0; other < m_setups.size(); ++other) {
            const Setup& is = m_setups[other];
            if (other == setup || is.toMarks != m_setups[setup].toMarks || !machines.contains(is.machine)) continue;
            if (std::ranges::includes(is.kerfs, own) && std::ranges::find(setups, other) == setups.end()) {
                others.push_back(other);
            }
        }
        return others;
    }

    const Bench& m_bench;
    std::vector<std::vector<KerfWay>> m_ways;
    std::vector<Setup> m_setups;
};

}  // namespace

ChosenCuts chooseCuts(const Project& project, const std::vector<CutAsked>& cuts) {
    return Choice(project, cuts).choose();
}

}  // namespace kerfwall

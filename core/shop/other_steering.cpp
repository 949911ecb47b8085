// SPDX-License-Identifier: GPL-3.0-or-later
// What else on the bench would cut a wish; declared in from_wanted.h.
#include <optional>
#include <tuple>
#include <vector>

#include "core/shop/placed_wish.h"

namespace kerfwall {
namespace {

std::vector<Steering> steeringsOn(const Project& project) {
    std::vector<Steering> all;
    const Bench& bench = benchOf(project);
    if (bench.trimBit) all.push_back({false, bench.trimBit->diameter, bench.trimBit->diameter});
    for (const double bush : bench.bushes) {
        for (const double bit : bench.bits) {
            if (bush - bit >= kBushRoom) all.push_back({true, bush, bit});
        }
    }
    return all;
}

struct Try {
    Steering steering;
    bool bored = false;
};

bool isBetter(const Try& one, const Try& other) {
    return std::tuple(one.bored, -one.steering.cutter, one.steering.guide) <
           std::tuple(other.bored, -other.steering.cutter, other.steering.guide);
}

template <class Laying>
std::optional<Steering> bestSteering(const Project& project, const Laying& lay) {
    if (!project.cutouts.empty()) return std::nullopt;
    const auto now = lay(project);
    if (now && !now->boreRadius) return std::nullopt;
    std::optional<Try> best;
    for (const Steering& steering : steeringsOn(project)) {
        const auto laid = lay(steeredBy(project, steering));
        if (!laid || (now && laid->boreRadius)) continue;
        const Try next{steering, laid->boreRadius.has_value()};
        if (!best || isBetter(next, *best)) best = next;
    }
    return best ? std::optional(best->steering) : std::nullopt;
}

}  // namespace

Project steeredBy(const Project& project, const Steering& steering) {
    Project next = project;
    next.use.byBush = steering.byBush;
    next.use.bit = steering.cutter;
    if (steering.byBush) next.use.bush = steering.guide;
    else next.use.bearing = steering.guide;
    return next;
}

std::optional<Steering> otherSteering(const Project& project, const Wish& wish) {
    return bestSteering(project, [&](const Project& steered) { return layWish(steered, wish); });
}

std::optional<Steering> otherSteering(const Project& project, const Wish& wish, const WishPlace& place) {
    return bestSteering(project, [&](const Project& steered) { return layPlaced(steered, wish, place); });
}

}  // namespace kerfwall

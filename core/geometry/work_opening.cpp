// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/work_opening.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

#include "core/geometry/tolerance.h"
#include "core/geometry/trimmed_void.h"

namespace kerfwall {
namespace {

/// True where a bored corner leaves a kerf longer in the kerfs' band than below it.
bool bandDiffers(const World& world) {
    return std::ranges::any_of(world.kerfs, [](const LaidKerf& kerf) { return kerf.below != kerf.inBand; });
}

/// Trims, then rolls the guide in what that left.
RolledOpening rolledAgain(const World& world, const ArrangedCutout& cutout, const Border& border, const UseAnswer& use,
                          double bitRadius) {
    const double guide = use.guide / 2;
    const Panel& panel = world.project.panel;
    const std::vector<LaidKerf> none;
    const std::vector<LaidKerf>& open = use.rides == Rides::Kerfs ? world.kerfs : none;
    RolledOpening found = lookAsFarAsNeeded(world, border, bitRadius + guide, std::min(guide, bitRadius), [&](const Frame& frame) {
        RolledOpening first;
        first.rim = voidRim(world.project, world.arranged, cutout, border, world.kerfs, frame);
        first.opening = openingOf(first.rim, bitRadius, bitRadius, cutout.faces, world.project, world.arranged);
        if (!first.opening.room.reachedFrame) first = proved(std::move(first), bitRadius, bitRadius, panel);
        const Opening& trimmed = first.opening;
        RolledOpening rolled;
        rolled.rim = trimmedVoidRim(world.project, world.arranged, border, open, trimmed.swept, frame);
        std::ranges::copy(trimmed.doubts, std::back_inserter(rolled.rim.doubts));
        rolled.opening = openingOf(rolled.rim, guide, use.cutter / 2, cutout.faces, world.project, world.arranged);
        rolled.opening.room.reachedFrame = rolled.opening.room.reachedFrame || trimmed.room.reachedFrame;
        return rolled;
    });
    return proved(std::move(found), guide, use.cutter / 2, panel);
}

constexpr double kRimChange = 0.001;  // mm

/// Where a disc had room that a larger one has not: a place on its room's rim far from the other's.
Point lostPlace(const Room& smaller, const Room& larger) {
    for (const Curve& curve : smaller.chosen.curves) {
        const Point place = curve.at(curve.size / 2);
        const bool kept = std::ranges::any_of(larger.chosen.curves, [&](const Curve& other) {
            return distanceTo(other, place) < kRimChange;
        });
        if (!kept) return place;
    }
    return smaller.chosen.curves.empty() ? Point{} : smaller.chosen.curves.front().from;
}

}  // namespace

bool worksAsTrimmed(const UseAnswer& use, double bitRadius) {
    return use.rides != Rides::Kerfs && use.guide == use.cutter && use.guide == 2 * bitRadius;
}

RolledOpening workOpening(const World& world, const ArrangedCutout& cutout, const Border& border, const UseAnswer& use,
                          double bitRadius) {
    const bool inBand = use.rides == Rides::Kerfs;
    const bool asDrawn = use.guide / 2 >= bitRadius && !(inBand && bandDiffers(world));
    if (!asDrawn) return rolledAgain(world, cutout, border, use, bitRadius);
    return openingWithin(world, cutout, border, use.guide / 2, use.cutter / 2);
}

std::optional<Point> gapNearBorder(const World& world, const ArrangedCutout& cutout, double radius,
                                   const RolledOpening& rolled) {
    const Room& room = rolled.opening.room;
    for (const double shift : {-kDoubt, kDoubt}) {
        const Room other = roomOf(rolled.rim, radius + shift, cutout.faces, world.project.panel);
        const double allowed = 1e-4 + 10 * kDoubt * (room.perimeter + other.perimeter);
        const bool steady = std::abs(other.area - room.area) <= allowed &&
                            std::abs(other.perimeter - room.perimeter) <= kRimChange;
        if (!steady || other.parts != room.parts) return shift < 0 ? lostPlace(other, room) : lostPlace(room, other);
    }
    return std::nullopt;
}

}  // namespace kerfwall

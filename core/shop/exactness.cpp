// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/exactness.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/shop/step_way.h"
#include "core/shop/wall_shares.h"

namespace kerfwall {

namespace {

/// A wall with all that moves it; none where no step cuts it.
struct MovedWall {
    Point from;  ///< in the loop's order
    Point along;
    Point inward;  ///< square to it, into the opening
    double length = 0;
    Point lineFrom;
    Point lineAlong;
    std::vector<WallShare> shares;

    /// What moves it into the opening at a place on it, for each unit of each error.
    std::vector<Share> inwardAt(Point place) const {
        const double side = dot(leftOf(lineAlong), inward);
        std::vector<Share> all;
        for (const WallShare& share : shares) {
            all.push_back({share.source, share.plusMinus, side * share.at(dot(place - lineFrom, lineAlong))});
        }
        return all;
    }
    /// What turns it anticlockwise.
    std::vector<Share> turns() const {
        std::vector<Share> all;
        for (const WallShare& share : shares) {
            all.push_back({share.source, share.plusMinus, share.perMm});
        }
        return all;
    }
};

std::vector<Share> times(double factor, std::vector<Share> shares) {
    for (Share& share : shares) {
        share.sensitivity *= factor;
    }
    return shares;
}

std::vector<Share> operator+(std::vector<Share> one, const std::vector<Share>& other) {
    one.insert(one.end(), other.begin(), other.end());
    return one;
}

std::optional<MovedWall> movedWall(const Project& project, const Solved& solved, const OrderOfWork& order,
                                   const Wall& wall) {
    const SolvedLine* line = findLine(solved, wall.line);
    const WorkStep* step = stepCutting(order, wall.line, wall.waste);
    if (line == nullptr || step == nullptr) {
        return std::nullopt;
    }
    const Point along = unit(wall.to - wall.from);
    return MovedWall{wall.from,
                     along,
                     leftOf(along),
                     distance(wall.from, wall.to),
                     line->from,
                     unit(line->to - line->from),
                     wallShares(project, *line, wall.waste, wayOf(project, *step))};
}

/// The size from a place on `first` square across to `second`.
struct Across {
    double size = 0;
    PlusMinus plusMinus;
};

/// Moved inwards by d1 and turned by e, the first wall asks (d1 n1 + t (n1 - e u1)) . n2 to stay what the second wall,
/// moved inwards by d2, makes it: dt = -d1 + (d2 + t e (u1 . n2)) / (n1 . n2).
Across acrossAt(const MovedWall& first, const MovedWall& second, double at) {
    const Point place = first.from + at * first.along;
    const double facing = dot(first.inward, second.inward);
    const double size = dot(second.from - place, second.inward) / facing;
    const Point met = place + size * first.inward;
    return {size, together(times(-1, first.inwardAt(place)) + times(1 / facing, second.inwardAt(met)) +
                           times(size * dot(first.along, second.inward) / facing, first.turns()))};
}

/// The coarser class; none where either keeps none.
std::optional<ToleranceClass> coarserOf(std::optional<ToleranceClass> one, std::optional<ToleranceClass> other) {
    return one && other ? std::max(one, other) : std::nullopt;
}

Exactness sizeExactness(const MovedWall& first, const MovedWall& second) {
    const double a = dot(second.from - first.from, first.along);
    const double b = a + second.length * dot(second.along, first.along);
    const Across low = acrossAt(first, second, std::max(0.0, std::min(a, b)));
    const Across high = acrossAt(first, second, std::min(first.length, std::max(a, b)));
    return {largerOf(low.plusMinus, high.plusMinus),
            coarserOf(lengthClassKept(low.size, low.plusMinus.worst),
                      lengthClassKept(high.size, high.plusMinus.worst))};
}

Exactness angleExactness(const MovedWall& first, const MovedWall& second) {
    const PlusMinus turned = together(first.turns() + times(-1, second.turns()));
    const PlusMinus off{degrees(std::atan(turned.worst)), degrees(std::atan(turned.likely))};
    return {off, angleClassKept(std::min(first.length, second.length), off.worst)};
}

using MovedWalls = std::vector<std::optional<MovedWall>>;

std::optional<Exactness> sizeOf(const MovedWalls& walls, const FacingSize& size) {
    const bool areThere = size.firstWall < walls.size() && size.secondWall < walls.size() &&
                          walls[size.firstWall] && walls[size.secondWall];
    return areThere ? std::optional(sizeExactness(*walls[size.firstWall], *walls[size.secondWall]))
                    : std::nullopt;
}

std::optional<Exactness> angleOf(const std::vector<Wall>& drawn, const MovedWalls& walls, std::size_t corner) {
    const auto first = std::ranges::find(drawn, std::optional(corner), &Wall::endCorner) - drawn.begin();
    const auto second = std::ranges::find(drawn, std::optional(corner), &Wall::startCorner) - drawn.begin();
    const auto count = static_cast<std::ptrdiff_t>(walls.size());
    if (first == count || second == count) {
        return std::nullopt;
    }
    const auto& arriving = walls[static_cast<std::size_t>(first)];
    const auto& leaving = walls[static_cast<std::size_t>(second)];
    return arriving && leaving ? std::optional(angleExactness(*arriving, *leaving)) : std::nullopt;
}

}  // namespace

std::vector<CutoutExactness> exactness(const Project& project, const Solved& solved, const OrderOfWork& order) {
    std::vector<CutoutExactness> all;
    for (const SolvedCutout& cutout : solved.cutouts) {
        MovedWalls walls;
        for (const Wall& wall : cutout.walls) {
            walls.push_back(movedWall(project, solved, order, wall));
        }
        CutoutExactness& answer = all.emplace_back();
        for (const FacingSize& size : cutout.sizes) {
            answer.sizes.push_back(sizeOf(walls, size));
        }
        for (std::size_t corner = 0; corner < cutout.corners.size(); ++corner) {
            answer.angles.push_back(angleOf(cutout.walls, walls, corner));
        }
    }
    return all;
}

}  // namespace kerfwall

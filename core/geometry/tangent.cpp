// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/tangent.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

/// The centre lies on the corner's middle line, as far out as the tangent places say.
Point centreOf(const Corner& corner) {
    const Point first = corner.firstTangent - corner.point;
    const Point second = corner.secondTangent - corner.point;
    const Point middle = unit(unit(first) + unit(second));
    return corner.point + std::hypot(length(first), corner.radius) * middle;
}

std::optional<BoreCircle> boreNear(const Solved& solved, Point place, double reach) {
    std::optional<BoreCircle> best;
    for (const BoreCircle& bore : boreCircles(solved)) {
        const double away = std::abs(distance(bore.centre, place) - bore.radius);
        if (away > reach) continue;
        reach = away;
        best = bore;
    }
    return best;
}

}  // namespace

std::vector<BoreCircle> boreCircles(const Solved& solved) {
    std::vector<BoreCircle> circles;
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const Corner& corner : cutout.corners) {
            if (corner.regime != Regime::Bored) continue;
            circles.push_back({corner.first, corner.second, centreOf(corner), corner.radius});
        }
    }
    return circles;
}

std::vector<std::pair<Point, Point>> commonTangents(const Round& first, const Round& second) {
    std::vector<std::pair<Point, Point>> tangents;
    const Point apart = second.centre - first.centre;
    const double away = length(apart);
    if (away < kDoubt) return tangents;
    const Point along = unit(apart);
    // A tangent with unit normal n leaves the centres at signed distances whose difference is n . apart.
    for (const double firstSide : {1.0, -1.0}) {
        if (first.radius == 0 && firstSide < 0) continue;
        for (const double secondSide : {1.0, -1.0}) {
            if (second.radius == 0 && secondSide < 0) continue;
            const double rise = (secondSide * second.radius - firstSide * first.radius) / away;
            if (std::abs(rise) >= 1) continue;
            const Point normal = -rise * along + std::sqrt(1 - rise * rise) * leftOf(along);
            tangents.emplace_back(first.centre + firstSide * first.radius * normal,
                                  second.centre + secondSide * second.radius * normal);
        }
    }
    return tangents;
}

std::optional<NearTangent> tangentNear(const Solved& solved, Point start, Point keptStart, Point end, Point keptEnd,
                                       double reach) {
    const auto fromBore = boreNear(solved, start, reach);
    auto toBore = boreNear(solved, end, reach);
    if (fromBore && toBore && fromBore->centre == toBore->centre) toBore.reset();
    if (!fromBore && !toBore) return std::nullopt;
    const Round first = fromBore ? Round{fromBore->centre, fromBore->radius} : Round{keptStart, 0};
    const Round second = toBore ? Round{toBore->centre, toBore->radius} : Round{keptEnd, 0};
    std::optional<NearTangent> best;
    for (const auto& [from, to] : commonTangents(first, second)) {
        const Point along = unit(to - from);
        const double strays = std::max(std::abs(cross(along, start - from)), std::abs(cross(along, end - from)));
        if (strays > reach) continue;
        reach = strays;
        best = NearTangent{from, to, fromBore, toBore};
    }
    return best;
}

}  // namespace kerfwall

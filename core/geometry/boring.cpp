// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/boring.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/geometry/angle.h"
#include "core/geometry/distance.h"
#include "core/geometry/whole_step.h"

namespace kerfwall {
namespace {

bool isAt(const BoredCorner& bore, const Corner& corner) {
    return (bore.first == corner.first && bore.second == corner.second) ||
           (bore.first == corner.second && bore.second == corner.first);
}

}  // namespace

double usualBoreRadius(const Project& project) {
    const double bit = trimBitOf(project).diameter;
    double best = 2 * bit;
    bool found = false;
    for (const double bore : benchOf(project).bores) {
        if (bore <= bit || (found && bore >= best)) continue;
        best = bore;
        found = true;
    }
    return best / 2;
}

std::optional<double> boreRadiusAt(const Project& project, const SolvedCutout& cutout, const Corner& corner) {
    for (const BoredCorner& bore : project.cutouts.at(cutout.index).corners) {
        if (isAt(bore, corner)) return bore.radius;
    }
    return std::nullopt;
}

Project withBore(const Project& project, const SolvedCutout& cutout, const Corner& corner,
                 std::optional<double> radius) {
    Project next = project;
    std::vector<BoredCorner>& bores = next.cutouts.at(cutout.index).corners;
    const auto found = std::ranges::find_if(bores, [&](const BoredCorner& bore) { return isAt(bore, corner); });
    if (!radius) {
        if (found != bores.end()) bores.erase(found);
    } else if (found != bores.end()) {
        found->radius = *radius;
    } else {
        bores.push_back({corner.first, corner.second, *radius, {}});
    }
    return next;
}

OutlinePiece cornerArc(const Corner& corner, double radius) {
    const double scale = radius / corner.radius;
    OutlinePiece arc;
    arc.isArc = true;
    arc.from = corner.point + scale * (corner.firstTangent - corner.point);
    arc.to = corner.point + scale * (corner.secondTangent - corner.point);
    arc.radius = radius;
    // The cutout lies on the left of the wall that arrives.
    arc.centre = arc.from + radius * leftOf(unit(corner.point - corner.firstTangent));
    return arc;
}

double radiusThrough(const Corner& corner, Point place) {
    const double half = radians(corner.angle) / 2;
    const Point bisector = unit(0.5 * (corner.firstTangent + corner.secondTangent) - corner.point);
    const Point from = place - corner.point;
    const double ahead = dot(from, bisector) / std::sin(half);
    if (ahead <= 0) return 0;
    const double cotangent = std::cos(half) / std::sin(half);
    const double room = ahead * ahead - cotangent * cotangent * dot(from, from);
    const double root = ahead + std::sqrt(std::max(0.0, room));
    // Compared before the division: near 180 degrees the arc grows beyond all bounds.
    const double square = cotangent * cotangent;
    return root >= square * kLargestBore ? kLargestBore : root / square;
}

std::optional<NearRound> roundNear(const Solved& solved, Point place, double pointReach, double arcReach) {
    if (const auto point = cornerNear(solved, place, pointReach)) return NearRound{*point, false};
    std::optional<NearRound> best;
    double nearest = arcReach;
    for (std::size_t i = 0; i < solved.cutouts.size(); ++i) {
        for (std::size_t j = 0; j < solved.cutouts[i].corners.size(); ++j) {
            const Corner& corner = solved.cutouts[i].corners[j];
            if (!(corner.radius > 0)) continue;
            const double away = gapBetween(place, cornerArc(corner, corner.radius)).distance;
            if (away > nearest) continue;
            nearest = away;
            best = NearRound{{i, j}, true};
        }
    }
    return best;
}

HeldRadius heldRadius(const Project& project, double radius, double step, double hold) {
    const double bit = trimBitOf(project).diameter / 2;
    HeldRadius held{stepped(radius, step), false};
    double nearest = hold;
    for (const double bore : benchOf(project).bores) {
        const double away = std::abs(bore / 2 - radius);
        if (away > nearest) continue;
        nearest = away;
        held = {bore / 2, true};
    }
    if (held.radius > kLargestBore) held = {kLargestBore, false};
    if (held.radius <= bit) return {};
    return held;
}

double roomForBore(const SolvedCutout& cutout, const Corner& corner) {
    const auto isHere = [&](const std::optional<std::size_t>& index) { return index && cutout.corners.at(*index) == corner; };
    double room = std::numeric_limits<double>::infinity();
    for (const Wall& wall : cutout.walls) {
        const bool begins = isHere(wall.startCorner);
        if (!begins && !isHere(wall.endCorner)) continue;
        const auto other = begins ? wall.endCorner : wall.startCorner;
        const Corner* next = other ? &cutout.corners.at(*other) : nullptr;
        const double taken = next && next->radius > 0 ? distance(next->point, next->firstTangent) : 0;
        room = std::min(room, distance(wall.from, wall.to) - taken);
    }
    return std::max(0.0, room * corner.radius / distance(corner.point, corner.firstTangent));
}

}  // namespace kerfwall

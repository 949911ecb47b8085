// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/clearing.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/geometry/sawn_corner.h"

namespace kerfwall {
namespace {

constexpr double kAlongSawn = 20;      // degrees up to which a line counts as along a sawn edge
constexpr double kFurthestWall = 4;    // arcs' radii up to which a wall belongs to the sawn corner
constexpr double kHundredths = 100;    // depths are given in hundredths of a millimetre
constexpr double kRounding = 1e-7;     // hundredths; a depth that lies on one stays there

double turnBetween(Point a, Point b) { return degrees(std::acos(std::clamp(dot(a, b), -1.0, 1.0))); }

/// A wall as it leaves the sawn corner: `along` away from it, `inwards` square to that into the opening.
struct SawnWall {
    Point along;
    Point inwards;
};

/// A line's heading read as a wall along `edge`; none where it runs askew to it.
std::optional<SawnWall> wallAlong(Point heading, Point edge, bool openOnLeft) {
    const Point along = dot(heading, edge) < 0 ? -1.0 * heading : heading;
    if (turnBetween(along, edge) > kAlongSawn) return std::nullopt;
    return SawnWall{along, openOnLeft ? leftOf(along) : -1.0 * leftOf(along)};
}

/// What steering adds: the work's wall lies `inset` into the opening from the template's line, and keeps arcs of `radius`.
struct Steered {
    double inset;
    double radius;
};

Steered steeredBy(const Solved& solved) {
    const double guide = solved.use.guide / 2, cutter = solved.use.cutter / 2;
    return {guide - cutter, cutter + std::max(0.0, solved.bitRadius - guide)};
}

struct OtherWall {
    double depth;
    Point along;
};

/// The least deep line along the corner's other edge.
std::optional<OtherWall> otherWall(const Solved& solved, const SawnCorner& corner, Point edge, bool openOnLeft,
                                   const Steered& steered) {
    std::optional<OtherWall> best;
    for (const SolvedLine& line : solved.lines) {
        const auto wall = line.cut ? wallAlong(unit(line.to - line.from), edge, openOnLeft) : std::nullopt;
        if (!wall) continue;
        const double depth = dot(corner.at - line.from, wall->inwards) - steered.inset;
        if (depth < 0 || depth > kFurthestWall * steered.radius || (best && depth >= best->depth)) continue;
        best = OtherWall{depth, wall->along};
    }
    return best;
}

}  // namespace

std::vector<Clearing> clearingsAlong(const Project& project, const Solved& solved, Point heading, double margin) {
    std::vector<Clearing> clearings;
    const Steered steered = steeredBy(solved);
    for (const SawnCorner& corner : sawnCorners(project)) {
        for (const bool onFirst : {true, false}) {
            // The free side lies to the left of the first edge as it leaves the corner, to the right of the second.
            const auto wall = wallAlong(heading, onFirst ? corner.first : corner.second, onFirst);
            if (!wall) continue;
            const Point edge = onFirst ? corner.second : corner.first;
            const auto other = otherWall(solved, corner, edge, !onFirst, steered);
            const double angle = turnBetween(wall->along, other ? other->along : edge);
            const auto depth = clearingDepth(steered.radius, margin, angle, other ? std::optional(other->depth) : std::nullopt);
            if (!depth) continue;
            const double deeper = std::ceil((*depth + steered.inset) * kHundredths - kRounding) / kHundredths;
            clearings.push_back({corner.at - deeper * wall->inwards, corner.at});
        }
    }
    return clearings;
}

}  // namespace kerfwall

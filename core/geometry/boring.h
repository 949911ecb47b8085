// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/geometry/nearest.h"
#include "core/geometry/solved.h"

namespace kerfwall {

inline constexpr double kLargestBore = 150;  // mm radius; bores are at most 300 in diameter

/// The radius a corner is bored to at first: the smallest bore at hand that is larger than the trimming bit,
/// else twice the bit. mm.
[[nodiscard]] double usualBoreRadius(const Project& project);

/// The bore radius asked for at that corner of a cutout; none where it is left to the trimming bit.
[[nodiscard]] std::optional<double> boreRadiusAt(const Project& project, const SolvedCutout& cutout, const Corner& corner);

/// The project with that corner bored to `radius` (mm), or left to the trimming bit where there is none.
/// Requires  the cutout and corner are of this project's answer; radius over 0 and at most kLargestBore.
[[nodiscard]] Project withBore(const Project& project, const SolvedCutout& cutout, const Corner& corner,
                               std::optional<double> radius);

/// The arc of `radius` that rounds a corner and touches both its lines, from the first to the second.
/// Requires  an angle under 180 degrees; radius over 0.
/// Source    the touch points lie as far from the corner as the radius is large: the corner's own, scaled.
[[nodiscard]] OutlinePiece cornerArc(const Corner& corner, double radius);

/// The radius of the arc that touches both lines and runs through `place` on the side of the corner, at most
/// kLargestBore. Beside the corner's wedge: of the arc that comes nearest; 0 at the corner and behind it.
/// Requires  an angle under 180 degrees.
/// Source    the larger root of |p - c| = R with the centre c at R / sin(angle / 2) on the bisector.
[[nodiscard]] double radiusThrough(const Corner& corner, Point place);

/// The largest radius whose arc touches both walls of a corner before the arcs of the corners at their other ends, mm.
/// Requires  the corner is the cutout's; an angle under 180 degrees.
[[nodiscard]] double roomForBore(const SolvedCutout& cutout, const Corner& corner);

/// A corner that a place takes hold of: by its point, or by its arc as it is now.
struct NearRound {
    NearCorner corner;
    bool byArc = false;
    bool operator==(const NearRound&) const = default;
};

/// The corner whose point lies within `pointReach` or whose arc within `arcReach` of a place; the nearest one, the
/// point before the arc.
[[nodiscard]] std::optional<NearRound> roundNear(const Solved& solved, Point place, double pointReach, double arcReach);

/// A bore radius as a hand sets it. None: the corner is left to the trimming bit.
struct HeldRadius {
    std::optional<double> radius;  ///< mm
    bool onDrill = false;          ///< half of a bore at hand
    bool operator==(const HeldRadius&) const = default;
};

/// A radius held on to a bore at hand within `hold` mm, else on whole `step`s, at most kLargestBore. One that is not
/// over the trimming bit's leaves the corner to the bit.
/// Requires  step over 0.
[[nodiscard]] HeldRadius heldRadius(const Project& project, double radius, double step, double hold);

}  // namespace kerfwall

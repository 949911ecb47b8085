// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/says/project.h"

namespace kerfwall {

/// An inward corner of the work as it was sawn out: under 180 degrees of it are free of wood.
struct SawnCorner {
    Point at;
    Point first;       ///< unit, along its edges away from the corner: the free side runs anticlockwise from `first`
    Point second;      ///< to `second`
    double angle = 0;  ///< degrees between them, over 0 and under 180
    bool operator==(const SawnCorner&) const = default;
};

/// The inward corners of the workpiece's outline, of all its parts together where it is glued up.
[[nodiscard]] std::vector<SawnCorner> sawnCorners(const Project& project);

/// How much deeper than the sawn corner, into the wood and square to itself, a wall of the work must lie so that the arc
/// of `radius` which the cutter leaves between it and another wall clears the corner by `margin`. The other wall lies
/// `otherDepth` deeper than the corner, `angle` degrees away across the opening; none: as deep as this one.
/// All mm. 0 margin: the arc touches the sawn corner.
/// Requires  radius > 0, margin >= 0, 0 < angle < 180.
/// Gives     none where no depth will do: the other wall itself does not clear the corner by the margin, or the margin
///           is not under the radius.
/// Source    pencil: the arc's centre is `radius` from both walls and at most radius - margin from the sawn corner.
[[nodiscard]] std::optional<double> clearingDepth(double radius, double margin, double angle,
                                                  std::optional<double> otherDepth = std::nullopt);

}  // namespace kerfwall

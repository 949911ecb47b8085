// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// Whether the corner is bored: asked for with more than the bit's radius, which else does it by itself.
[[nodiscard]] bool isBored(const Corner& corner, const Solved& solved);

/// Centre of the circle of `radius` that touches both sides of a corner, panel frame.
/// Requires  the corner's angle is under 180 degrees and its tangents are set.
/// Source    radius / sin(angle / 2) from the corner along the bisector.
[[nodiscard]] Point centreOf(const Corner& corner, double radius);

/// What the hole is bored with: a drill or hole saw of its diameter, or a circle jig, set from the pivot to
/// the near and to the far side of its bit's cut; neither where the bench has none.
struct BoreTool {
    bool drill = false;
    std::optional<double> pivotToNear;  ///< mm
    std::optional<double> pivotToFar;   ///< mm
    bool operator==(const BoreTool&) const = default;
};
/// Source    far side: the bore's radius; near side: the radius less the bit's diameter.
[[nodiscard]] BoreTool boreToolFor(const Bench& bench, double radius);

/// One step for each row of bored corners (see bore_rows.h), before any kerf. With a drill: at the press, `setting.fence`
/// and, for a single bore, `setting.stop` from fence and stop to the spindle's centre.
[[nodiscard]] std::vector<WorkStep> boreSteps(const Project& project, const Solved& solved);

/// What the trimming bit must leave at bored corners, with the length of each rest, one step a cutout; none without bored corners.
[[nodiscard]] std::vector<WorkStep> handSteps(const Project& project, const Solved& solved);

}  // namespace kerfwall

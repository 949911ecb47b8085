// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// How the waste is sawn out inside the kerfs. The bearing has no edges: nothing may stand beyond the kerf
/// at its height.
struct RoughCut {
    double leastLeft = 0;  ///< of the kerf's floor, mm, measured from the wall
    double mostLeft = 0;
    std::vector<std::size_t> sawOn;  ///< corners where the saw must go on to where the kerfs cross
    bool operator==(const RoughCut&) const = default;
};

/// Least kerf from which a corner needs no sawing on to the crossing, mm.
/// Source    the bit's arc stands r (1 - sin(angle / 2)) off the lines in the corner's middle.
[[nodiscard]] double kerfThatClears(double bitRadius, double cornerAngle);

/// Leaves 0.5 to (narrowest kerf - 0.5); a kerf of 1 mm or less is sawn along its middle.
/// Source    common practice, no source, for the 0.5.
[[nodiscard]] RoughCut roughCutOf(const Solved& solved, const SolvedCutout& cutout);

/// One step for each cutout with kerfs that the bit fits into.
[[nodiscard]] std::vector<WorkStep> roughSteps(const Project& project, const Solved& solved);

}  // namespace kerfwall

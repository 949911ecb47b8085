// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// One stretch of the panel along the cutting line. x along the panel, heights below the layout face, mm.
struct SectionRun {
    enum class Kind { Wood, Kerf, Opening } kind = Kind::Wood;
    double from = 0;
    double to = 0;
    double depth = 0;  ///< Kerf: how deep here
    std::string line;  ///< Kerf: whose
    bool operator==(const SectionRun&) const = default;
};

/// The panel cut along the level line y = `height`, seen from the bottom edge: left to right, gap free.
[[nodiscard]] std::vector<SectionRun> sectionAt(const Project& project, const Solved& solved, double height);

/// The side view under the plan: same x as the plan; the layout face is at y = 0, depths go down and are
/// drawn `exaggeration` times larger. Dimensions kerf depth, web, openings, clamp holes with the wood
/// above and below. `markScale`: as in PlanLayers.
[[nodiscard]] Drawing sideView(const Project& project, const Solved& solved, double height,
                               double exaggeration, double markScale = 1);

}  // namespace kerfwall

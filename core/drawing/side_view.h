// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/drawing.h"
#include "core/drawing/section.h"
#include "core/shop/finding.h"

namespace kerfwall {

/// How a side view is drawn, and what it shows.
struct SideViewLook {
    double exaggeration = 1;  ///< heights drawn that many times larger
    double markScale = 1;     ///< as in PlanLayers
    double wordsFrom = 0;     ///< level: how far along the cut words about the holes begin, so that they stay in view
    bool kerfs = true;
    bool dimensions = true;
    bool findings = true;
};

/// The panel cut along that line. Level: x as in the plan, the layout face at y = 0, depths down. Upright: y
/// as in the plan, the layout face at x = 0, depths to the right: the same drawing turned a quarter
/// anticlockwise. Dimensions kerf depth, web, openings and the heights of clamp holes with the wood above and
/// below; outlines where a hole comes through, with the signs of the findings about it beside the layout
/// face.
[[nodiscard]] Drawing sideView(const Project& project, const Solved& solved,
                               const std::vector<Finding>& findings, const CuttingLine& cut,
                               const SideViewLook& look);

/// How far words and dimensions reach below the panel's bottom edge in an upright view, mm on paper; 0 where there are
/// no clamp holes.
[[nodiscard]] double reachOfWords(const Project& project);

}  // namespace kerfwall

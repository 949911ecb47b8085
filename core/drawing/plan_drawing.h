// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/drawing.h"
#include "core/shop/finding.h"

namespace kerfwall {

/// What the plan shows.
struct PlanLayers {
    bool kerfs = true;
    bool runOut = true;
    bool edgeMarks = true;
    bool opening = true;
    bool work = true;
    bool workpiece = true;
    bool dimensions = true;
    bool findings = true;
    bool strays = false;     ///< lines that lie on another or off the panel; never on paper
    bool fills = true;       ///< board, waste and kerf bands filled; false on the pattern that is glued on
    bool idsInside = false;  ///< the lines' ids inside the panel's edges: a pattern may end there
    double markScale = 1;    ///< mm of the panel for one mm on paper or screen: what keeps its size there
                             ///< (ticks, the ids' distance, dimension offsets) is drawn that much larger
};

/// The plan of the panel, layout face up, in the panel frame.
[[nodiscard]] Drawing planDrawing(const Project& project, const Solved& solved,
                                  const std::vector<Finding>& findings, const PlanLayers& layers);

/// The dimensions alone, as the plan shows them.
[[nodiscard]] std::vector<Dimension> planSizes(const Project& project, const Solved& solved, const PlanLayers& layers);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/says/project.h"

namespace kerfwall::oracle {

/// Tools of a plain test project. mm.
struct Tools {
    double bit = 12.7;  ///< diameter
    double kerf = 3.2;
    double blade = 160;
    double kerfDepth = 6;
};

/// An empty panel, 18 thick, with one guide rail "rail" that every line added by `addLine` names.
[[nodiscard]] Project emptyPanel(double width, double height, const Tools& tools);

/// Adds a line cut through and gives its id.
LineId addLine(Project& project, const std::string& id, const Place& place, Extent extent = Extent::Through);

/// Adds a cutout of the faces these seeds lie in.
Cutout& addCutout(Project& project, std::vector<Point> seeds);

/// A window low to high on a 400 by 300 panel: lines S, E, N, W, each with its kerf inside.
[[nodiscard]] Project windowProject(Point low, Point high, const Tools& tools,
                                    Extent extent = Extent::Through);

}  // namespace kerfwall::oracle

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/border.h"
#include "core/geometry/curve.h"

namespace kerfwall {

/// A kerf with what of it counts in an outline. Places are mm along its line from where that enters the
/// panel; a kerf that runs on past the panel's edge counts to +-kPastThePanel.
struct LaidKerf {
    std::size_t line = 0;  ///< into Arranged::lines
    Kerf kerf;
    Spans below;   ///< for a bearing below bored corners' kerfs: up to the bores' tangent points
    Spans inBand;  ///< for one that rides at the kerfs' height
};

inline constexpr double kPastThePanel = 1e5;

/// The kerfs of all cutouts' walls, line by line, left before right.
/// `borders` stands beside `arranged.cutouts`; `saws` beside `arranged.lines`.
[[nodiscard]] std::vector<LaidKerf> layKerfs(const Project& project, const Arranged& arranged,
                                             const std::vector<Border>& borders,
                                             const std::vector<std::optional<std::size_t>>& saws);

/// How far past its full-depth end a blade's round has cut at least `z` deep, mm; z = 0: the run-out.
/// Source    sqrt(R^2 - (R - d + z)^2), from the circle of the blade.
[[nodiscard]] double reachOfRound(double bladeDiameter, double kerfDepth, double z);

}  // namespace kerfwall

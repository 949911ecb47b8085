// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// A wall that is to stand on the line through p and q, the opening on the left of p -> q.
struct WallToLay {
    Point p;
    Point q;
};

/// A coordinate on the grid of 1e-9 mm on which laid walls fall.
[[nodiscard]] double onGrid(double mm);
[[nodiscard]] Point onGrid(Point place);

[[nodiscard]] bool isLevel(const WallToLay& wall);
[[nodiscard]] bool isUpright(const WallToLay& wall);
/// True where that line is cut and lies on the wall's, within kDoubt over the wall and over the panel.
[[nodiscard]] bool liesAt(const SolvedLine& line, const WallToLay& wall);
/// The side of that wall's waste along a line that lies there.
[[nodiscard]] Side wasteSide(const SolvedLine& line, const WallToLay& wall);

/// Lays the walls of an opening in the order a maker sets them off: level ones from below, upright ones from the left,
/// then the others in turn. How each is laid stands at layOutline. `none` walls run off the panel: no line.
/// `symmetric`: slanting walls lie by their angle, and mirror images about the upright line through the middle of
/// the walls' width are laid as such.
/// Gives     the ids, one a wall; "" for none.
[[nodiscard]] std::vector<LineId> layWalls(Project& project, const Solved& solved,
                                           const std::vector<std::optional<WallToLay>>& walls, bool symmetric, int highest);

/// The places in those lists, in the order the walls are laid.
[[nodiscard]] std::vector<std::size_t> layingOrder(const std::vector<std::optional<WallToLay>>& walls);

}  // namespace kerfwall

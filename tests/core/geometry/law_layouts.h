// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "core/says/project.h"

namespace kerfwall::laws {

/// A layout drawn from `seed`, the same on every machine: every line by two points on a 0.1 mm grid,
/// one bit and two kerfs, a closed cutout of one to three faces near the middle of a 600 by 500 panel,
/// other lines across the panel.
[[nodiscard]] Project seededProject(std::uint64_t seed);

/// The same on a whole-millimetre grid with level, upright and 45 degree lines, a bit of 10 and a kerf of 3
/// or 4: lines through one point, walls on one line, gaps of exactly one bit are common.
[[nodiscard]] Project gridProject(std::uint64_t seed);

/// The project with every place moved by `where`; coordinates are rounded to 1e-10 mm so that they stay
/// short decimals.
[[nodiscard]] Project moved(const Project& project, const std::function<Point(Point)>& where);

}  // namespace kerfwall::laws

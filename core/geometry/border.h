// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/arranged.h"

namespace kerfwall {

/// A cutout's drawn outline, walls and corners, without what the bit makes of them: `step`, `regime`
/// and `drill` of the corners are left at their defaults.
struct Border {
    Outline drawn;
    std::vector<Wall> walls;
    std::vector<Corner> corners;
    bool open = false;
    std::vector<DrawingTrouble> troubles;  ///< bored corners that are no corners
};

[[nodiscard]] Border borderOf(const Project& project, const Arranged& arranged, const ArrangedCutout& cutout,
                              double bitRadius);

/// Distance from a corner's point to where a circle of `radius` touches its sides. Angle in degrees.
[[nodiscard]] double tangentLength(double radius, double angle);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>

#include "core/geometry/moving.h"

namespace kerfwall {

struct NearLine {
    LineId id;
    Grip grip = Grip::Whole;  ///< From or To where the place is within reach of that end
    bool operator==(const NearLine&) const = default;
};

struct NearCorner {
    std::size_t cutout = 0;  ///< index into Solved::cutouts
    std::size_t corner = 0;  ///< index into that cutout's corners
    bool operator==(const NearCorner&) const = default;
};

/// The line nearest to a place, within `reach` mm of its run; where there is none, one in trouble that would run there.
[[nodiscard]] std::optional<NearLine> lineNear(const Solved& solved, Point place, double reach);

/// The cutout's corner nearest to a place, within `reach` mm.
[[nodiscard]] std::optional<NearCorner> cornerNear(const Solved& solved, Point place, double reach);

/// The clamp hole under a place, within `reach` mm of its outline in the plan: an index into the project's.
[[nodiscard]] std::optional<std::size_t> holeNear(const Project& project, Point place, double reach);

}  // namespace kerfwall

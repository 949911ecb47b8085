// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/solved.h"
#include "core/shop/lay_outline.h"

namespace kerfwall {

/// All that laying a wanted outline needs, worked out once. Lengths in mm. Refers to what it was made from.
struct OutlineDraft {
    const Project& project;
    const WantedOutline& wish;
    double offset = 0;      ///< a wall stands this far outside the edge it cuts
    double trimRadius = 0;  ///< of the trimming bit
    UseAnswer use;
    std::vector<Point> walls;    ///< corners of the template's opening, on the grid
    Box bounds;                  ///< of that; to the panel's edge where it is open
    double cornerLeft = 0;       ///< radius the corners get in the work
    std::optional<double> bore;  ///< radius of the template's bored corners
    Blank opening;
    Blank goodBlank;
};

[[nodiscard]] OutlineDraft draftOf(const Project& project, const WantedOutline& wish);

/// The length an arc takes of a side for each mm of its radius; 0 at an inward corner and off the panel.
[[nodiscard]] double shareOfArc(const OutlineDraft& draft, std::size_t corner);

/// Why the tools cannot cut it, or the panel not hold it, whatever else lies there; none: they can.
[[nodiscard]] std::optional<WishRefusal> cannotBeCut(const OutlineDraft& draft);

}  // namespace kerfwall

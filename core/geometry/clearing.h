// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// Where a line lies so that the cutter's arc in the work clears a sawn corner of it.
struct Clearing {
    Point place;   ///< on the line
    Point corner;  ///< the sawn one
    bool operator==(const Clearing&) const = default;
};

/// The places for a line along `heading` (unit) that runs, up to 20 degrees, along an edge of a sawn corner: as little
/// deeper into the wood, to a hundredth of a millimetre, as clears that corner by `margin` mm. The other wall is the
/// least deep cut line along the corner's other edge; where there is none, one as deep as this.
[[nodiscard]] std::vector<Clearing> clearingsAlong(const Project& project, const Solved& solved, Point heading, double margin);

}  // namespace kerfwall

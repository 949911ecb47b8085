// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/geometry/hold.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// Where a line of a held direction is drawn aside to.
struct Passing {
    Point place;  ///< on the line
    Hold hold;
};

/// What a line along `heading` (unit) through `place` is drawn to within `reach` mm: to clear a sawn corner of the work by
/// `margin`, through a crossing, or against a bore; the nearest of them.
[[nodiscard]] std::optional<Passing> passingNear(const Project& project, const Solved& solved, Point place, Point heading,
                                                 double margin, double reach);

}  // namespace kerfwall

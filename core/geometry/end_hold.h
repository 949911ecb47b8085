// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/geometry/hold.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// How places are caught while a line is in hand.
struct Catching {
    double reach = 5;  ///< mm within which a place is caught
    double step = 1;   ///< mm: what is caught by nothing else falls on whole steps
    bool snap = true;  ///< false: nothing is caught, places are only rounded to `step`
};

/// One end of a line in hand and what it holds on to.
struct HeldEnd {
    Point place;
    std::optional<Edge> edge;  ///< on which it lies
    std::optional<Hold> hold;  ///< it must not be moved off it; none: on a whole step, or free
};

/// Where one end of a drag goes. Inside the panel: to a crossing, else to a point a line was laid through, else to
/// whole steps from the reference edge and the edge square to it. Near an edge, or outside the panel: onto the edge,
/// there to a line's end, a corner or the edge's middle, else to whole steps.
/// Requires  reach > 0, step > 0.
[[nodiscard]] HeldEnd holdEnd(const Project& project, const Solved& solved, const Catching& catching, Point place);

}  // namespace kerfwall

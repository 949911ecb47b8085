// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/picked.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// What lies under a place: the line nearest within `reach` mm of its run, else a clamp hole, else a fence, else a
/// cutout, else the border of the workpiece within reach. Empty where there is nothing.
[[nodiscard]] Picked thingAt(const Project& project, const Solved& solved, Point place, double reach);

/// What a band from one place to another takes: lines that cross it, since they run from edge to edge; clamp holes,
/// fences, cutouts and the workpiece that lie inside it whole.
[[nodiscard]] Picked thingsInBand(const Project& project, const Solved& solved, Point from, Point to);

/// Everything that can be picked, one by one: lines, clamp holes, fences, cutouts, the workpiece.
[[nodiscard]] std::vector<Picked> thingsOf(const Project& project, const Solved& solved);

/// The same together.
[[nodiscard]] Picked everythingOf(const Project& project, const Solved& solved);

/// What of `picked` the project still holds.
[[nodiscard]] Picked stillThere(const Project& project, Picked picked);

/// The outlines of what is picked in the plan: a line's run as two points, all else closed corners.
[[nodiscard]] std::vector<std::vector<Point>> outlinesOf(const Project& project, const Solved& solved, const Picked& picked);

/// The bounds of what is picked, of lines their run over the panel. Requires  it is not empty.
[[nodiscard]] Box boundsOf(const Project& project, const Solved& solved, const Picked& picked);

/// The corners of a clamp hole in the plan, from its mouth.
[[nodiscard]] std::vector<Point> holeCorners(const Panel& panel, const ClampHole& hole);

}  // namespace kerfwall

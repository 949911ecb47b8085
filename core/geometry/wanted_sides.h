// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "core/geometry/point.h"
#include "core/says/panel.h"

namespace kerfwall {

/// Polygons as a maker gives them: side i runs from corner i to the next, the last one back to the first.

/// The first two sides that cross or touch, but for neighbours in their common corner; none: a simple polygon.
/// Requires  at least three corners, none twice in a row.
[[nodiscard]] std::optional<std::pair<std::size_t, std::size_t>> crossingSides(const std::vector<Point>& polygon);

/// The angle inside the polygon at a corner, degrees, 0 to 360.
/// Requires  anticlockwise, simple.
[[nodiscard]] double angleAt(const std::vector<Point>& polygon, std::size_t corner);

/// The polygon whose sides lie `by` mm further out (negative: further in), corner for corner.
/// Requires  anticlockwise, no corner of 180 or 360 degrees.
/// Source    the crossing of both moved sides: by / sin(angle) along either one's direction.
[[nodiscard]] std::vector<Point> movedOut(const std::vector<Point>& polygon, double by);

/// The first side that runs the other way in `moved`: it had no room to be moved so far.
[[nodiscard]] std::optional<std::size_t> turnedSide(const std::vector<Point>& polygon, const std::vector<Point>& moved);

/// The narrowest way through a polygon between two sides that are no neighbours.
struct Neck {
    double width = 0;  ///< mm
    std::size_t first = 0;
    std::size_t second = 0;
};
/// None where every way through ends in a corner. Sides with one side between them whose nearest places are that side's
/// ends are none: that side's length says it all.
[[nodiscard]] std::optional<Neck> narrowestNeck(const std::vector<Point>& polygon);

/// The convex faces into which a polygon's own sides, run on over the panel, and the panel's edges cut it.
/// Requires  anticlockwise, simple.
[[nodiscard]] std::vector<std::vector<Point>> facesWithin(const Panel& panel, const std::vector<Point>& polygon);

/// True where the endless line through p and q has corners of that face on both its sides, more than kDoubt away.
[[nodiscard]] bool runsThroughFace(Point p, Point q, const std::vector<Point>& face);

}  // namespace kerfwall

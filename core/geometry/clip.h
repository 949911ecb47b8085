// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// Where the endless line through `place` along `heading` enters and leaves the panel; none where it runs
/// over less than 1e-3 mm of it.
/// Requires  heading is not the zero vector.
[[nodiscard]] std::optional<std::pair<Point, Point>> clipToPanel(const Panel& panel, Point place, Point heading);

/// Where two lines cross on the panel; none where they are parallel or cross off their run.
[[nodiscard]] std::optional<Point> crossingPlace(const SolvedLine& first, const SolvedLine& second);

/// The part of a convex polygon on the left of the line from `from` to `to`; empty where there is none.
[[nodiscard]] std::vector<Point> leftPart(const std::vector<Point>& polygon, Point from, Point to);

/// Area of a polygon, mm², positive anticlockwise.
[[nodiscard]] double polygonArea(const std::vector<Point>& polygon);

/// What places reach over.
/// Requires  at least one.
[[nodiscard]] Box boundsOf(const std::vector<Point>& places);

/// The centre of gravity of a convex polygon: it lies inside.
/// Requires  an area over 0.
[[nodiscard]] Point polygonCentre(const std::vector<Point>& polygon);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/geometry/hold.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// A direction a line in hand holds on to.
struct HeldHeading {
    Base base = Edge::Bottom;  ///< what `angle` counts from
    double angle = 0;          ///< degrees anticlockwise, over -90 to 90; 0: parallel
    Point heading;             ///< unit; a line has no front
    std::optional<Hold> hold;  ///< none: the angle was typed
};

/// The edge a direction is nearest to: the reference edge up to 45 degrees, else the edge square to it.
[[nodiscard]] Edge edgeAlong(const Panel& panel, Point heading);

/// The angle from `base` to `heading`, degrees, over -90 to 90: a line has no front.
[[nodiscard]] double angleBetween(Point base, Point heading);
[[nodiscard]] double foldedAngle(double angle);

/// `heading` turned anticlockwise; exact at quarter turns: a line square to an edge must be square.
[[nodiscard]] Point turnedBy(Point heading, double angle);

/// Parallel or square to an edge of the panel, where `free` then strays by at most `reach` from the line through `kept`.
[[nodiscard]] std::optional<HeldHeading> holdSquare(const Panel& panel, Point kept, Point free, double reach);

/// Parallel or square to a slanting line, then whole degrees from an edge within half the reach, then half degrees within a quarter.
[[nodiscard]] std::optional<HeldHeading> holdSlant(const Panel& panel, const Solved& solved, Point kept, Point free, double reach);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <utility>

#include "core/geometry/solved.h"

namespace kerfwall {

/// A size on the drawing: from a place on one edge or line straight to a place on another.
struct DrawnBetween {
    Base first;
    Base second;
    Point from;
    Point to;
    bool operator==(const DrawnBetween&) const = default;
};

enum class NoSize {
    TooSmall,     ///< a size is more than 0
    OffThePanel,  ///< the line would lie off the panel or on another line
    GoesAlong,    ///< both ends move together: the size cannot change
};

/// The line that moves where that size is set: of the two the one laid later. "" where both ends are edges.
[[nodiscard]] LineId movedBy(const Project& project, const DrawnBetween& size);

/// The project with that size set to `value` mm: the line laid later moves and keeps its direction and its way of
/// laying; where it goes along with the other, the other moves. Walls that mirror one another both move.
[[nodiscard]] std::expected<Project, NoSize> withSize(const Project& project, const Solved& solved, const DrawnBetween& size, double value);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// The ways of laying a line, in the order of `Place`.
enum class Way { Offset, Angle, Points, Marks, Mirror };

[[nodiscard]] Way wayOf(const Place& place);

/// The lines a line can be laid from without being laid from itself, in the project's order.
[[nodiscard]] std::vector<LineId> linesFor(const Project& project, const LineId& id);

/// What a line can be laid from: the edges, the reference edge and the edge square to it first, then linesFor.
[[nodiscard]] std::vector<Base> basesFor(const Project& project, const LineId& id);

/// The crossings of such lines on the panel that lie nearest to a line, at most `most` of them, nearest first; the one
/// it is laid through, if any, first of all.
[[nodiscard]] std::vector<CrossingOf> crossingsFor(const Project& project, const Solved& solved, const LineId& id, std::size_t most);

enum class NoRelaying {
    NoPlace,      ///< the line lies nowhere on or beside the panel, so there is nothing to keep
    NoOtherLine,  ///< there is no line it could be the mirror image of
};

/// A line's place laid another way: where it lies now, in its direction where another line hangs on it. By a distance where
/// it is parallel to nothing, it turns about its middle to be parallel to what it was laid from; as a mirror image
/// where it is none, it moves to the nearest.
[[nodiscard]] std::expected<Place, NoRelaying> relaid(const Project& project, const Solved& solved, const LineId& id, Way way);

/// A line by an angle, through another place: the crossing, or, for none, the point where it lies now.
/// Requires  it is laid by an angle.
[[nodiscard]] Place laidThrough(const Project& project, const Solved& solved, const LineId& id, std::optional<CrossingOf> crossing);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// The circle a bored corner leaves in the template.
struct BoreCircle {
    LineId first;  ///< the corner's lines
    LineId second;
    Point centre;
    double radius = 0;  ///< mm
    bool operator==(const BoreCircle&) const = default;
};

/// The circles of all bored corners.
[[nodiscard]] std::vector<BoreCircle> boreCircles(const Solved& solved);

/// A circle to lay a line against; radius 0: a point.
struct Round {
    Point centre;
    double radius = 0;
};

/// The straight lines that touch both rounds, each from its touching place on the first to that on the second:
/// four where they lie clear of one another, two from a point, fewer where they overlap, none where one holds the other.
[[nodiscard]] std::vector<std::pair<Point, Point>> commonTangents(const Round& first, const Round& second);

/// A straight line that touches one bore, or one at each end.
struct NearTangent {
    Point from;  ///< where the line begins or touches the first bore
    Point to;
    std::optional<BoreCircle> fromBore;  ///< none: `from` is a given place
    std::optional<BoreCircle> toBore;
};

/// A line from near `start` to near `end`, each within `reach` mm of a bore's circle or, where it is near none, kept:
/// `start` at `keptStart`, `end` at `keptEnd`. None where neither is near one, or no tangent passes both within reach.
[[nodiscard]] std::optional<NearTangent> tangentNear(const Solved& solved, Point start, Point keptStart, Point end,
                                                     Point keptEnd, double reach);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <utility>

#include "core/geometry/solved.h"
#include "core/says/bench.h"

namespace kerfwall {

/// Whether the kept wood lies round the cutter's path (an opening) or within it (an outside shape).
enum class Shape { Opening, Outside };

/// How the cutter goes round the shape, against its tooth, seen from above as the panel lies.
/// On a table the panel moves and the cutter goes round it all the same.
/// Source    a cutter turns clockwise seen from its router. Seen from above: held in the hand, an opening
///           clockwise, an outside anticlockwise; in a table it turns the other way. Common practice.
[[nodiscard]] Turn feedFromAbove(Shape shape, Router router);

/// The same as drawn, seen from the layout face: mirrored where that face lies down.
[[nodiscard]] Turn feedFromLayoutFace(Shape shape, Router router, bool faceUp);

/// Which way the cutter goes along one wall, in the panel frame: from the first place to the second. The same for the walls
/// of an opening and those of an island left standing in it, since the waste lies on the left of every wall.
[[nodiscard]] std::pair<Point, Point> feedAlong(const Wall& wall, Router router, bool faceUp);

}  // namespace kerfwall

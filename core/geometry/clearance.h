// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/doubts.h"
#include "core/geometry/opening.h"

namespace kerfwall {

/// Adds a doubt for every piece of the outline whose disc comes nearer to a wall than `room`, or does not touch
/// what its source says. The disc's centre runs `sweep` to the left of the piece.
/// Requires  `sources` beside the outline's pieces.
/// Exact to  kClearance. Every wall near a piece is asked, arcs as arcs; the opening's own track is not used.
void proveClearance(const VoidRim& rim, const Opening& opening, double room, double sweep, Doubts& doubts);

}  // namespace kerfwall

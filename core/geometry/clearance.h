// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/doubts.h"
#include "core/geometry/proof.h"

namespace kerfwall {

/// Adds a doubt for every piece of the outline whose disc comes nearer to a wall than the room's radius, or does
/// not touch what its source says. The disc's centre runs `claim.sweep` to the left of the piece.
/// Requires  `sources` beside the outline's pieces.
/// Exact to  kClearance. Every wall near a piece is asked, arcs as arcs; the opening's own track is not used.
void proveClearance(const Claim& claim, Doubts& doubts);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/says/bench.h"
#include "core/says/panel.h"

namespace kerfwall {

// How the panel lies at a saw, and so what the operator sees to the left and to the right.
//
// The operator stands in front of the saw and looks the way the work (or the saw) is pushed. Every
// edge runs anticlockwise round the panel seen from the layout face, the panel on its left:
//
//            top  <----               Layout face down we look at the back: the panel is mirrored,
//        left |        ^              every edge runs clockwise and has the panel on its right.
//             v        | right
//              ---->  bottom
//
// Fence square to the push, near the operator (sled, mitre gauge), bottom edge on it. The panel lies
// beyond the fence. Face down, with the panel on its right, the bottom edge must run to the
// operator's left, so the panel's right end lies to the left:
//
//          push ^        +----- top -----+
//                  right |   (mirrored)  | left
//                        +--- bottom ----+
//        =============== fence ==================          fence far: all turned half round, so
//                     operator                             the right end lies to the right
//
// Face up, fence far (sliding mitre saw): the panel lies on the operator's side of the fence, on the
// left of an edge that must then run to the operator's left: again the right end lies to the left.
//
// Rip fence on the right of the blade, face down: the panel lies to the left of the fence and on the
// right of its edge, so the edge runs towards the operator and its start leads into the cut.
//
//          push ^        | left |
//               blade  | |      | fence       the bottom edge on the fence: left end leads
//                        | right|

/// On which side of the operator the end of the panel lies at which edge `against`, on a fence square
/// to the push, ends (`atEnd`) or starts.
[[nodiscard]] Side sideOfEnd(bool atEnd, bool fenceFar, bool faceUp);

/// The end of the panel that goes first past the blade, with `against` on a rip fence, face down.
[[nodiscard]] Edge leadsAlongFence(Edge against, Side fenceSide);

/// Which way the panel must be turned from square so that a run which leans by `lean` (see leanFrom)
/// comes to lie along the push: Left is anticlockwise seen from above. Requires  lean is not 0.
[[nodiscard]] Side turnOfPanel(double lean, bool faceUp);

/// Which way a saw's arm must be turned to follow that run while the panel lies still.
[[nodiscard]] Side turnOfArm(double lean, bool faceUp);

[[nodiscard]] Side otherSide(Side side);

}  // namespace kerfwall

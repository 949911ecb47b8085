// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/rolling.h"
#include "core/geometry/void_rim.h"

namespace kerfwall {

/// What the disc rested on where a piece of the outline was made.
struct Contact {
    VoidSide side;
    bool onLip = false;  ///< a corner of the wood, between `side` and `lipSide`
    VoidSide lipSide;
    Point lip;
};

/// Where a piece of an opening's outline comes from: a wall the disc rolled along (one contact), a round
/// the disc left while it changed from one contact to the next (two), the panel's edge (none).
struct PieceSource {
    std::vector<Contact> contacts;
};

/// Where a disc's centre can be: those parts of its room that have a place over the drawn cutout.
struct Room {
    Track track;  ///< all there is; `chosen` below takes its tags from it
    Rim chosen;   ///< the room on its left
    double area = 0;
    double perimeter = 0;
    int parts = 0;               ///< pieces over the panel that have a place over the drawn cutout
    bool leaves = false;         ///< the disc can leave the panel
    bool reachedFrame = false;   ///< it came to the frame: look farther
};

[[nodiscard]] Room roomOf(const VoidRim& rim, double radius, const std::vector<ArrangedFace>& faces,
                          const Panel& panel);

/// The opening a disc sweeps.
struct Opening {
    Outline outline;  ///< on the panel
    std::vector<std::vector<PieceSource>> sources;  ///< beside the outline's loops
    Rim swept;        ///< the sweep inside the frame, off the panel too; the opening on its left
    Room room;
    std::vector<Doubt> doubts;
};

/// The disc's room is the void less `room` all along its rim; its parts over the drawn faces, grown by
/// `sweep`, are the opening. A template: room = sweep = the bit's radius.
[[nodiscard]] Opening openingOf(const VoidRim& rim, double room, double sweep, const std::vector<ArrangedFace>& faces,
                                const Project& project, const Arranged& arranged);

}  // namespace kerfwall

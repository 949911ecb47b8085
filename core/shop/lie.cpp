// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/lie.h"

#include "core/shop/heading.h"

namespace kerfwall {

Side otherSide(Side side) { return side == Side::Left ? Side::Right : Side::Left; }

Side sideOfEnd(bool atEnd, bool fenceFar, bool faceUp) {
    const bool runsToTheRight = faceUp != fenceFar;
    return atEnd == runsToTheRight ? Side::Right : Side::Left;
}

Edge leadsAlongFence(Edge against, Side fenceSide) {
    return fenceSide == Side::Right ? previousOf(against) : nextOf(against);
}

Side turnOfPanel(double lean, bool faceUp) {
    // Face up, a run that leans to the edge's start leans anticlockwise: the panel turns clockwise.
    return (lean > 0) == faceUp ? Side::Right : Side::Left;
}

Side turnOfArm(double lean, bool faceUp) { return otherSide(turnOfPanel(lean, faceUp)); }

}  // namespace kerfwall

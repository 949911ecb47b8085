// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/reach.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "core/geometry/proof.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

/// An odd fraction keeps the frame off everything that is drawn on a grid.
constexpr double kOffGrid = 1.0731913;

std::vector<Point> cornersOf(const Outline& drawn) {
    std::vector<Point> corners;
    for (const OutlineLoop& loop : drawn.loops) {
        for (const OutlinePiece& piece : loop) corners.push_back(piece.from);
    }
    return corners;
}

/// The world round the panel, of the panel only what lies within `margin` of its edges or in `near`. None hollow
/// where that leaves nothing out.
Frame withHollow(Frame whole, const Panel& panel, double margin, std::vector<Point> near) {
    const Box inner{{margin, margin}, {panel.width - margin, panel.height - margin}};
    if (inner.low.x >= inner.high.x || inner.low.y >= inner.high.y || holds(near, cornersOf(inner))) return whole;
    whole.hollow = inner;
    whole.near = std::move(near);
    return whole;
}

}  // namespace

RolledOpening lookAsFarAsNeeded(const World& world, const Border& border, double radius, double smallest,
                                const std::function<RolledOpening(const Frame&)>& roll) {
    const Panel& panel = world.project.panel;
    const double diameter = 2 * radius + kOffGrid;
    const Frame whole = frameRoundPanel(panel.width, panel.height, diameter);
    // Saves rolls in vain where the disc rolls away in a kerf.
    const bool rollsAway = world.widestKerf > 2 * (smallest - kDoubt);
    // From inside a cutout a disc comes no farther out than its radius and meets nothing farther than its diameter,
    // and so it does from outside the panel, unless a groove lets it roll away.
    constexpr double kWider = 4;
    const std::vector<Point> corners = cornersOf(border.drawn);
    for (double margin = diameter; !rollsAway; margin *= kWider) {
        Frame frame = frameRound(corners, margin);
        if (border.open) frame = withHollow(whole, panel, margin, frame.corners);
        if (border.open ? !frame.hollow : holds(frame.corners, whole.corners)) break;
        RolledOpening near = roll(frame);
        if (!near.opening.room.reachedFrame) return near;
    }
    return roll(whole);
}

RolledOpening proved(RolledOpening rolled, double room, double sweep, const Panel& panel) {
    std::ranges::copy(doubtsAbout({rolled.rim, rolled.opening, room, sweep, panel}),
                      std::back_inserter(rolled.opening.doubts));
    return rolled;
}

RolledOpening openingWithin(const World& world, const ArrangedCutout& cutout, const Border& border,
                            double room, double sweep) {
    RolledOpening found = lookAsFarAsNeeded(world, border, room, room, [&](const Frame& frame) {
        RolledOpening rolled;
        rolled.rim = voidRim(world.project, world.arranged, cutout, border, world.kerfs, frame);
        rolled.opening = openingOf(rolled.rim, room, sweep, cutout.faces, world.project, world.arranged);
        return rolled;
    });
    return proved(std::move(found), room, sweep, world.project.panel);
}

}  // namespace kerfwall

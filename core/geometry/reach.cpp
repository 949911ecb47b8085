// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/reach.h"

#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

/// The world round a cutout that is looked at, or round the whole panel. From inside a closed cutout a disc
/// comes no farther out than its radius and meets nothing farther than its diameter, unless a groove lets it
/// roll away.
Box frameRound(const Outline& drawn, const Panel& panel, double radius, bool whole) {
    // An odd fraction keeps the frame off everything that is drawn on a grid.
    constexpr double kOffGrid = 1.0731913;
    const double margin = 2 * radius + kOffGrid;
    Box box = whole ? Box{{0, 0}, {panel.width, panel.height}} : drawn.bounds;
    box.low = box.low - Point{margin, margin};
    box.high = box.high + Point{margin, margin};
    return box;
}

}  // namespace

RolledOpening lookAsFarAsNeeded(const World& world, const Border& border, double radius, double smallest,
                                const std::function<RolledOpening(const Box&)>& roll) {
    const Panel& panel = world.project.panel;
    // Saves a roll in vain: it leaves by the open side, or rolls away in a kerf.
    const bool rollsAway = border.open || world.widestKerf > 2 * (smallest - kDoubt);
    if (!rollsAway) {
        RolledOpening near = roll(frameRound(border.drawn, panel, radius, false));
        if (!near.opening.room.reachedFrame) return near;
    }
    return roll(frameRound(border.drawn, panel, radius, true));
}

RolledOpening openingWithin(const World& world, const ArrangedCutout& cutout, const Border& border,
                            double room, double sweep) {
    return lookAsFarAsNeeded(world, border, room, room, [&](const Box& frame) {
        RolledOpening rolled;
        rolled.rim = voidRim(world.project, world.arranged, cutout, border, world.kerfs, frame);
        rolled.opening = openingOf(rolled.rim, room, sweep, cutout.faces, world.project, world.arranged);
        return rolled;
    });
}

}  // namespace kerfwall

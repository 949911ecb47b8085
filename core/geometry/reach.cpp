// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/reach.h"

#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

/// An odd fraction keeps the frame off everything that is drawn on a grid.
constexpr double kOffGrid = 1.0731913;

Box grown(const Box& box, double margin) {
    return {box.low - Point{margin, margin}, box.high + Point{margin, margin}};
}

bool holds(const Box& outer, const Box& inner) {
    return outer.low.x <= inner.low.x && outer.low.y <= inner.low.y && outer.high.x >= inner.high.x &&
           outer.high.y >= inner.high.y;
}

}  // namespace

RolledOpening lookAsFarAsNeeded(const World& world, const Border& border, double radius, double smallest,
                                const std::function<RolledOpening(const Box&)>& roll) {
    const Panel& panel = world.project.panel;
    const double diameter = 2 * radius + kOffGrid;
    const Box whole = grown({{0, 0}, {panel.width, panel.height}}, diameter);
    // Saves a roll in vain: it leaves by the open side, or rolls away in a kerf.
    const bool rollsAway = border.open || world.widestKerf > 2 * (smallest - kDoubt);
    // From inside a closed cutout a disc comes no farther out than its radius and meets nothing farther than its
    // diameter, unless a groove lets it roll away.
    constexpr double kWider = 4;
    for (double margin = diameter; !rollsAway; margin *= kWider) {
        const Box frame = grown(border.drawn.bounds, margin);
        if (holds(frame, whole)) break;
        RolledOpening near = roll(frame);
        if (!near.opening.room.reachedFrame) return near;
    }
    return roll(whole);
}

RolledOpening openingWithin(const World& world, const ArrangedCutout& cutout, const Border& border, KerfHeight height,
                            double room, double sweep) {
    return lookAsFarAsNeeded(world, border, room, room, [&](const Box& frame) {
        RolledOpening rolled;
        rolled.rim = voidRim(world.project, world.arranged, cutout, border, world.kerfs, height, frame);
        rolled.opening = openingOf(rolled.rim, room, sweep, cutout.faces, world.project, world.arranged);
        return rolled;
    });
}

}  // namespace kerfwall

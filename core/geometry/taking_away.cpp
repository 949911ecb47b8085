// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/taking_away.h"

#include <algorithm>
#include <ranges>

#include "core/geometry/moving.h"
#include "core/geometry/picking.h"

namespace kerfwall {
namespace {

template <typename Item>
void takeOut(std::vector<Item>& items, std::vector<std::size_t> indices) {
    std::ranges::sort(indices, std::greater<>{});
    for (const std::size_t index : indices) items.erase(items.begin() + static_cast<std::ptrdiff_t>(index));
}

}  // namespace

Project withoutPicked(const Project& project, const Solved& solved, const Picked& picked) {
    const Picked there = stillThere(project, picked);
    Project rest = project;
    // By their places in the list: before the lines, which take their own fences along.
    takeOut(rest.clampHoles, there.holes);
    takeOut(rest.fences, there.fences);
    std::erase_if(rest.cutouts, [&](const Cutout& cutout) { return std::ranges::find(there.cutouts, cutout.id) != there.cutouts.end(); });
    for (const LineId& id : there.lines) rest = withoutLine(rest, solved, id);
    if (there.workpiece) rest.workpiece.reset();
    return rest;
}

}  // namespace kerfwall

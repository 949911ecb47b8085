// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/snippet.h"

#include <algorithm>

#include "core/geometry/moving.h"
#include "core/geometry/picking.h"
#include "core/geometry/solve.h"

namespace kerfwall {
namespace {

constexpr int kMostSteps = 40;  // until a free place is found

template <typename Names, typename Name>
bool among(const Names& names, const Name& name) {
    return std::ranges::find(names, name) != names.end();
}

/// What is picked, its walls, and the lines its fences run along.
Picked wholeOf(const Copied& things) {
    Picked all = withWalls(things.from, things.solved, stillThere(things.from, things.picked));
    for (const std::size_t fence : all.fences) {
        const auto* along = std::get_if<LineId>(&things.from.fences[fence].along);
        if (along && findLine(things.solved, *along)) all = with(std::move(all), onlyLine(*along));
    }
    return all;
}

template <typename Item>
std::vector<Item> chosen(const std::vector<Item>& items, const std::vector<std::size_t>& indices) {
    std::vector<Item> some;
    for (const std::size_t index : indices) some.push_back(items.at(index));
    return some;
}

/// True where every thing found a place of its own; the walls of cutouts may be lines that are there already.
bool isWhole(const Picked& things, const Picked& made) {
    return made.cutouts.size() == things.cutouts.size() && made.holes.size() == things.holes.size() &&
           made.fences.size() == things.fences.size() && (!things.cutouts.empty() || made.lines.size() == things.lines.size());
}

}  // namespace

Project snippetOf(const Copied& things) {
    const Picked all = wholeOf(things);
    Project cut = things.from;
    cut.cutouts.clear();
    cut.fences.clear();
    cut.record.clear();
    for (const LayoutLine& line : things.from.lines) {
        if (!among(all.lines, line.id)) cut = withoutLine(cut, things.solved, line.id);
    }
    for (const Cutout& cutout : things.from.cutouts) {
        if (among(all.cutouts, cutout.id)) cut.cutouts.push_back(cutout);
    }
    cut.clampHoles = chosen(things.from.clampHoles, all.holes);
    cut.fences = chosen(things.from.fences, all.fences);
    Project alone;
    alone.units = cut.units;
    alone.panel = cut.panel;
    alone.bench = cut.bench;
    alone.kerfDepth = cut.kerfDepth;
    alone.lines = cut.lines;
    alone.cutouts = cut.cutouts;
    alone.clampHoles = cut.clampHoles;
    alone.fences = cut.fences;
    if (all.workpiece) alone.workpiece = cut.workpiece;
    return alone;
}

std::expected<Copies, NoCarrying> pasted(const Project& onto, const Project& snippet, double step, int highestLine) {
    const Solved solved = solve(snippet);
    const Picked all = everythingOf(snippet, solved);
    for (int steps = 0; steps < kMostSteps; ++steps) {
        auto copies = copiedOnto(onto, {snippet, solved, all}, {shiftBy({steps * step, steps * step})}, highestLine);
        if (!copies && copies.error() != NoCarrying::NothingNew) return copies;
        if (copies && isWhole(all, copies->picked)) return copies;
    }
    return std::unexpected(NoCarrying::NothingNew);
}

}  // namespace kerfwall

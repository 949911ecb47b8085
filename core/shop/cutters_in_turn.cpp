// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/cutters_in_turn.h"

#include <algorithm>

#include "core/shop/bore.h"

namespace kerfwall {

std::vector<CutterInTurn> cuttersInTurn(const Project& project, const Solved& solved) {
    const Use& use = project.use;
    if (use.cutters.empty()) return {{solved.use.cutter, "", use.depth}};
    std::vector<CutterInTurn> turns;
    for (const TurnCutter& cutter : use.cutters) {
        turns.push_back({cutter.diameter, cutter.name, cutter.depth ? cutter.depth : use.depth});
    }
    return turns;
}

bool isBaseOnTemplate(const Use& use, BearingAt bearingAt) {
    return use.router == Router::Hand && (use.byBush || bearingAt != BearingAt::Tip);
}

double belowBase(const Panel& panel, double depth) { return panel.thickness + depth; }

std::optional<UnbrokenBand> unbrokenBand(const Project& project, const Solved& solved) {
    const bool bored = std::ranges::any_of(solved.cutouts, [&](const SolvedCutout& cutout) {
        return std::ranges::any_of(cutout.corners, [&](const Corner& corner) { return isBored(corner, solved); });
    });
    if (!bored || solved.kerfDepth >= project.panel.thickness) return std::nullopt;
    return UnbrokenBand{solved.kerfDepth, project.panel.thickness};
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/shims.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/geometry/edge_place.h"
#include "core/shop/bore_reach.h"
#include "core/shop/finding_words.h"
#include "core/shop/heading.h"
#include "core/shop/step_text.h"
#include "core/shop/word_list.h"

namespace kerfwall {
namespace {

constexpr double kSameSetting = 0.005;  // mm: settings that read the same

std::string cornerName(const BoreReach& bore) { return bore.first + " with " + bore.second; }

std::string namesOf(const std::vector<BoreReach>& bores) {
    std::vector<std::string> names;
    for (const BoreReach& bore : bores) names.push_back(cornerName(bore));
    return std::string(bores.size() > 1 ? "the bores at " : "the bore at ") + listText(names);
}

/// How the shims go, from the first setting to the wall on the line.
std::string shimText(const Project& project, const WorkStep& step, const Shims& shims) {
    const std::string what = step.setting.fence ? "the fence" : "the stop";
    const std::string count = std::to_string(Tape{}.layers);
    std::vector<std::string> walls;
    for (const double wall : shims.walls) walls.push_back(sizeText(project, wall));
    const std::string layers = count + " layers of tape, " + sizeText(project, Tape{}.thickness) + " each,";
    return (shims.adding ? "set " + what + " " + sizeText(project, shims.start) + " for the first cut and add up to " +
                               layers + " between it and the panel, one a cut"
                         : "put " + layers + " between " + what + " and the panel for the first cut and peel one a cut") +
           "; the wall then stands at " + listText(walls);
}

/// What was measured of a wall's bores, where they disagree or lie past the line.
std::string disagreeText(const Project& project, const std::vector<BoreReach>& bores) {
    const bool known = std::ranges::any_of(bores, &BoreReach::measured);
    if (!known) return bores.size() > 1 ? " Where the two rounds disagree, go to the outer one and fair the other by hand." : "";
    const BoreReach& outer = outermost(bores);
    std::string text = " As measured, the round at " + cornerName(outer) + " lies " +
                       sizeText(project, std::abs(outer.past)) + (outer.past < 0 ? " short of" : " past") + " the line: go to it";
    for (const BoreReach& bore : bores) {
        const double behind = outer.past - bore.past;
        if (&bore != &outer && behind > kSameHeading) {
            text += ", and fair the one at " + cornerName(bore) + " by " + sizeText(project, behind) + " by hand";
        }
    }
    return text + ".";
}

std::string approachText(const Project& project, const Solved& solved, const WorkStep& step, std::size_t kerf,
                         const std::vector<BoreReach>& bores) {
    const auto shims = shimsFor(project, solved, step, kerf);
    std::string text = " " + step.lines[kerf] + " must touch " + namesOf(bores) + " and never go past: ";
    text += shims ? shimText(project, step, *shims)
                  : "cut " + sizeText(project, Tape{}.layers * Tape{}.thickness) +
                        " off the line on the waste side first and move over " + sizeText(project, Tape{}.thickness) + " a cut";
    return text + ". Stop when it touches." + disagreeText(project, bores);
}

/// Where the setting is told, the first cut's stands first: who reads no further is not at the line already.
void sayFirstCut(WorkStep& step, const Project& project) {
    const double last = step.setting.stop ? *step.setting.stop : *step.setting.fence;
    const std::string told = ", " + sizeText(project, last);
    const std::size_t at = step.text.find(told);
    if (std::abs(step.firstCut->at - last) < kSameSetting || at == std::string::npos) return;
    step.text.replace(at, told.size(), ", at first " + sizeText(project, step.firstCut->at) + " and at last " + sizeText(project, last));
}

}  // namespace

Shims shimsFor(double y, bool wasteBeyond, double kerf, const Tape& tape) {
    const auto [layer, layers] = tape;
    Shims shims;
    shims.adding = wasteBeyond;
    shims.layers = wasteBeyond ? 0 : layers;
    shims.start = wasteBeyond ? y + layers * layer : y - kerf;
    for (int left = layers; left >= 0; --left) {
        shims.walls.push_back(wasteBeyond ? y + left * layer : y - left * layer);
    }
    return shims;
}

std::optional<Shims> shimsFor(const Project& project, const Solved& solved, const WorkStep& step, std::size_t kerf) {
    const SolvedLine* line = findLine(solved, step.lines.at(kerf));
    const auto setting = step.setting.stop ? step.setting.stop : step.setting.fence;
    if (!line || !setting || !step.against) return std::nullopt;
    const Point left = unit(leftOf(line->to - line->from));
    const Point waste = step.sides.at(kerf) == Side::Left ? left : -1.0 * left;
    const Edge against = *step.against;
    const Point away = step.setting.fence           ? leftOf(edgeHeading(against))
                       : step.stopEdge == previousOf(against) ? edgeHeading(against)
                                                               : -1.0 * edgeHeading(against);
    const bool beyond = dot(waste, away) > 0;
    const Saw* saw = findSaw(benchOf(project), step.saw);
    const double width = (saw ? saw->kerf : 0) / std::cos(radians(step.setting.angle.value_or(0)));
    return shimsFor(beyond ? *setting : *setting + width, beyond, width);
}

void tellApproach(std::vector<WorkStep>& kerfs, const Project& project, const Solved& solved) {
    for (WorkStep& step : kerfs) {
        const bool isCut = step.setting.bladeHeight || step.setting.depth;
        if (step.task != Task::Kerf || !isCut) continue;
        for (std::size_t i = 0; i < step.lines.size(); ++i) {
            const auto bores = boresAt(project, solved, step.lines[i], step.sides.at(i));
            if (bores.empty()) continue;
            step.text += approachText(project, solved, step, i, bores);
            if (const auto shims = shimsFor(project, solved, step, i)) {
                step.firstCut = FirstCut{shims->start, shims->layers, Tape{}.layers, Tape{}.thickness};
                sayFirstCut(step, project);
            }
        }
    }
}

}  // namespace kerfwall

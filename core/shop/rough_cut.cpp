// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/rough_cut.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/shop/bore.h"
#include "core/shop/cautions.h"
#include "core/shop/relief_hole.h"
#include "core/shop/step_text.h"
#include "core/shop/wall_kerf.h"
#include "core/shop/word_list.h"

namespace kerfwall {

namespace {

constexpr double kLeftAtLeast = 0.5;  ///< mm on either side of the sawn edge. Common practice, no source.

std::string sawOnText(const Project& project, const SolvedCutout& cutout, const RoughCut& rough) {
    if (rough.sawOn.empty()) {
        return "";
    }
    std::vector<std::string> places;
    double clears = 0;
    for (const std::size_t corner : rough.sawOn) {
        places.push_back(cutout.corners[corner].first + " with " + cutout.corners[corner].second);
        clears = std::max(clears, kerfThatClears(trimBitOf(project).diameter / 2, cutout.corners[corner].angle));
    }
    return " In the " + std::string(places.size() > 1 ? "corners" : "corner") + " of " + listText(places) +
           " saw on to where the kerfs cross: the round of the " + sizeText(project, trimBitOf(project).diameter) +
           " bit stands up to " + sizeText(project, clears) + " off the lines there, beyond the kerf.";
}

/// Where the jigsaw goes in.
std::string startText(const Solved& solved, const SolvedCutout& cutout) {
    if (cutout.open) return "the band saw, or a jigsaw where the panel is too large for it, in from the panel's edge";
    const auto isOf = [&](auto&& has) { return std::ranges::any_of(cutout.corners, has); };
    if (isOf([&](const Corner& corner) { return isBored(corner, solved); })) return "a jigsaw, in from a bore";
    const bool relief = isOf([](const Corner& is) { return is.drill && is.drill->diameter >= kSmallestStart; });
    return relief ? "a jigsaw, in from a relief hole" : "a jigsaw, in from its starter hole";
}

std::string leaveText(const Project& project, const RoughCut& rough) {
    if (rough.mostLeft <= rough.leastLeft) return "along their middle, " + sizeText(project, rough.leastLeft) + " off each wall";
    return "and leave " + sizeText(project, rough.leastLeft) + " to " + sizeText(project, rough.mostLeft) +
           " of each kerf's floor along its wall";
}

}  // namespace

double kerfThatClears(double bitRadius, double cornerAngle) {
    return bitRadius * (1 - std::sin(radians(cornerAngle) / 2));
}

RoughCut roughCutOf(const Solved& solved, const SolvedCutout& cutout) {
    RoughCut rough;
    const double kerf = narrowestKerf(solved, cutout).value_or(0);
    rough.leastLeft = std::min(kLeftAtLeast, kerf / 2);
    rough.mostLeft = std::max(kerf - kLeftAtLeast, kerf / 2);
    for (std::size_t i = 0; i < cutout.corners.size(); ++i) {
        const Corner& corner = cutout.corners[i];
        if (corner.angle >= 180 || isBored(corner, solved)) {
            continue;
        }
        const double clears = kerfThatClears(solved.bitRadius, corner.angle);
        if (std::ranges::any_of(kerfsAt(solved, cutout, i),
                                [&](const Kerf& at) { return at.width < clears; })) {
            rough.sawOn.push_back(i);
        }
    }
    return rough;
}

std::vector<WorkStep> roughSteps(const Project& project, const Solved& solved) {
    std::vector<WorkStep> steps;
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (!isWorkable(solved, cutout)) {
            continue;
        }
        const RoughCut rough = roughCutOf(solved, cutout);
        WorkStep& step = steps.emplace_back();
        step.task = Task::Rough;
        step.cutout = cutout.id;
        step.lines = linesAlong(cutout);
        step.text = "Saw the waste out of " + cutout.id + " with " + startText(solved, cutout) + ". Saw inside the kerfs " +
                    leaveText(project, rough) +
                    "; nothing may stand beyond the kerf, or the bearing cannot reach the wall." +
                    sawOnText(project, cutout, rough);
        step.cautions = taskCautions(Task::Rough);
    }
    return steps;
}

}  // namespace kerfwall

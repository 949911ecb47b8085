// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/shop/bore.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"

namespace kerfwall {
namespace {

std::string remedy(const Project& project, double radius) {
    const Bench& bench = benchOf(project);
    const BoreTool tool = boreToolFor(bench, radius);
    if (tool.pivotToNear && tool.pivotToFar) {
        return "Rout it on the circle jig: from the pivot " + lengthWords(project, *tool.pivotToNear) +
               " to the near side of the cut, " + lengthWords(project, *tool.pivotToFar) +
               " to its far side.";
    }
    if (bench.bores.empty()) {
        return "Add a drill of " + lengthWords(project, 2 * radius) +
               " to the bench, or leave the corner to the bit.";
    }
    const double nearest =
        *std::ranges::min_element(bench.bores, {}, [&](double bore) { return std::abs(bore - 2 * radius); });
    return "The nearest at hand is " + lengthWords(project, nearest) + ": bore the corner to a radius of " +
           lengthWords(project, nearest / 2) + " instead.";
}

/// The first bored corner of the cutout; none where it has none.
const Corner* boredCorner(const Solved& solved, const SolvedCutout& cutout) {
    const auto found =
        std::ranges::find_if(cutout.corners, [&](const Corner& corner) { return isBored(corner, solved); });
    return found == cutout.corners.end() ? nullptr : &*found;
}

std::optional<Finding> lowRide(const Project& project, const Solved& solved, const SolvedCutout& cutout) {
    const Corner* corner = boredCorner(solved, cutout);
    if (corner == nullptr || cutout.parts == 0) return std::nullopt;
    const double band = project.panel.thickness - solved.kerfDepth;
    const LimitPair limits = limitsOf("web-ride", project);
    const auto crossed = crossedBelow(band, limits);
    if (!crossed) return std::nullopt;
    Finding finding = measuredFinding("web-ride", crossed->severity, band, crossed->limit);
    finding.at = corner->point;
    finding.lines = {corner->first, corner->second};
    finding.cutout = cutout.id;
    const double wish = std::max(limits.care.value_or(0), limits.stop.value_or(0));
    const double depth = project.panel.thickness - wish;
    finding.text = "At the bored corners of " + cutout.id + " the round is unbroken only under the kerfs, in a band of " +
                   lengthWords(project, band) + ", less than " + lengthWords(project, crossed->limit) + ": too low for the " +
                   (project.use.byBush ? "bush" : "bearing") + ", " + lengthWords(project, solved.use.guideLength) +
                   " long, to ride there. " +
                   (depth > 0 ? "Saw the kerfs " + atMostWords(project, depth) + " deep or less, or take"
                              : std::string("Take")) +
                   " a panel of " + atLeastWords(project, solved.kerfDepth + wish) + " or more.";
    return finding;
}

}  // namespace

std::vector<Finding> boreFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    for (const SolvedCutout& cutout : solved.cutouts) {
        std::vector<double> told;
        for (const Corner& corner : cutout.corners) {
            const double radius = corner.boreRadius.value_or(0);
            if (radius <= solved.bitRadius || boreToolFor(benchOf(project), radius).drill ||
                std::ranges::find(told, radius) != told.end()) {
                continue;
            }
            told.push_back(radius);
            Finding finding;
            finding.code = "bore-missing";
            finding.severity = Severity::Note;
            finding.at = corner.point;
            finding.lines = {corner.first, corner.second};
            finding.cutout = cutout.id;
            finding.value = 2 * radius;
            finding.unit = "mm";
            finding.text = "There is no drill or hole saw of " + lengthWords(project, 2 * radius) +
                           " at hand for the corner of " + corner.first + " and " + corner.second + ". " +
                           remedy(project, radius);
            all.push_back(finding);
        }
        addFinding(all, lowRide(project, solved, cutout));
    }
    return all;
}

}  // namespace kerfwall

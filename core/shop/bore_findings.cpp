// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/shop/bore.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"

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
    }
    return all;
}

}  // namespace kerfwall

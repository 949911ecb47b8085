// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/geometry/fence_place.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"
#include "core/shop/plan_bands.h"
#include "core/shop/trimming.h"

namespace kerfwall {
namespace {

bool hasKerfs(const Solved& solved) {
    return std::ranges::any_of(solved.lines, [](const SolvedLine& line) { return !line.kerfs.empty(); });
}

std::optional<Finding> webUnderKerfs(const Project& project, const Solved& solved) {
    const double web = project.panel.thickness - solved.kerfDepth;
    const LimitPair limits = limitsOf("web-thin", project);
    const auto crossed = crossedBelow(web, limits);
    if (!crossed) {
        return std::nullopt;
    }
    Finding finding = measuredFinding("web-thin", crossed->severity, web, crossed->limit);
    const double needed = std::max(limits.care.value_or(0), limits.stop.value_or(0));
    finding.text = "Only " + lengthWords(project, web) + " of the panel is left under the kerfs, less than " +
                   lengthWords(project, crossed->limit) + ". ";
    const double depth = project.panel.thickness - needed;
    finding.text += depth > 0
                        ? "Saw " + atMostWords(project, depth) + " deep or less, or take a thicker panel."
                        : "Take a panel of " + atLeastWords(project, solved.kerfDepth + needed) + " or more.";
    return finding;
}

// The groove in plan: the fence's body, along its edge or line.
std::optional<PlanShape> grooveOf(const Project& project, const Solved& solved, const Fence& fence) {
    const std::vector<Point> body = fenceBody(project, solved, fence);
    if (body.empty() || fence.width <= 0 || fence.from == fence.to) {
        return std::nullopt;
    }
    return stripRound(0.5 * (body[0] + body[3]), 0.5 * (body[1] + body[2]), fence.width);
}

// Depth of the deepest kerf that crosses the groove; 0 for none.
double kerfAcross(const Project& project, const Solved& solved, const Fence& fence) {
    const auto groove = grooveOf(project, solved, fence);
    double deepest = 0;
    for (const SolvedLine& line : solved.lines) {
        for (const Kerf& kerf : line.kerfs) {
            if (groove && overlapInPlan(*groove, bandOf(line, kerf, kerf.fullFrom, kerf.fullTo))) {
                deepest = std::max(deepest, kerf.depth);
            }
        }
    }
    return deepest;
}

std::optional<Finding> webUnderGroove(const Project& project, const Solved& solved, std::size_t index) {
    const Fence& fence = project.fences[index];
    if (fence.groove <= 0) {
        return std::nullopt;
    }
    // A groove in the back meets the kerfs' floors; one in the layout face only takes what they took.
    const double taken = fence.groove + (fence.face == Face::Back ? kerfAcross(project, solved, fence) : 0);
    const double web = project.panel.thickness - taken;
    const LimitPair limits = limitsOf("web-thin", project);
    const auto crossed = crossedBelow(web, limits);
    if (!crossed) {
        return std::nullopt;
    }
    Finding finding = measuredFinding("web-thin", crossed->severity, web, crossed->limit);
    finding.fence = index;
    finding.at = fenceMiddle(project, solved, fence);
    if (const LineId* line = std::get_if<LineId>(&fence.along)) {
        finding.lines = {*line};
    }
    const double needed = std::max(limits.care.value_or(0), limits.stop.value_or(0));
    finding.text = "The groove of fence " + std::to_string(index + 1) + " leaves " +
                   lengthWords(project, std::max(web, 0.0)) + " of the panel at its thinnest, less than " +
                   lengthWords(project, crossed->limit) + ". ";
    const double depth = fence.groove - (needed - web);
    finding.text += depth > 0 ? "Cut the groove " + atMostWords(project, depth) + " deep or less."
                              : "Leave the groove out, or take a panel " +
                                    atLeastWords(project, needed - web) + " thicker.";
    return finding;
}

std::optional<Finding> lowWall(const Project& project, const Solved& solved) {
    const double bearing = trimBitOf(project).bearingLength;
    const auto crossed = crossedBelow(solved.kerfDepth, limitsOf("wall-low", project));
    if (!crossed) {
        return std::nullopt;
    }
    Finding finding = measuredFinding("wall-low", crossed->severity, solved.kerfDepth, crossed->limit);
    finding.text = "The kerfs are " + lengthWords(project, solved.kerfDepth) + " deep, less than " +
                   lengthWords(project, crossed->limit) + ": too low a wall for a bearing " +
                   lengthWords(project, bearing) + " long. Saw " +
                   atLeastWords(project, bearing + kBearingAboveFloor) +
                   " deep, or take a bit with a shorter bearing.";
    return finding;
}

std::optional<Finding> shortBit(const Project& project, const Solved& solved) {
    const double needed = project.panel.thickness - solved.kerfDepth + kBearingAboveFloor;
    if (!benchOf(project).trimBit) {
        Finding finding;
        finding.code = "bit-short";
        finding.severity = Severity::Stop;
        finding.text = "There is no trimming bit on the bench; the outline is shown for one of " +
                       lengthWords(project, trimBitOf(project).diameter) +
                       ". Add yours, with a cutting length of " + atLeastWords(project, needed) + " or more.";
        return finding;
    }
    const double cutting = trimBitOf(project).cuttingLength;
    if (cutting >= needed - kOnLimit) {
        return std::nullopt;
    }
    Finding finding = measuredFinding("bit-short", Severity::Stop, cutting, needed);
    finding.text = "The trimming bit cuts over " + lengthWords(project, cutting) + ", but with its bearing " +
                   lengthWords(project, kBearingAboveFloor) + " above the kerf's floor it must cut " +
                   lengthWords(project, needed) +
                   " to reach through the panel. Take a bit with a cutting length of " +
                   atLeastWords(project, needed) + " or more, or saw the kerfs " +
                   atLeastWords(project, needed - cutting) + " deeper.";
    return finding;
}

}  // namespace

std::vector<Finding> panelFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    if (hasKerfs(solved)) {
        addFinding(all, webUnderKerfs(project, solved));
        addFinding(all, lowWall(project, solved));
        addFinding(all, shortBit(project, solved));
    }
    for (std::size_t i = 0; i < project.fences.size(); ++i) {
        addFinding(all, webUnderGroove(project, solved, i));
    }
    return all;
}

}  // namespace kerfwall

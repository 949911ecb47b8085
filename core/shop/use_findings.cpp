// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"

namespace kerfwall {
namespace {

/// How much of a shank's bearing must run on the template, mm. Common practice, no source.
constexpr double kEngagement = 3;

/// The largest cutter that works in the bush.
double widestCutter(const Project& project, const UseAnswer& use) {
    double widest = use.cutter;
    for (const TurnCutter& cutter : project.use.cutters) widest = std::max(widest, cutter.diameter);
    return widest;
}

void addBushFit(std::vector<Finding>& all, const Project& project, const UseAnswer& use) {
    const double thickness = project.panel.thickness;
    if (use.guideLength >= thickness - kOnLimit) {
        Finding finding = measuredFinding("bush-fit", Severity::Stop, use.guideLength, thickness);
        finding.text = "The bush stands out " + lengthWords(project, use.guideLength) + " and the template is " + lengthWords(project, thickness) +
                       " thick: it would run on the work. Take a bush that stands out less, shorten it, or make the template of thicker board.";
        all.push_back(std::move(finding));
    }
    const double cutter = widestCutter(project, use);
    const double room = use.guide - cutter;
    const auto crossed = crossedBelow(room, limitsOf("bush-fit", project));
    if (!crossed) return;
    Finding finding = measuredFinding("bush-fit", crossed->severity, room, crossed->limit);
    finding.text = "Bush " + lengthWords(project, use.guide) + " and cutter " + lengthWords(project, cutter) + " leave " + lengthWords(project, room) +
                   " between them, less than " + lengthWords(project, crossed->limit) + ": the cutter comes near the bush's bore and chips do not clear. Take a bush of " +
                   atLeastWords(project, cutter + crossed->limit) + " or more, or a cutter of " + atMostWords(project, use.guide - crossed->limit) + " or less.";
    all.push_back(std::move(finding));
}

/// A shank's bearing must reach the template, so in a pocket the cutter is at least this deep in the work at once.
/// Source    its length below the bearing, which runs kEngagement deep on the template.
std::optional<double> leastPass(const Project& project) {
    const TrimBit bit = trimBitOf(project);
    const Use& use = project.use;
    const bool isPocket = use.depth && project.workpiece && project.workpiece->thickness && *use.depth < *project.workpiece->thickness - kOnLimit;
    if (use.byBush || !isPocket || use.bearingAt.value_or(bit.bearingAt) != BearingAt::Shank) return std::nullopt;
    return use.cuttingLength.value_or(bit.cuttingLength) + kEngagement - project.panel.thickness;
}

void addFirstPass(std::vector<Finding>& all, const Project& project, const UseAnswer& use) {
    const auto least = leastPass(project);
    if (!least) return;
    const auto crossed = crossedAbove(*least, limitsOf("first-pass", project));
    if (!crossed) return;
    Finding finding = measuredFinding("first-pass", crossed->severity, *least, crossed->limit);
    const double thicker = project.panel.thickness + *least - crossed->limit;
    finding.text = "With its bearing at the shank the bit cuts " + lengthWords(project, *least) + " deep at once before the bearing meets the template, more than " +
                   lengthWords(project, crossed->limit) + " for a cutter of " + lengthWords(project, use.cutter) + ". Rough the pocket out first, take a shorter bit, or a template of " +
                   atLeastWords(project, thicker) + " or thicker.";
    all.push_back(std::move(finding));
}

}  // namespace

std::vector<Finding> useFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    const UseAnswer& use = solved.use;
    if (project.use.byBush) addBushFit(all, project, use);
    addFirstPass(all, project, use);
    return all;
}

}  // namespace kerfwall

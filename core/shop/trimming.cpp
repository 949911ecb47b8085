// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/trimming.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/shop/bore.h"
#include "core/shop/bore_reach.h"
#include "core/shop/cautions.h"
#include "core/shop/feed_direction.h"
#include "core/shop/rough_cut.h"
#include "core/shop/step_text.h"
#include "core/shop/wall_kerf.h"
#include "core/shop/word_list.h"

namespace kerfwall {

namespace {

std::string lieText(Router router, bool faceUp) {
    return std::string("Lay the panel layout face ") + (faceUp ? "up" : "down") +
           (router == Router::Table ? " on the router table." : " and clamp it; the router runs on top.");
}

/// "Along A that is from C to D."
std::string wallFeedText(const SolvedCutout& cutout, Router router, bool faceUp) {
    const Wall* wall = feedWall(cutout);
    if (!wall) return "";
    const LineId& start = cutout.corners[*wall->startCorner].first;
    const LineId& end = cutout.corners[*wall->endCorner].second;
    const bool withWall = feedAlong(*wall, router, faceUp).first == wall->from;
    return " Along " + wall->line + " that is from " + (withWall ? start + " to " + end : end + " to " + start) + ".";
}

std::string passesText(const Project& project, const Setting& setting) {
    const int passes = *setting.passes;
    return " Up to " + sizeText(project, *setting.bite) + " is left to trim: " +
           (passes == 1 ? "one pass" : std::to_string(passes) + " passes by width, never by depth, the last") +
           " with the bearing on the walls.";
}

std::string feedText(Router router, bool clockwise) {
    return std::string("Work ") + (clockwise ? "clockwise" : "anticlockwise") +
           " round the opening as the panel lies, against the cutter's turn" +
           (router == Router::Table ? "; on the table it is the panel that moves." : ".");
}

/// Where the bit must stop: past a tangent point its bearing would follow the kerf into the round.
std::string boredText(const Project& project, const Solved& solved, const SolvedCutout& cutout) {
    std::map<double, std::vector<std::string>> corners;
    for (const Corner& corner : cutout.corners) {
        if (isBored(corner, solved)) corners[*corner.boreRadius].push_back(corner.first + " with " + corner.second);
    }
    std::vector<std::string> stops;
    for (const auto& [radius, names] : corners) {
        stops.push_back(sizeText(project, stopShortFor(radius, kHandRest)) + " short of the bores at " + listText(names));
    }
    if (stops.empty()) return "";
    return " Stop where the walls meet the bores or up to " + listText(stops) +
           ": past that point the bearing would follow the kerf into the round.";
}

}  // namespace

BearingAt bearingInKerf(Router router, BearingAt bearingAt) {
    if (bearingAt != BearingAt::Both) {
        return bearingAt;
    }
    return router == Router::Table ? BearingAt::Tip : BearingAt::Shank;
}

bool isTrimmedFaceUp(Router router, BearingAt bearingAt) {
    return (router == Router::Table) == (bearingAt == BearingAt::Tip);
}

int passesFor(double bite) {
    constexpr double kSlack = 1e-9;  // mm: a bite of whole passes takes no more
    return std::max(1, static_cast<int>(std::ceil(bite / kBiteAtOnce - kSlack)));
}

double bearingHeight(double thickness, double floorDepth, BearingAt bearingAt) {
    return bearingAt == BearingAt::Shank ? floorDepth - kBearingAboveFloor
                                         : thickness - floorDepth + kBearingAboveFloor;
}

const Wall* feedWall(const SolvedCutout& cutout) {
    const Wall* longest = nullptr;
    for (const Wall& wall : cutout.walls) {
        if (!wall.startCorner || !wall.endCorner) continue;
        if (!longest || distance(wall.from, wall.to) > distance(longest->from, longest->to) + 1e-6) longest = &wall;
    }
    return longest;
}

std::vector<WorkStep> trimSteps(const Project& project, const Solved& solved) {
    const TrimBit bit = trimBitOf(project);
    const Router router = benchOf(project).trimWith.value_or(Router::Table);
    const BearingAt bearingAt = bearingInKerf(router, bit.bearingAt);
    std::vector<WorkStep> steps;
    for (const SolvedCutout& cutout : solved.cutouts) {
        const auto floor = shallowestFloor(solved, cutout);
        if (!floor) {
            continue;
        }
        WorkStep& step = steps.emplace_back();
        step.task = Task::Trim;
        step.cutout = cutout.id;
        step.lines = linesAlong(cutout);
        if (cutout.parts == 0) {
            step.text = "Do not saw out or trim " + cutout.id + ": the " + sizeText(project, bit.diameter) +
                        " bit does not fit into it. Take a smaller bit, or lay the lines further apart.";
            continue;
        }
        step.faceUp = isTrimmedFaceUp(router, bearingAt);
        step.setting.bearing = bearingHeight(project.panel.thickness, *floor, bearingAt);
        step.setting.bite = roughCutOf(solved, cutout).mostLeft;
        step.setting.passes = passesFor(*step.setting.bite);
        step.setting.feedClockwise = feedFromAbove(Shape::Opening, router) == Turn::Right;
        step.text =
            "Trim " + cutout.id + " with the " + sizeText(project, bit.diameter) + " bit, its bearing at the " +
            (bearingAt == BearingAt::Tip ? "tip. " : "shank. ") +
            lieText(router, step.faceUp) + " Set the bearing's end that is next to the kerf's floor " +
            sizeText(project, *step.setting.bearing) +
            (router == Router::Table ? " above the table, " : " below the router's base, ") +
            sizeText(project, kBearingAboveFloor) +
            " off the shallowest floor, so that it runs on the walls of " + listText(step.lines) + ". " +
            feedText(router, *step.setting.feedClockwise) + wallFeedText(cutout, router, step.faceUp) +
            passesText(project, step.setting) + boredText(project, solved, cutout);
        step.cautions = taskCautions(Task::Trim);
    }
    return steps;
}

}  // namespace kerfwall

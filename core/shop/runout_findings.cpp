// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <functional>

#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"
#include "core/shop/panel_edges.h"
#include "core/shop/plan_bands.h"
#include "core/shop/trimming.h"

namespace kerfwall {
namespace {

// One shallow end of a stopped kerf.
struct End {
    const SolvedLine& line;
    const Kerf& kerf;
    double full = 0;     // mm along the line, where the full depth ends
    double way = 1;      // +1 towards the line's end, -1 towards its start
    double surface = 0;  // length on the layout face
};

PlanShape bandOver(const End& end, double reach) {
    const double other = end.full + end.way * reach;
    return bandOf(end.line, end.kerf, std::min(end.full, other), std::max(end.full, other));
}

// What an end runs into, and how far it could run before it does.
struct Met {
    Severity severity = Severity::Care;
    double room = 0;
    std::string what;
    std::string cutout;
    std::optional<std::size_t> hole;
    LineId wall;
};

// The longest reach that stays clear, by halving: the band only grows with it.
double roomBefore(const End& end, double reach, const std::function<bool(const PlanShape&)>& meets) {
    double clear = 0;
    double met = reach;
    for (int i = 0; i < 40; ++i) {
        const double middle = (clear + met) / 2;
        (meets(bandOver(end, middle)) ? met : clear) = middle;
    }
    return clear;
}

void keepGraver(std::optional<Met>& worst, Met met) {
    const bool graver = !worst || met.severity < worst->severity ||
                        (met.severity == worst->severity && met.room < worst->room);
    if (graver) {
        worst = std::move(met);
    }
}

bool isOwnWall(const End& end, const Wall& wall) {
    return wall.line == end.line.id && wall.waste == end.kerf.side;
}

// The walls that meet the kerf's own walls in a corner: its end belongs there.
bool meetsInCorner(const End& end, const SolvedCutout& cutout, const Wall& wall) {
    return std::ranges::any_of(cutout.walls, [&](const Wall& own) {
        return isOwnWall(end, own) && ((own.endCorner && own.endCorner == wall.startCorner) ||
                                       (own.startCorner && own.startCorner == wall.endCorner));
    });
}

void meetWalls(std::optional<Met>& worst, const End& end, const SolvedCutout& cutout, double reach) {
    for (const Wall& wall : cutout.walls) {
        if (wall.line == end.line.id || meetsInCorner(end, cutout, wall)) {
            continue;
        }
        const auto meets = [&](const PlanShape& band) { return overlapInPlan(band, {wall.from, wall.to}); };
        if (meets(bandOver(end, reach))) {
            keepGraver(worst, {Severity::Stop,
                               roomBefore(end, reach, meets),
                               "the wall on " + wall.line,
                               cutout.id,
                               {},
                               wall.line});
        }
    }
}

void meetCutout(std::optional<Met>& worst, const Project& project, const End& end,
                const SolvedCutout& cutout) {
    if (std::ranges::any_of(cutout.walls, [&](const Wall& wall) { return isOwnWall(end, wall); })) {
        meetWalls(worst, end, cutout, end.surface);
        return;
    }
    meetWalls(worst, end, cutout,
              std::min(end.surface, roundReach(end.kerf, bladeRadiusOf(project, end.kerf),
                                               end.kerf.depth - kBearingAboveFloor)));
    const auto meets = [&](const PlanShape& band) {
        return std::ranges::any_of(cutout.faces,
                                   [&](const PlanShape& face) { return overlapInPlan(band, face); });
    };
    if (meets(bandOver(end, end.surface))) {
        keepGraver(
            worst,
            {Severity::Care, roomBefore(end, end.surface, meets), "cutout " + cutout.id, cutout.id, {}, {}});
    }
}

void meetHole(std::optional<Met>& worst, const Project& project, const End& end, std::size_t index) {
    const ClampHole& hole = project.clampHoles[index];
    const double begins = heightOf(project.panel, hole) - hole.diameter / 2;
    const double reach =
        std::min(end.surface, roundReach(end.kerf, bladeRadiusOf(project, end.kerf), begins));
    if (hole.depth <= 0 || reach <= 0) {
        return;
    }
    const OutlinePiece axis = axisOf(project.panel, hole);
    const PlanShape bore = stripRound(axis.from, axis.to, hole.diameter);
    const auto meets = [&](const PlanShape& band) { return overlapInPlan(band, bore); };
    if (meets(bandOver(end, reach))) {
        const std::string name = hole.id.empty() ? std::to_string(index + 1) : hole.id;
        keepGraver(worst,
                   {Severity::Care, roomBefore(end, reach, meets), "clamp hole " + name, "", index, {}});
    }
}

Finding runout(const Project& project, const End& end, const Met& met) {
    Finding finding;
    finding.code = "runout";
    finding.severity = met.severity;
    finding.at = end.line.from + (end.full + end.way * met.room) * unit(end.line.to - end.line.from);
    finding.lines = {end.line.id};
    if (!met.wall.empty()) {
        finding.lines.push_back(met.wall);
    }
    finding.cutout = met.cutout;
    finding.hole = met.hole;
    finding.value = end.surface;
    finding.limit = met.room;
    finding.unit = "mm";
    const double depth = end.kerf.depth;
    const double blade = met.room * met.room / depth + depth;
    finding.text = "The stopped kerf of " + end.line.id + " runs out over " +
                   lengthWords(project, end.surface) + " and meets " + met.what + "; there is room for " +
                   lengthWords(project, met.room) + ". Stop it " +
                   atLeastWords(project, end.surface - met.room) + " earlier and finish the wall by hand";
    finding.text += blade >= 80 ? ", or take a blade of " + atMostWords(project, blade) + " or less." : ".";
    return finding;
}

void lookAt(std::vector<Finding>& all, const Project& project, const Solved& solved, const End& end) {
    if (end.surface <= kOnLimit) {
        return;
    }
    std::optional<Met> worst;
    for (const SolvedCutout& cutout : solved.cutouts) {
        meetCutout(worst, project, end, cutout);
    }
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) {
        meetHole(worst, project, end, i);
    }
    if (worst) {
        all.push_back(runout(project, end, *worst));
    }
}

}  // namespace

std::vector<Finding> runoutFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    for (const SolvedLine& line : solved.lines) {
        for (const Kerf& kerf : line.kerfs) {
            if (kerf.stopped) {
                lookAt(all, project, solved,
                       {line, kerf, kerf.fullFrom, -1, kerf.fullFrom - kerf.surfaceFrom});
                lookAt(all, project, solved, {line, kerf, kerf.fullTo, 1, kerf.surfaceTo - kerf.fullTo});
            }
        }
    }
    return all;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/run_out.h"

#include <algorithm>
#include <functional>

#include "core/shop/limits.h"
#include "core/shop/panel_edges.h"
#include "core/shop/plan_bands.h"
#include "core/shop/trimming.h"

namespace kerfwall {
namespace {

PlanShape bandOver(const RunOut& end, double reach) {
    const double other = end.full + end.way * reach;
    return bandOf(end.line, end.kerf, std::min(end.full, other), std::max(end.full, other));
}

// The longest reach that stays clear, by halving: the band only grows with it.
double roomBefore(const RunOut& end, double reach, const std::function<bool(const PlanShape&)>& meets) {
    double clear = 0;
    double met = reach;
    for (int i = 0; i < 40; ++i) {
        const double middle = (clear + met) / 2;
        (meets(bandOver(end, middle)) ? met : clear) = middle;
    }
    return clear;
}

void keepGraver(std::optional<RunOutMet>& worst, RunOutMet met) {
    const bool graver = !worst || met.severity < worst->severity ||
                        (met.severity == worst->severity && met.room < worst->room);
    if (graver) {
        worst = std::move(met);
    }
}

bool isOwnWall(const RunOut& end, const Wall& wall) {
    return wall.line == end.line.id && wall.waste == end.kerf.side;
}

// The walls that meet the kerf's own walls in a corner: its end belongs there.
bool meetsInCorner(const RunOut& end, const SolvedCutout& cutout, const Wall& wall) {
    return std::ranges::any_of(cutout.walls, [&](const Wall& own) {
        return isOwnWall(end, own) && ((own.endCorner && own.endCorner == wall.startCorner) ||
                                       (own.startCorner && own.startCorner == wall.endCorner));
    });
}

void meetWalls(std::optional<RunOutMet>& worst, const RunOut& end, const SolvedCutout& cutout, double reach) {
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

void meetCutout(std::optional<RunOutMet>& worst, const Project& project, const RunOut& end,
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

void meetHole(std::optional<RunOutMet>& worst, const Project& project, const RunOut& end, std::size_t index) {
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

}  // namespace

std::vector<RunOut> runOutsOf(const SolvedLine& line, const Kerf& kerf) {
    std::vector<RunOut> ends;
    if (!kerf.stopped) {
        return ends;
    }
    for (const RunOut& end : {RunOut{line, kerf, kerf.fullFrom, -1, kerf.fullFrom - kerf.surfaceFrom},
                              RunOut{line, kerf, kerf.fullTo, 1, kerf.surfaceTo - kerf.fullTo}}) {
        if (end.surface > kOnLimit) {
            ends.push_back(end);
        }
    }
    return ends;
}

std::optional<RunOutMet> metBy(const Project& project, const Solved& solved, const RunOut& end) {
    std::optional<RunOutMet> worst;
    for (const SolvedCutout& cutout : solved.cutouts) {
        meetCutout(worst, project, end, cutout);
    }
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) {
        meetHole(worst, project, end, i);
    }
    return worst;
}

bool runsIntoWall(const Project& project, const Solved& solved, const SolvedLine& line, const Kerf& kerf) {
    return std::ranges::any_of(runOutsOf(line, kerf), [&](const RunOut& end) {
        const auto met = metBy(project, solved, end);
        return met && met->severity == Severity::Stop;
    });
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/way.h"

#include <algorithm>
#include <cmath>

#include "core/shop/heading.h"
#include "core/shop/rail_setting.h"
#include "core/shop/rip_setting.h"
#include "core/shop/saw_reach.h"
#include "core/shop/stop_setting.h"

namespace kerfwall {

namespace {

/// Settings this close are one, mm: far below anything a hand can set.
constexpr double kSameSetting = 1e-6;

std::string part(const char* name, std::optional<double> value) {
    return value ? name + std::to_string(std::llround(*value / kSameSetting)) : std::string();
}

}  // namespace

KerfAsked askedOf(const SolvedLine& line, const Kerf& kerf) { return askedOf(line.from, line.to, kerf); }

Way markedWay(std::optional<std::size_t> saw) {
    Way way;
    way.saw = saw;
    way.toMarks = true;
    way.beyondSaw = true;
    return way;
}

KerfAsked askedOf(Point from, Point to, const Kerf& kerf) {
    const Point left = unit(leftOf(to - from));
    KerfAsked asked{from, to, kerf.side == Side::Left ? left : -1.0 * left, kerf.depth, kerf.stopped, {}};
    if (kerf.stopped) {
        asked.plunge = {kerf.fullFrom, kerf.fullTo, kerf.surfaceFrom, kerf.surfaceTo};
    }
    return asked;
}

std::vector<Edge> trueEnds(const Panel& panel, Edge against) {
    const Edge start = previousOf(against);
    const Edge end = nextOf(against);
    switch (panel.squareCorner) {
        case SquareCorner::All:
            return {start, end};
        case SquareCorner::None:
            return {};
        case SquareCorner::Start:
            return {start};
        case SquareCorner::End:
            return {end};
        case SquareCorner::Both:
            break;
    }
    return {start, end};
}

std::vector<Way> waysAt(const Project& project, std::size_t index, const KerfAsked& kerf) {
    const Saw& saw = benchOf(project).saws.at(index);
    const Panel& panel = project.panel;
    const AskedCut cut{kerf.from, kerf.to, kerf.depth, kerf.stopped};
    std::vector<Way> ways;
    for (const Edge against : trueEdges(panel)) {
        if (!reaches(saw, cut, against, panel)) {
            continue;
        }
        if (saw.kind == SawKind::GuideRail) {
            ways.push_back(railWay(panel, saw, kerf));
            break;
        }
        if (saw.kind == SawKind::RipFence) {
            ways.push_back(ripWay(panel, saw, kerf, against));
            continue;
        }
        const std::vector<Way> stops = stopWays(panel, saw, kerf, against);
        ways.insert(ways.end(), stops.begin(), stops.end());
    }
    for (Way& way : ways) {
        way.saw = index;
    }
    std::ranges::stable_partition(ways, [](const Way& way) { return !way.toMarks; });
    return ways;
}

std::string setupKey(const Way& way, const LineId& line) {
    const Setting& is = way.setting;
    std::string key = way.saw ? "saw" + std::to_string(*way.saw) : "no saw";
    if (way.toMarks) {
        return key + " marks " + line;
    }
    key += part(" fence", is.fence) + part(" stop", is.stop) + part(" angle", is.angle) +
           part(" height", is.bladeHeight) + part(" depth", is.depth) + part(" spacer", is.spacer);
    if (is.plunge) {
        key += part(" full", is.plunge->fullFrom) + part(" to", is.plunge->fullTo) +
               part(" surface", is.plunge->surfaceFrom) + part(" to", is.plunge->surfaceTo);
    }
    if (way.stopSide) {
        key += *way.stopSide == Side::Left ? " left" : " right";
    }
    if (way.turn) {
        key += *way.turn == Side::Left ? " turned left" : " turned right";
    }
    return key;
}

}  // namespace kerfwall

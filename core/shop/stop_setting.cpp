// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/stop_setting.h"

#include <cmath>
#include <numbers>

#include "core/geometry/edge_place.h"
#include "core/shop/heading.h"
#include "core/shop/lie.h"
#include "core/shop/saw_reach.h"

namespace kerfwall {

namespace {

constexpr double kRadians = std::numbers::pi / 180;

/// Where the endless line meets the edge's own endless line, mm along the edge.
double meetsAt(Edge edge, const KerfAsked& kerf, const Panel& panel) {
    const double fromDepth = distanceFromEdge(panel, edge, kerf.from);
    const double share = fromDepth / (fromDepth - distanceFromEdge(panel, edge, kerf.to));
    return alongFrom(edge, kerf.from + share * (kerf.to - kerf.from), panel);
}

bool isFenceFar(const Saw& saw) {
    return saw.kind == SawKind::SlidingMitre || (saw.kind == SawKind::CrosscutSled && saw.fenceFar);
}

/// The panel's edge that passes the blade first: pushed against a far fence it is the edge on the fence.
/// A sliding saw starts at the edge nearest the operator.
Edge leadsAcross(const Saw& saw, Edge against) {
    return saw.kind == SawKind::CrosscutSled && saw.fenceFar ? against : oppositeOf(against);
}

/// Whether the kerf must have its whole depth right up to that edge.
bool isDeepAt(Edge edge, const KerfAsked& kerf, const Panel& panel) {
    const double run = distance(kerf.from, kerf.to);
    const bool deepAtFrom = !kerf.stopped || kerf.plunge.fullFrom < kAtTheEdge;
    const bool deepAtTo = !kerf.stopped || kerf.plunge.fullTo > run - kAtTheEdge;
    return (deepAtFrom && distanceFromEdge(panel, edge, kerf.from) < kAtTheEdge) ||
           (deepAtTo && distanceFromEdge(panel, edge, kerf.to) < kAtTheEdge);
}

Way bareWay(const Panel& panel, const Saw& saw, const KerfAsked& kerf, Edge against) {
    const bool square = headingFrom(against, kerf.from, kerf.to) == Heading::Square;
    const double lean = square ? 0 : leanFrom(against, kerf.from, kerf.to);
    Way way;
    way.against = against;
    way.leads = leadsAcross(saw, against);
    way.faceUp = saw.kind == SawKind::SlidingMitre;
    if (!square) {
        way.turn = way.faceUp ? turnOfArm(lean, true) : turnOfPanel(lean, false);
    }
    if (saw.kind == SawKind::CrosscutSled) {
        way.setting.bladeHeight = kerf.depth + saw.base;
        if (!square) {
            way.setting.wedge = wedgeFor(std::abs(lean), edgeLength(panel, against));
        }
        return way;
    }
    way.setting.angle = std::abs(lean);
    if (saw.kind == SawKind::MitreGauge) {
        way.setting.bladeHeight = kerf.depth;
        return way;
    }
    way.setting.depth = kerf.depth;
    if (kerf.stopped) {
        way.setting.plunge = kerf.plunge;
    }
    if (isDeepAt(against, kerf, panel)) {
        way.setting.spacer = spacerFor(saw, kerf.depth);
    }
    return way;
}

/// Where the stop stands for that end; none where no stop can stand there.
std::optional<double> stopAt(const Panel& panel, const Saw& saw, const KerfAsked& kerf, const Way& way,
                             Edge end) {
    const Edge against = *way.against;
    const double at = meetsAt(against, kerf, panel);
    const bool atStart = end == previousOf(against);
    const bool beyond = (dot(kerf.waste, edgeHeading(against)) > 0) == atStart;
    const double along = saw.kerf / std::cos(way.setting.angle.value_or(0) * kRadians);
    const double stop = nearerFace(atStart ? at : edgeLength(panel, against) - at, beyond, along);
    const bool tooFar = saw.kind == SawKind::CrosscutSled && stop > saw.maxStop;
    if (stop <= 0 || tooFar) {
        return std::nullopt;
    }
    return stop;
}

/// A sled bears a stop, but not beside a wedge: the panel's end no longer stands square to the stop.
bool bearsStop(const Saw& saw, const Way& way) {
    return saw.kind == SawKind::CrosscutSled ? !way.setting.wedge : saw.stop;
}

}  // namespace

Wedge wedgeFor(double angle, double length) { return {length * std::tan(angle * kRadians), length}; }

std::vector<Way> stopWays(const Panel& panel, const Saw& saw, const KerfAsked& kerf, Edge against) {
    const Way bare = bareWay(panel, saw, kerf, against);
    std::vector<Way> ways;
    if (bearsStop(saw, bare)) {
        for (const Edge end : trueEnds(panel, against)) {
            if (const auto stop = stopAt(panel, saw, kerf, bare, end)) {
                Way& way = ways.emplace_back(bare);
                way.setting.stop = stop;
                way.stopEdge = end;
                way.stopSide = sideOfEnd(end == nextOf(against), isFenceFar(saw), bare.faceUp);
            }
        }
    }
    ways.push_back(bare);
    ways.back().toMarks = true;
    return ways;
}

}  // namespace kerfwall

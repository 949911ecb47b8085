// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/saw_reach.h"

#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/geometry/kerf_layout.h"
#include "core/shop/heading.h"

namespace kerfwall {

bool canStop(SawKind kind) { return kind == SawKind::GuideRail || kind == SawKind::SlidingMitre; }

double spacerFor(const Saw& saw, double depth) { return reachOfRound(saw.blade, depth, 0); }

bool reaches(const Saw& saw, const AskedCut& cut, Edge against, const Panel& panel) {
    if ((cut.stopped && !canStop(saw.kind)) || 2 * cut.depth >= saw.blade) {
        return false;
    }
    if (saw.kind != SawKind::RipFence && saw.kind != SawKind::GuideRail &&
        headingFrom(against, cut.from, cut.to) == Heading::Along) {
        return false;
    }
    const double lean = std::abs(leanFrom(against, cut.from, cut.to));
    const double run = distance(cut.from, cut.to);
    switch (saw.kind) {
        case SawKind::RipFence:
            return headingFrom(against, cut.from, cut.to) == Heading::Along &&
                   distanceFromEdge(panel, against, cut.from) <= saw.maxFence;
        case SawKind::CrosscutSled:
            return lean <= kSteepestWedge && run <= saw.maxCut;
        case SawKind::MitreGauge:
            return lean <= saw.maxAngle;
        case SawKind::GuideRail:
            return run <= saw.railLength;
        case SawKind::SlidingMitre:
            return lean <= saw.maxAngle && run + spacerFor(saw, cut.depth) <= saw.maxCut;
    }
    return false;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/kerf_over_hole.h"

#include <cmath>

#include "core/shop/panel_edges.h"
#include "core/shop/plan_bands.h"

namespace kerfwall {

double widthAtFloor(const Panel& panel, const ClampHole& hole, double floor) {
    const double radius = hole.diameter / 2;
    const double above = heightOf(panel, hole) - floor;
    if (above >= radius) {
        return 0;
    }
    return above <= 0 ? hole.diameter : 2 * std::sqrt((radius - above) * (radius + above));
}

bool crossesHole(const Panel& panel, const ClampHole& hole, double depth, const KerfOver& over) {
    const OutlinePiece axis = axisOf(panel, hole);
    const Point end = axis.from + depth * unit(axis.to - axis.from);
    return over.width > 0 && depth > 0 &&
           overlapInPlan(stripRound(axis.from, end, over.width),
                         bandOf(*over.line, *over.kerf, over.kerf->fullFrom, over.kerf->fullTo));
}

double clearDepth(const Panel& panel, const ClampHole& hole, const KerfOver& over) {
    // By halving: a longer hole only comes under more.
    double clear = 0;
    double met = hole.depth;
    for (int i = 0; i < 40; ++i) {
        const double middle = (clear + met) / 2;
        (crossesHole(panel, hole, middle, over) ? met : clear) = middle;
    }
    return clear;
}

}  // namespace kerfwall

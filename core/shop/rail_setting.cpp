// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/rail_setting.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/shop/heading.h"

namespace kerfwall {

namespace {

/// The edge on which a place of the panel's border lies.
Edge edgeAt(const Panel& panel, Point place) {
    return *std::ranges::min_element(kEdges, {},
                                     [&](Edge edge) { return std::abs(distanceFromEdge(panel, edge, place)); });
}

}  // namespace

bool isPushedAlong(const Saw& saw, const KerfAsked& kerf) {
    const bool wasteOnRight = cross(kerf.to - kerf.from, kerf.waste) < 0;
    return wasteOnRight == (saw.railSide == Side::Left);
}

double panelUnderRail(const Panel& panel, const KerfAsked& kerf) {
    const Point kept = -1.0 * kerf.waste;
    double least = HUGE_VAL;
    const double from = kerf.stopped ? kerf.plunge.surfaceFrom : 0;
    const double to = kerf.stopped ? kerf.plunge.surfaceTo : distance(kerf.from, kerf.to);
    for (const double share : {0.1, 0.5, 0.9}) {
        const Point place = kerf.from + (from + share * (to - from)) * unit(kerf.to - kerf.from);
        for (const Edge edge : kEdges) {
            const double towards = -dot(leftOf(edgeHeading(edge)), kept);
            if (towards > 0) {
                least = std::min(least, distanceFromEdge(panel, edge, place) / towards);
            }
        }
    }
    return least;
}

Way railWay(const Panel& panel, const Saw& saw, const KerfAsked& kerf) {
    const Edge reference = panel.referenceEdge;
    Way way;
    way.toMarks = true;
    way.setting.depth = kerf.depth + saw.rail;
    switch (headingFrom(reference, kerf.from, kerf.to)) {
        case Heading::Along:
            way.setting.angle = 0;
            break;
        case Heading::Square:
            way.setting.angle = 90;
            break;
        case Heading::Askew: {
            const double lean = leanFrom(reference, kerf.from, kerf.to);
            way.setting.angle = 90 - std::abs(lean);
            // Leaning to the edge's end the line rises less than a quarter turn to the left of the edge.
            way.turn = lean < 0 ? Side::Left : Side::Right;
        }
    }
    way.leads = edgeAt(panel, isPushedAlong(saw, kerf) ? kerf.from : kerf.to);
    if (kerf.stopped) {
        way.setting.plunge = kerf.plunge;
    }
    return way;
}

}  // namespace kerfwall

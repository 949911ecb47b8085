// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/rip_setting.h"

#include "core/geometry/edge_place.h"
#include "core/shop/heading.h"
#include "core/shop/lie.h"

namespace kerfwall {

Way ripWay(const Panel& panel, const Saw& saw, const KerfAsked& kerf, Edge against) {
    const bool beyond = dot(kerf.waste, leftOf(edgeHeading(against))) > 0;
    Way way;
    way.setting.fence = nearerFace(distanceFromEdge(panel, against, kerf.from), beyond, saw.kerf);
    way.setting.bladeHeight = kerf.depth;
    way.faceUp = false;
    way.against = against;
    way.leads = leadsAlongFence(against, saw.fenceSide);
    return way;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/rip_setting.h"

#include "core/shop/heading.h"
#include "core/shop/lie.h"

namespace kerfwall {

Way ripWay(const Panel& panel, const Saw& saw, const KerfAsked& kerf, Edge against) {
    const bool beyond = dot(kerf.waste, leftOf(directionOf(against))) > 0;
    Way way;
    way.setting.fence = nearerFace(depthFrom(against, kerf.from, panel), beyond, saw.kerf);
    way.setting.bladeHeight = kerf.depth;
    way.faceUp = false;
    way.against = against;
    way.leads = leadsAlongFence(against, saw.fenceSide);
    return way;
}

}  // namespace kerfwall

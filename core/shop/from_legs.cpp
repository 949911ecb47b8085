// SPDX-License-Identifier: GPL-3.0-or-later
// The opening between two legs; declared in from_wanted.h.
#include <array>
#include <cassert>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/geometry/use_of.h"
#include "core/shop/finding_words.h"
#include "core/shop/from_wanted.h"

namespace kerfwall {
namespace {

std::unexpected<WishRefusal> noShape(WishPart part, std::string sentence) {
    return std::unexpected(WishRefusal{NoWish::NoShape, part, std::move(sentence), std::nullopt});
}

// How far in from the frame's outside at the feet the legs' inner sides are at the rail.
double innerAtRail(const WantedLegs& legs) { return legs.height * std::tan(radians(legs.outerLean)) + legs.legTop; }

std::optional<WishRefusal> noShapeOf(const Project& project, const WantedLegs& legs) {
    const double most = legs.span / 2;
    if (legs.height <= 0) return noShape(WishPart::Height, "The rail must lie above the feet; say how far.").error();
    if (innerAtRail(legs) >= most) {
        return noShape(WishPart::LegTop, "The legs meet at the rail; each can be less than " +
                                             lengthWords(project, std::max(0.0, most - innerAtRail(legs) + legs.legTop)) + " wide there.").error();
    }
    if (legs.legFoot >= most) {
        return noShape(WishPart::LegFoot, "The legs meet at the feet; each can be less than " + lengthWords(project, most) +
                                              " wide there.").error();
    }
    if (legs.legFoot <= 0) return noShape(WishPart::LegFoot, "The legs run out above the feet; they must be more than 0 wide there, so let them taper less.").error();
    return std::nullopt;
}

std::string legSide(std::size_t side) {
    static constexpr std::array kNames{"the left leg's side", "the open side at the feet", "the right leg's side", "the rail's side"};
    return kNames.at(side);
}

}  // namespace

double footAbove(const Project& project) {
    const UseAnswer use = useOf(project);
    return std::ceil((use.guide + use.cutter) / 2 / kFootStep) * kFootStep;
}

double innerLean(const WantedLegs& legs) { return degrees(std::atan2(innerAtRail(legs) - legs.legFoot, legs.height)); }

double legFootFor(const WantedLegs& legs, double lean) {
    return innerAtRail(legs) - legs.height * std::tan(radians(lean));
}

std::expected<LaidWish, WishRefusal> layLegs(const Project& project, const WantedLegs& wish, int highest) {
    assert(std::isfinite(wish.span) && std::isfinite(wish.height) && std::isfinite(wish.legTop) && std::isfinite(wish.legFoot));
    assert(std::abs(wish.outerLean) < 90 && std::isfinite(wish.cornerRadius));
    if (auto no = noShapeOf(project, wish)) return std::unexpected(*no);
    const double middle = wish.across.value_or(project.panel.width / 2);
    const double feet = wish.foot.value_or(footAbove(project));
    const double top = wish.span / 2 - innerAtRail(wish);
    const double splay = (innerAtRail(wish) - wish.legFoot) / wish.height;  // mm further apart at each side for each mm down
    const double low = top + splay * (wish.height + feet + kPastEdge);
    if (low <= 0) {
        return noShape(WishPart::LegFoot, "Run on past the panel's edge the legs meet; let them taper less, or lay the feet nearer to the edge than " +
                                              lengthWords(project, feet) + ".");
    }
    WantedOutline outline;
    outline.name = "leg frame";
    outline.cutout = "frame";
    outline.corners = {{middle - top, feet + wish.height}, {middle - low, -kPastEdge}, {middle + low, -kPastEdge}, {middle + top, feet + wish.height}};
    outline.cornerRadius = wish.cornerRadius;
    outline.isOpenBelow = outline.isSymmetric = true;
    outline.narrowPart = WishPart::LegTop;
    outline.sideName = legSide;
    return layOutline(project, outline, highest);
}

}  // namespace kerfwall

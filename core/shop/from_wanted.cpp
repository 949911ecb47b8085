// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/from_wanted.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

#include "core/geometry/tolerance.h"
#include "core/geometry/use_of.h"
#include "core/shop/finding_words.h"

namespace kerfwall {
namespace {

// Said here, since a window has a width and a height to change rather than sides.
std::optional<WishRefusal> tooNarrow(const Project& project, const WantedWindow& wish) {
    const UseAnswer use = useOf(project);
    const double least = std::max(use.cutter, trimBitOf(project).diameter - 2 * wallOffset(project));
    const double size = std::min(wish.width, wish.height);
    if (size > least + kDoubt) return std::nullopt;
    const bool byGuide = least <= use.cutter + kDoubt;
    const std::string tool = !byGuide ? "the trimming bit" : project.use.byBush ? "the bush" : "the bearing";
    return WishRefusal{NoWish::TooNarrow, size == wish.width ? WishPart::Width : WishPart::Height,
                       "Here " + tool + " has no room to move between the walls; the window must be wider than " +
                           lengthWords(project, least) + ", or the bit thinner.",
                       std::nullopt};
}

std::string windowSide(std::size_t side) {
    static constexpr std::array kNames{"the lower side", "the right side", "the upper side", "the left side"};
    return kNames.at(side);
}

}  // namespace

std::expected<LaidWish, WishRefusal> layWindow(const Project& project, const WantedWindow& wish, int highest) {
    assert(std::isfinite(wish.width) && std::isfinite(wish.height) && std::isfinite(wish.cornerRadius));
    assert(std::isfinite(wish.across.value_or(0)) && std::isfinite(wish.up.value_or(0)));
    if (auto no = tooNarrow(project, wish)) return std::unexpected(*no);
    const Point middle{wish.across.value_or(project.panel.width / 2), wish.up.value_or(project.panel.height / 2)};
    const Point low{middle.x - wish.width / 2, middle.y - wish.height / 2};
    const Point high{middle.x + wish.width / 2, middle.y + wish.height / 2};
    WantedOutline outline;
    outline.name = outline.cutout = "window";
    outline.corners = {low, {high.x, low.y}, high, {low.x, high.y}};
    outline.cornerRadius = wish.cornerRadius;
    outline.narrowPart = WishPart::Width;
    outline.sideName = windowSide;
    return layOutline(project, outline, highest);
}

std::expected<LaidWish, WishRefusal> layWish(const Project& project, const Wish& wish, int highest) {
    if (const auto* window = std::get_if<WantedWindow>(&wish)) return layWindow(project, *window, highest);
    if (const auto* legs = std::get_if<WantedLegs>(&wish)) return layLegs(project, *legs, highest);
    return layPolygon(project, std::get<WantedPolygon>(wish), highest);
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <optional>
#include <variant>

#include "core/shop/lay_outline.h"

namespace kerfwall {

using Wish = std::variant<WantedWindow, WantedLegs, WantedPolygon>;

/// The project with that window laid on its panel (see layOutline).
/// Requires  all numbers finite. (asserted)
/// Refuses   see NoWish; the first that holds, in that order.
[[nodiscard]] std::expected<LaidWish, WishRefusal> layWindow(const Project& project, const WantedWindow& wish,
                                                             int highest = 0);

/// The same for the opening between two legs. Its upper side lies by its distance, one leg's side by its angle, the
/// other as the mirror image. Its wanted outline reaches kPastEdge below the panel.
[[nodiscard]] std::expected<LaidWish, WishRefusal> layLegs(const Project& project, const WantedLegs& wish,
                                                           int highest = 0);

/// The same for a polygon. Corners in line with their neighbours are left out.
[[nodiscard]] std::expected<LaidWish, WishRefusal> layPolygon(const Project& project, const WantedPolygon& wish,
                                                              int highest = 0);

/// The one of these that fits the wish.
[[nodiscard]] std::expected<LaidWish, WishRefusal> layWish(const Project& project, const Wish& wish, int highest = 0);

/// How far above the panel's bottom edge the feet stand where the maker does not say: so much that the cutter has left
/// the work before the guide leaves the wall, up to the next kFootStep.
[[nodiscard]] double footAbove(const Project& project);

/// A leg's width at the foot whose inner side leans by `lean` degrees from upright, feet apart; mm.
[[nodiscard]] double legFootFor(const WantedLegs& legs, double lean);
/// The lean of a leg's inner side, degrees from upright; positive: further apart at the feet than at the rail.
[[nodiscard]] double innerLean(const WantedLegs& legs);

inline constexpr double kPastEdge = 20;  ///< mm
inline constexpr double kFootStep = 10;  ///< mm

/// A bush and a bit, or a bearing and a bit.
struct Steering {
    bool byBush = false;
    double guide = 0;   ///< mm, outside
    double cutter = 0;  ///< mm
    bool operator==(const Steering&) const = default;
};

/// The project, its finished template steering that.
[[nodiscard]] Project steeredBy(const Project& project, const Steering& steering);

/// What else on the bench cuts that wish, where the tools in use cannot, or only with bores. Without bores if there
/// is such a pair, then the thickest bit, then the smallest bush. Looked at: each bush on the bench with each bit on it
/// that clears its bore by kBushRoom, and the trimming bit with its own bearing.
/// None      where nothing there is better, or where the panel has another cutout: the template steers one pair.
[[nodiscard]] std::optional<Steering> otherSteering(const Project& project, const Wish& wish);

inline constexpr double kBushRoom = 3;  ///< mm a bush must be larger than its bit; finding bush-fit

}  // namespace kerfwall

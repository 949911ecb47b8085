// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <optional>

#include "core/geometry/work_rectangle.h"
#include "core/shop/from_wanted.h"

namespace kerfwall {

/// Where an opening lies along one direction, left to right or bottom to top.
struct PlaceAlong {
    enum class From {
        Suited,    ///< where borders and clamp holes suit; on the work: in the middle
        Centred,   ///< in the middle
        Middle,    ///< its middle, from the left or bottom edge
        LowSide,   ///< its left or lower side, from the left or bottom edge
        HighSide,  ///< its right or upper side, from the right or top edge
    };
    From from = From::Suited;
    double distance = 0;  ///< mm, from that edge
    bool operator==(const PlaceAlong&) const = default;
};

/// Where an opening lies on the panel, or on the work.
struct WishPlace {
    bool onWork = false;  ///< edges and middles are the work's
    PlaceAlong across;
    PlaceAlong up;              ///< of legs: LowSide is the feet from the panel's bottom edge; on the work they stand on its lower edge
    std::optional<Blank> work;  ///< the work's size, where the project holds no outline of it
    bool operator==(const WishPlace&) const = default;
};

/// Lays the wish in that place (layWish). On the work of a project that holds its outline, the walls follow that. On work
/// known by its size alone the opening is laid where it suits the panel and the work's outline is put round it;
/// fences that stand between the panel's edges and the work get the offset at which it touches them.
/// Suited: in the middle of the panel, a polygon as its corners say where that is on the panel. Where clamp holes or
/// lines are in the way there, the nearest place to the side, or up or down, by steps of kPlaceStep or a twelfth of the
/// room, with good borders and nothing to mind of a hole that was not to mind before; else the first place stays.
/// Requires  onWork only with an outline in the project or a size (asserted); the wish says no place of its own.
/// Refuses   as layWish.
[[nodiscard]] std::expected<LaidWish, WishRefusal> layPlaced(const Project& project, const Wish& wish,
                                                             const WishPlace& place, int highest = 0);

/// What else on the bench cuts it there (otherSteering).
[[nodiscard]] std::optional<Steering> otherSteering(const Project& project, const Wish& wish, const WishPlace& place);

inline constexpr double kPlaceStep = 5;  ///< mm
inline constexpr int kPlaceSteps = 12;   ///< tried in each direction

}  // namespace kerfwall

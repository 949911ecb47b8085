// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// How far a wall gives under a side push, where it gives most.
struct WallFlex {
    std::size_t cutout = 0;  ///< index into the answer's cutouts
    std::size_t wall = 0;    ///< index into that cutout's walls
    double gives = 0;        ///< mm along the push: the mean of the pushed stretch
    Point at;                ///< its middle
    bool operator==(const WallFlex&) const = default;
};

/// What a side push by hand is taken to be, N. Common practice, no measurement found; a project's limits may say another.
inline constexpr double kSidePush = 50;
/// The stretch of wall it is spread over, mm; the whole wall if shorter.
inline constexpr double kPushedLength = 20;

/// How the finished template gives in its own plane, wall by wall: the panel less its openings, kerfs as bands of web thickness, held
/// where the project says (nothing said: by its clamps where it has holes for them, else by the reference edge). The push stands
/// square to the wall, away from the opening, between the corners' arcs. Walls of what nothing holds, and of a panel that nothing
/// holds, are left out; held by the work, nothing gives.
/// Clamp holes and fences' grooves do not weaken it. Clamps hold the panel under their jaw, as deep in as the hole.
[[nodiscard]] std::vector<WallFlex> flexOf(const Project& project, const Solved& solved);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// Where round a clamp hole wood is left.
enum class WoodAt {
    Above,         ///< to the layout face
    Below,         ///< to the back
    EdgeStart,     ///< beside it, to where the edge it goes into begins ...
    EdgeEnd,       ///< ... and ends
    UnderKerf,     ///< to the floor of a kerf over it
    BesideCutout,  ///< beside it, to an opening
    BesideHole,    ///< to another hole
    AheadCutout,   ///< from the drill's point to an opening
    AheadEdge,     ///< from the drill's point to the opposite edge
};

struct WoodLeft {
    WoodAt at = WoodAt::Above;
    double left = 0;   ///< mm; 0 ahead: it runs into it; under 0: so far it cuts into it
    std::string what;  ///< the kerf's line, the cutout, the other hole's name; "" else
    bool operator==(const WoodLeft&) const = default;
};

/// The wood round a clamp hole: all that is beside it, in the order of WoodAt, and ahead of it to every cutout.
/// Requires  the hole is the project's.
/// Source    plain distances less the hole's radius; two holes across: hypot of plan and height.
[[nodiscard]] std::vector<WoodLeft> woodRound(const Project& project, const Solved& solved, std::size_t hole);

/// A clamp hole's name for a person: its id, else its number.
[[nodiscard]] std::string holeNumber(const Project& project, std::size_t hole);

}  // namespace kerfwall

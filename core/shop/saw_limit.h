// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/says/project.h"
#include "core/shop/saw_reach.h"

namespace kerfwall {

enum class SawLimit {
    CannotStop,  ///< its kind cannot end a kerf short of the panel's edge
    Blade,       ///< the blade must be more than twice as wide as the kerf is deep
    Direction,   ///< a rip fence cuts along the edge on it, a fence across the push never does
    Fence,       ///< max_fence
    Cut,         ///< max_cut
    Angle,       ///< max_angle, or the steepest wedge on a sled
    Rail,        ///< rail_length
};

/// Why a saw cannot make a cut: what the cut asks for and the most the saw has, mm or degrees (Angle).
/// Blade: twice the depth against the blade. CannotStop and Direction have neither.
struct BeyondSaw {
    SawLimit limit = SawLimit::Direction;
    std::optional<double> asked;
    std::optional<double> most;
    bool operator==(const BeyondSaw&) const = default;
};

/// The limit that keeps the saw from the cut with `against` on its fence; none exactly where it reaches.
[[nodiscard]] std::optional<BeyondSaw> limitBeyond(const Saw& saw, const AskedCut& cut, Edge against, const Panel& panel);

/// The same with the edge of the panel that suits it best of those said to be true.
[[nodiscard]] std::optional<BeyondSaw> limitBeyond(const Saw& saw, const AskedCut& cut, const Panel& panel);

/// The limit as half a sentence: "its rail lets it cut 1400.0 mm, and the line runs 1600.0 mm".
[[nodiscard]] std::string limitWords(const Project& project, const Saw& saw, const BeyondSaw& beyond);

}  // namespace kerfwall

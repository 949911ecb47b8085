// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/shop/way.h"

namespace kerfwall {

/// A kerf before its saw is chosen: its line's run on the panel, and how it would be at each saw.
struct CutAsked {
    std::size_t line = 0;  ///< index into the project's lines
    Point from;
    Point to;
    std::vector<std::optional<Kerf>> atSaw;  ///< beside the bench's saws; none where that saw is not to cut it
};

/// One way that could be chosen for a kerf.
struct KerfWay {
    std::optional<std::size_t> saw;  ///< index into the bench's saws
    std::size_t way = 0;             ///< index into waysAt of that saw
    Way is;
    std::string setup;  ///< what makes two ways one set-up, see setupKey
    int dislike = 0;    ///< of ways that are alike otherwise the one with the least is taken
};

/// All ways that may be chosen for it. A line that names its saw is cut with that one. Only the reference edge
/// lies on a fence where some way leaves it there, unless the project prefers the fewest set-ups. Of lines
/// askew a project that prefers to see them takes those with the layout face up, if there are any.
/// Disliked: a saw less made for that direction (along the reference edge: rip fence first; square to it:
/// sled, then gauge; askew: gauge, then rail), another edge, marks alone.
/// Where no saw can make the cut, one way that says so.
[[nodiscard]] std::vector<KerfWay> kerfWays(const Project& project, const CutAsked& cut);

}  // namespace kerfwall

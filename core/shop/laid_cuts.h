// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>
#include <vector>

#include "core/geometry/kerf_layout.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// Which kerfs are stopped: as the project says, and those that the program stops by itself.
struct Stops {
    std::set<LineSide> said;
    std::set<LineSide> byItself;
    bool operator==(const Stops&) const = default;
};

/// All kerfs as the saws chosen for them cut them.
struct LaidCuts {
    std::vector<KerfRun> runs;
    std::vector<LaidKerf> kerfs;  ///< beside `runs`
    int leastSetups = 0;          ///< see chooseCuts
};

/// Ways chosen for all kerfs together, and the kerfs laid with their saws' widths. What the program stops by
/// itself goes to saws whose run-out crosses no wall of `solved`, if there are any (its lines and walls are those of
/// `arranged` and `borders`, whatever its kerfs).
[[nodiscard]] LaidCuts layCuts(const Project& project, const Arranged& arranged, const std::vector<Border>& borders,
                               const Stops& stops, const Solved& solved);

/// The through kerfs left to the program (`extent` auto) that do harm in `solved` and that a saw at hand can
/// stop so that they no longer do: one that nicks a wall by more than the limit that takes care, one that takes
/// the wood from behind a wall, one that runs on through a border thinner than is good where its run-out ends on
/// the panel.
[[nodiscard]] std::set<LineSide> sidesToStop(const Project& project, const Arranged& arranged,
                                             const std::vector<Border>& borders, const Stops& stops,
                                             const LaidCuts& cuts, const Solved& solved);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstddef>
#include <optional>
#include <set>
#include <vector>

#include "core/geometry/border.h"
#include "core/geometry/curve.h"

namespace kerfwall {

/// A kerf with what of it counts in an outline. Places are mm along its line from where that enters the
/// panel; a kerf that runs on past the panel's edge counts to +-kPastThePanel.
struct LaidKerf {
    std::size_t line = 0;  ///< into Arranged::lines
    Kerf kerf;
    Spans below;   ///< for a bearing below bored corners' kerfs: up to the bores' tangent points
    Spans inBand;  ///< for one that rides at the kerfs' height
};

inline constexpr double kPastThePanel = 1e5;

/// One side of a line of the arrangement.
struct LineSide {
    std::size_t line = 0;  ///< into Arranged::lines
    Side side = Side::Left;
    auto operator<=>(const LineSide&) const = default;
};

/// What one end of a wall asks of its kerf.
struct WallEnd {
    double at = 0;       ///< where its full depth must reach, mm along the line
    bool open = false;   ///< at the panel's edge
    bool bored = false;  ///< at a bore larger than the bit: the kerf counts no further in an outline
};

/// A wall seen along its line: `low` before `high`.
struct WallOnLine {
    std::size_t cutout = 0;
    double from = 0;
    double to = 0;
    WallEnd low;
    WallEnd high;
};

/// A kerf before its saw is chosen: the walls it makes. Stopped, one for each run of walls between which the
/// line stays inside the cutout; a run that is open at both ends goes through all the same.
struct KerfRun {
    LineSide on;
    bool stopped = false;
    double length = 0;  ///< of the line on the panel, mm
    std::vector<WallOnLine> walls;
};

/// The kerfs of all cutouts' walls, line by line, left before right; stopped on the sides in `stopped`.
/// `borders` stands beside `arranged.cutouts`.
[[nodiscard]] std::vector<KerfRun> kerfRuns(const Project& project, const Arranged& arranged,
                                            const std::vector<Border>& borders, const std::set<LineSide>& stopped);

/// The sides that the project says are to be stopped.
[[nodiscard]] std::set<LineSide> saidToStop(const Project& project, const Arranged& arranged);

/// The run as that saw cuts it (an index into the bench's saws); none: as the bench's first saw would, or the
/// stock bench's, which can't.
[[nodiscard]] LaidKerf laidKerf(const Project& project, const KerfRun& run, std::optional<std::size_t> saw);

/// Each run as its saw cuts it. `saws` stands beside `runs`.
[[nodiscard]] std::vector<LaidKerf> layKerfs(const Project& project, const std::vector<KerfRun>& runs,
                                             const std::vector<std::optional<std::size_t>>& saws);

/// How far past its full-depth end a blade's round has cut at least `z` deep, mm; z = 0: the run-out.
/// Source    sqrt(R^2 - (R - d + z)^2), from the circle of the blade.
[[nodiscard]] double reachOfRound(double bladeDiameter, double kerfDepth, double z);

}  // namespace kerfwall

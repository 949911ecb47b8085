// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/shop/way.h"

namespace kerfwall {

/// How an error of one source moves a wall off its line: to the line's left, at `s` mm from where the line enters the
/// panel, by (atStart + perMm s) times the error. Of an angle `plusMinus` is its tangent and `perMm` 1.
struct WallShare {
    std::string source;
    double plusMinus = 0;
    double atStart = 0;
    double perMm = 0;
    [[nodiscard]] double at(double s) const { return atStart + perMm * s; }
    bool operator==(const WallShare&) const = default;
};

/// A panel's size that was measured with a rule reads to ± this, mm. Trade: a rule's setting, as a fence's.
inline constexpr double kSizeMeasured = 0.15;
/// One that was only said is meant to the whole millimetre.
inline constexpr double kSizeSaid = 0.5;

/// All that moves the wall of that kerf, cut that way:
///   - the setting of fence or stop, one error for all kerfs of a set-up; at marks, each end of the line by itself
///     (rail), or the place at the leading end (gauge, sled, mitre saw; a sled's wedge rises as exactly over its length);
///   - the saw's squareness, turning the wall about where it meets the fence, one error for all its square cuts;
///     of a gauge or arm turned, one for each angle;
///   - the kerf's width where the blade's far side makes the wall, one error for a saw;
///   - the panel's size where the wall is set from its right or top edge: places count from bottom and left.
[[nodiscard]] std::vector<WallShare> wallShares(const Project& project, const SolvedLine& line, Side side,
                                                const Way& way);

}  // namespace kerfwall

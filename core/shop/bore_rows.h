// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// A bore with its place at the drill press: the panel's reference edge on the fence, its measured end at the stop.
struct Bore {
    LineId first;  ///< the lines of its corner
    LineId second;
    Point centre;
    double radius = 0;
    double fence = 0;  ///< from the fence's face to the spindle's centre, mm
    double stop = 0;   ///< from the stop's face to the spindle's centre, mm
    bool operator==(const Bore&) const = default;
};

/// Bores of one diameter at one distance from the fence: one set-up. On the circle jig, which has no fence, all of one
/// diameter.
using BoreRow = std::vector<Bore>;

/// All bored corners in few changes: by diameter in the order they are met, each diameter's rows so that the fence stays
/// where it is from one diameter to the next where both have a row there, and each row from the stop last used on.
[[nodiscard]] std::vector<BoreRow> boreRows(const Project& project, const Solved& solved);

}  // namespace kerfwall

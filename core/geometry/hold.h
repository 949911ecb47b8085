// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <utility>
#include <variant>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// What a line in hand holds on to.
enum class HoldOn {
    PanelCorner,
    EdgeMiddle,   ///< `base`: the edge
    LineEnd,      ///< where line `first` meets an edge
    Crossing,     ///< of lines `first` and `second`
    LaidPoint,    ///< a point that line `first` was laid through
    Parallel,     ///< to `base`
    Square,       ///< to `base`
    WholeDegree,  ///< `angle` from `base`
    HalfDegree,
    Bore,         ///< tangent to the bore at the corner of `first` and `second`
    Mirror,       ///< the image of `first` about `about`
    SawnCorner,   ///< clears the work's sawn corner at `at`
};

/// One thing a line in hand holds on to, and where that shows.
struct Hold {
    HoldOn on = HoldOn::PanelCorner;
    Point at;
    LineId first;
    LineId second;
    Base base = Edge::Bottom;
    double angle = 0;  ///< degrees
    std::variant<Centre, LineId> about = Centre::Upright;
    bool operator==(const Hold&) const = default;
};

/// The edges and lines a hold is about, as runs on the panel, to be pointed out: what a line is parallel to, the two
/// lines of a crossing, what is mirrored and the axis.
[[nodiscard]] std::vector<std::pair<Point, Point>> holdRuns(const Panel& panel, const Solved& solved, const Hold& hold);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <utility>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

struct ExpectedCircle {
    Point centre;
    double radius = 0;
};

/// What a pattern must show, on the panel in mm, worked out from the solved project's numbers and not by any drawing.
struct ExpectedMarks {
    std::vector<std::pair<Point, Point>> lines;
    std::vector<OutlinePiece> arcs;
    std::vector<ExpectedCircle> circles;
};

/// Panel edges, layout lines, the far walls of kerfs, run-outs, openings, what they cut in the work, bores, relief holes and the
/// sides of clamp holes.
[[nodiscard]] ExpectedMarks expectedMarks(const Project& project, const Solved& solved);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <map>
#include <set>
#include <utility>

#include "core/geometry/motion.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// A line's run over the panel, in its direction.
using LineRun = std::pair<Point, Point>;

/// What a line that goes along with a motion is called afterwards; none for one that stays.
using Renamed = std::function<std::optional<LineId>(const LineId&)>;

/// How a line that ran along `run` is laid after a motion. It keeps its way of laying: from what goes along with the
/// motion with the same numbers, from what stays with new ones.
/// Gives     a place that may still miss the run it should have, where the way of laying cannot follow; see settle.
[[nodiscard]] Place placeAfter(const Panel& panel, const Solved& solved, const Place& place, const LineRun& run, const Motion& motion,
                               const Renamed& renamed);

/// Two runs of one and the same endless line, whichever way they point.
[[nodiscard]] bool areOnOneLine(const LineRun& first, const LineRun& second);

/// The project in which each of those lines lies where it should, whatever it is laid from: what misses its run is laid
/// anew from the panel's edges. Lines that should lie off the panel are left as they are.
[[nodiscard]] Project settle(Project project, const std::map<LineId, LineRun>& runs);

/// The lines of a project alone, solved.
[[nodiscard]] Solved linesAlone(Project project);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/plunge_places.h"

#include <cmath>

#include "core/geometry/edge_place.h"

namespace kerfwall {

std::optional<PlungeMarks> plungeFromStart(const Panel& panel, const Solved& solved, const WorkStep& step) {
    const SolvedLine* line = step.lines.empty() ? nullptr : findLine(solved, step.lines.front());
    if (!step.setting.plunge || !line) return std::nullopt;
    const PlungeMarks& marks = *step.setting.plunge;
    const auto off = [&](Point place) { return std::abs(distanceFromEdge(panel, *step.leads, place)); };
    if (!step.leads || off(line->from) <= off(line->to)) return marks;
    const double run = distance(line->from, line->to);
    return PlungeMarks{run - marks.fullTo, run - marks.fullFrom, run - marks.surfaceTo, run - marks.surfaceFrom};
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/hold.h"

#include "core/geometry/edge_place.h"
#include "core/geometry/mirror_image.h"

namespace kerfwall {
namespace {

using Runs = std::vector<std::pair<Point, Point>>;

void addLine(Runs& runs, const Solved& solved, const LineId& id) {
    if (const SolvedLine* line = findLine(solved, id)) runs.emplace_back(line->from, line->to);
}

void addBase(Runs& runs, const Panel& panel, const Solved& solved, const Base& base) {
    if (const auto* id = std::get_if<LineId>(&base)) return addLine(runs, solved, *id);
    const Edge edge = std::get<Edge>(base);
    runs.emplace_back(markPlace(panel, {edge, 0}), markPlace(panel, {edge, edgeLength(panel, edge)}));
}

}  // namespace

std::vector<std::pair<Point, Point>> holdRuns(const Panel& panel, const Solved& solved, const Hold& hold) {
    Runs runs;
    switch (hold.on) {
        case HoldOn::PanelCorner:
        case HoldOn::LineEnd:
        case HoldOn::LaidPoint:
        case HoldOn::SawnCorner: break;
        case HoldOn::EdgeMiddle:
        case HoldOn::Parallel:
        case HoldOn::Square:
        case HoldOn::WholeDegree:
        case HoldOn::HalfDegree: addBase(runs, panel, solved, hold.base); break;
        case HoldOn::Crossing:
        case HoldOn::Bore:
            addLine(runs, solved, hold.first);
            addLine(runs, solved, hold.second);
            break;
        case HoldOn::Mirror:
            addLine(runs, solved, hold.first);
            if (const auto axis = axisRun(panel, solved, hold.about)) runs.push_back(*axis);
            break;
    }
    return runs;
}

}  // namespace kerfwall

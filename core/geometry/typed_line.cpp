// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/typed_line.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/geometry/moving.h"
#include "core/geometry/solve.h"

namespace kerfwall {
namespace {

constexpr double kFurthest = 10000;  // mm, as the project file says
constexpr double kWidestAngle = 360;

/// The corner at the true end of the reference edge: where makers set off from.
Point trueCorner(const Panel& panel) {
    const double at = panel.squareCorner == SquareCorner::End ? edgeLength(panel, panel.referenceEdge) : 0;
    return markPlace(panel, {panel.referenceEdge, at});
}

Point pivot(const Panel& panel, const Solved& solved, const Base& from, double distance) {
    const Point corner = trueCorner(panel);
    if (const auto* edge = std::get_if<Edge>(&from)) {
        const Point foot = markPlace(panel, markOnEdge(panel, *edge, corner));
        return foot + distance * leftOf(edgeHeading(*edge));
    }
    const SolvedLine* line = findLine(solved, std::get<LineId>(from));
    if (!line) return corner;
    const Point end = kerfwall::distance(line->from, corner) <= kerfwall::distance(line->to, corner) ? line->from : line->to;
    return end + distance * leftOf(unit(line->to - line->from));
}

}  // namespace

std::expected<Place, NoLine> typedLine(const Project& project, const Solved& solved, const Base& from, double distance,
                                       double angle) {
    if (!(std::abs(distance) <= kFurthest) || !(std::abs(angle) <= kWidestAngle)) {
        return std::unexpected(NoLine::OffThePanel);
    }
    LayoutLine line;
    line.id = nextLineId(project, 0);
    if (angle == 0) line.place = ByOffset{from, distance};
    else line.place = ByAngle{from, angle, pivot(project.panel, solved, from, distance)};
    Project trial = project;
    trial.cutouts.clear();
    trial.lines.push_back(line);
    const Solved answer = solve(trial);
    if (findLine(answer, line.id)) return line.place;
    const bool onALine = std::ranges::any_of(answer.troubles, [&](const DrawingTrouble& trouble) {
        return trouble.lines.size() > 1 && std::ranges::find(trouble.lines, line.id) != trouble.lines.end();
    });
    return std::unexpected(onALine ? NoLine::OnALine : NoLine::OffThePanel);
}

}  // namespace kerfwall

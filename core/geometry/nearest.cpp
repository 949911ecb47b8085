// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/nearest.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/edge_place.h"

namespace kerfwall {
namespace {

/// A line that is left out of the answer can be taken hold of where no other is.
std::optional<NearLine> strayNear(const Solved& solved, Point place, double reach) {
    for (const StrayLine& line : solved.strays) {
        const Point along = unit(line.to - line.from);
        const double at = std::clamp(dot(place - line.from, along), 0.0, distance(line.from, line.to));
        if (distance(line.from + at * along, place) <= reach) return NearLine{line.id, Grip::Whole};
    }
    return std::nullopt;
}

}  // namespace

std::optional<NearLine> lineNear(const Solved& solved, Point place, double reach) {
    std::optional<NearLine> best;
    double nearest = reach;
    for (const SolvedLine& line : solved.lines) {
        const Point along = unit(line.to - line.from);
        const double at = std::clamp(dot(place - line.from, along), 0.0, distance(line.from, line.to));
        const double away = distance(line.from + at * along, place);
        if (away > nearest) continue;
        nearest = away;
        Grip grip = Grip::Whole;
        if (distance(place, line.from) <= reach) grip = Grip::From;
        if (distance(place, line.to) <= reach) grip = Grip::To;
        best = NearLine{line.id, grip};
    }
    return best ? best : strayNear(solved, place, reach);
}

std::optional<NearCorner> cornerNear(const Solved& solved, Point place, double reach) {
    std::optional<NearCorner> best;
    double nearest = reach;
    for (std::size_t i = 0; i < solved.cutouts.size(); ++i) {
        for (std::size_t j = 0; j < solved.cutouts[i].corners.size(); ++j) {
            const double away = distance(solved.cutouts[i].corners[j].point, place);
            if (away > nearest) continue;
            nearest = away;
            best = NearCorner{i, j};
        }
    }
    return best;
}

std::optional<std::size_t> holeNear(const Project& project, Point place, double reach) {
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) {
        const ClampHole& hole = project.clampHoles[i];
        const Point mouth = markPlace(project.panel, {hole.edge, hole.at});
        const double along = dot(place - mouth, edgeHeading(hole.edge));
        const double in = distanceFromEdge(project.panel, hole.edge, place);
        if (std::abs(along) <= hole.diameter / 2 + reach && in >= -reach && in <= hole.depth + reach) return i;
    }
    return std::nullopt;
}

}  // namespace kerfwall

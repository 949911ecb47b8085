// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/wanted_outline.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/distance.h"

namespace kerfwall {
namespace {

struct Round {
    Point start;
    Point end;
    Point centre;
    double radius = 0;  // 0: the corner stays sharp
};

// `room`: how much of the shorter side the arc may take up.
Round roundOf(Point before, Point corner, Point after, double radius, double room) {
    const Point in = corner - before;
    const Point out = after - corner;
    const double turn = std::atan2(cross(in, out), dot(in, out));  // 180 degrees less the corner's angle
    if (radius <= 0 || turn <= 0) {
        return {corner, corner, corner, 0};
    }
    const double growth = std::tan(turn / 2);  // set-back for each mm of radius
    const double fits = std::min(radius, room / growth);
    const double back = fits * growth;
    const Point start = corner - back * unit(in);
    return {start, corner + back * unit(out), start + fits * leftOf(unit(in)), fits};
}

}  // namespace

std::vector<Point> anticlockwise(std::vector<Point> polygon) {
    polygon.erase(std::unique(polygon.begin(), polygon.end()), polygon.end());
    while (polygon.size() > 1 && polygon.front() == polygon.back()) {
        polygon.pop_back();
    }
    double doubled = 0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        doubled += cross(polygon[i], polygon[(i + 1) % polygon.size()]);
    }
    if (doubled < 0) {
        std::reverse(polygon.begin(), polygon.end());
    }
    return polygon;
}

OutlineLoop roundedLoop(const std::vector<Point>& polygon, std::span<const double> radii) {
    const std::size_t n = polygon.size();
    std::vector<Round> rounds;
    for (std::size_t i = 0; i < n; ++i) {
        const std::size_t before = (i + n - 1) % n;
        const std::size_t after = (i + 1) % n;
        const double in = distance(polygon[before], polygon[i]) / (radii[before] > 0 ? 2 : 1);
        const double out = distance(polygon[i], polygon[after]) / (radii[after] > 0 ? 2 : 1);
        rounds.push_back(roundOf(polygon[before], polygon[i], polygon[after], radii[i], std::min(in, out)));
    }
    OutlineLoop loop;
    for (std::size_t i = 0; i < n; ++i) {
        const Round& here = rounds[i];
        const Round& next = rounds[(i + 1) % n];
        if (here.radius > 0) {
            OutlinePiece arc;
            arc.isArc = true;
            arc.from = here.start;
            arc.to = here.end;
            arc.centre = here.centre;
            arc.radius = here.radius;
            arc.turn = Turn::Left;
            loop.push_back(arc);
        }
        if (here.end != next.start) {
            loop.push_back(straight(here.end, next.start));
        }
    }
    return loop;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/clip.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace kerfwall {
namespace {

constexpr double kShortestRun = 1e-3;  // mm; a line counts from here on
constexpr double kParallel = 1e-9;     // sine under which two lines have no crossing worth a mark

}  // namespace

std::optional<std::pair<Point, Point>> clipToPanel(const Panel& panel, Point place, Point heading) {
    const Point along = unit(heading);
    double low = -std::numeric_limits<double>::infinity();
    double high = -low;
    const auto within = [&](double start, double speed, double size) {
        if (speed == 0) return start >= 0 && start <= size;
        const double a = -start / speed, b = (size - start) / speed;
        low = std::max(low, std::min(a, b));
        high = std::min(high, std::max(a, b));
        return true;
    };
    if (!within(place.x, along.x, panel.width) || !within(place.y, along.y, panel.height)) return std::nullopt;
    if (!(high - low >= kShortestRun)) return std::nullopt;
    return std::pair{place + low * along, place + high * along};
}

std::optional<Point> crossingPlace(const SolvedLine& first, const SolvedLine& second) {
    const Point a = first.to - first.from, b = second.to - second.from;
    const double turn = cross(a, b);
    if (std::abs(turn) <= kParallel * length(a) * length(b)) return std::nullopt;
    const double s = cross(second.from - first.from, b) / turn;
    const double t = cross(second.from - first.from, a) / turn;
    if (s < 0 || s > 1 || t < 0 || t > 1) return std::nullopt;
    return first.from + s * a;
}

std::vector<Point> leftPart(const std::vector<Point>& polygon, Point from, Point to) {
    const Point along = unit(to - from);
    std::vector<Point> part;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point here = polygon[i], next = polygon[(i + 1) % polygon.size()];
        const double a = cross(along, here - from), b = cross(along, next - from);
        if (a >= 0) part.push_back(here);
        if ((a > 0 && b < 0) || (a < 0 && b > 0)) part.push_back(here + (a / (a - b)) * (next - here));
    }
    return part.size() < 3 ? std::vector<Point>{} : part;
}

double polygonArea(const std::vector<Point>& polygon) {
    double twice = 0;
    for (std::size_t i = 0; i < polygon.size(); ++i) twice += cross(polygon[i], polygon[(i + 1) % polygon.size()]);
    return twice / 2;
}

Box boundsOf(const std::vector<Point>& places) {
    const auto [left, right] = std::ranges::minmax(places, {}, &Point::x);
    const auto [low, high] = std::ranges::minmax(places, {}, &Point::y);
    return {{left.x, low.y}, {right.x, high.y}};
}

Point polygonCentre(const std::vector<Point>& polygon) {
    Point sum;
    double twice = 0;
    const Point origin = polygon.front();  // near the polygon: nothing cancels
    for (std::size_t i = 1; i + 1 < polygon.size(); ++i) {
        const Point a = polygon[i] - origin, b = polygon[i + 1] - origin;
        const double weight = cross(a, b);
        sum = sum + weight * (a + b);
        twice += weight;
    }
    return origin + (1.0 / (3 * twice)) * sum;
}

}  // namespace kerfwall

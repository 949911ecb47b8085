// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/svg_curves.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>

#include "core/says/svg_path.h"

namespace kerfwall {
namespace {

using std::numbers::pi;

std::vector<Point> evenCorners(double parts, Point to, const std::function<Point(double)>& at) {
    const auto count = static_cast<std::size_t>(std::clamp(std::ceil(parts), 1.0, static_cast<double>(kMostSvgCorners) + 1));
    std::vector<Point> corners;
    corners.reserve(count);
    for (std::size_t i = 1; i < count; ++i) corners.push_back(at(static_cast<double>(i) / static_cast<double>(count)));
    corners.push_back(to);
    return corners;
}

double partsFor(double secondDerivative, double tolerance) { return std::sqrt(secondDerivative / (8 * tolerance)); }

double bend(Point a, Point b, Point c) { return std::hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y); }

Point mixed(Point a, Point b, double t) { return {a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)}; }

double angleBetween(Point u, Point v) { return std::atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y); }

}  // namespace

std::vector<Point> cubicCorners(Point from, Point first, Point second, Point to, double tolerance) {
    const double most = 6 * std::max(bend(from, first, second), bend(first, second, to));
    return evenCorners(partsFor(most, tolerance), to, [=](double t) {
        const Point a = mixed(from, first, t);
        const Point b = mixed(first, second, t);
        const Point c = mixed(second, to, t);
        return mixed(mixed(a, b, t), mixed(b, c, t), t);
    });
}

std::vector<Point> quadraticCorners(Point from, Point middle, Point to, double tolerance) {
    return evenCorners(partsFor(2 * bend(from, middle, to), tolerance), to,
                       [=](double t) { return mixed(mixed(from, middle, t), mixed(middle, to, t), t); });
}

std::vector<Point> arcCorners(const SvgArc& arc, double tolerance) {
    double rx = std::abs(arc.radiusX);
    double ry = std::abs(arc.radiusY);
    if (rx == 0 || ry == 0 || arc.from == arc.to) return {arc.to};
    const double cosTurn = std::cos(arc.turn * pi / 180);
    const double sinTurn = std::sin(arc.turn * pi / 180);
    // In the ellipse's own axes, about the middle of the chord.
    const double dx = (arc.from.x - arc.to.x) / 2;
    const double dy = (arc.from.y - arc.to.y) / 2;
    const Point half{cosTurn * dx + sinTurn * dy, -sinTurn * dx + cosTurn * dy};
    const double over = std::hypot(half.x / rx, half.y / ry);
    if (over > 1) {
        rx *= over;
        ry *= over;
    }
    const double share = std::pow(half.x / rx, 2) + std::pow(half.y / ry, 2);
    const double side = (arc.isLarge == arc.isSweep ? -1 : 1) * std::sqrt(std::max(0.0, 1 / share - 1));
    const Point own{side * rx * half.y / ry, -side * ry * half.x / rx};
    const Point centre{cosTurn * own.x - sinTurn * own.y + (arc.from.x + arc.to.x) / 2,
                       sinTurn * own.x + cosTurn * own.y + (arc.from.y + arc.to.y) / 2};
    const Point start{(half.x - own.x) / rx, (half.y - own.y) / ry};
    const Point end{(-half.x - own.x) / rx, (-half.y - own.y) / ry};
    const double first = std::atan2(start.y, start.x);
    double sweep = angleBetween(start, end);
    if (!arc.isSweep && sweep > 0) sweep -= 2 * pi;
    if (arc.isSweep && sweep < 0) sweep += 2 * pi;
    const double step = 2 * std::acos(std::max(0.0, 1 - tolerance / std::max(rx, ry)));
    const double parts = step > 0 ? std::abs(sweep) / step : static_cast<double>(kMostSvgCorners) + 1;
    return evenCorners(parts, arc.to, [=](double t) {
        const double x = rx * std::cos(first + t * sweep);
        const double y = ry * std::sin(first + t * sweep);
        return Point{cosTurn * x - sinTurn * y + centre.x, sinTurn * x + cosTurn * y + centre.y};
    });
}

}  // namespace kerfwall

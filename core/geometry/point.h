// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>

namespace kerfwall {

/// A place in the panel frame, or a difference of two places. Millimetres, x to the right, y up,
/// seen from the layout face; origin at the panel's bottom-left corner.
struct Point {
    double x = 0;
    double y = 0;
    bool operator==(const Point&) const = default;
};

[[nodiscard]] inline Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
[[nodiscard]] inline Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
[[nodiscard]] inline Point operator*(double k, Point a) { return {k * a.x, k * a.y}; }
[[nodiscard]] inline double dot(Point a, Point b) { return a.x * b.x + a.y * b.y; }
/// Twice the signed area of the triangle 0, a, b: positive where b lies to the left of a.
[[nodiscard]] inline double cross(Point a, Point b) { return a.x * b.y - a.y * b.x; }
[[nodiscard]] inline double length(Point a) { return std::sqrt(dot(a, a)); }
[[nodiscard]] inline double distance(Point a, Point b) { return length(b - a); }
/// `a` turned a quarter anticlockwise: it points to the left of `a`.
[[nodiscard]] inline Point leftOf(Point a) { return {-a.y, a.x}; }
/// Requires  a is not the zero vector. (asserted by the caller)
[[nodiscard]] inline Point unit(Point a) { return (1.0 / length(a)) * a; }

/// Axis-parallel bounds.
struct Box {
    Point low;
    Point high;
    bool operator==(const Box&) const = default;
};

}  // namespace kerfwall

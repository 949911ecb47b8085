// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/point.h"

namespace kerfwall {

// Curves of an SVG path as sides: the corners after `from`, on the curve, the last at its end. No side leaves the curve by
// more than `tolerance`, > 0. More than kMostSvgCorners are not given: then the list ends early, one longer than that.

/// Source    a side of a curve cut in n even parts leaves it by at most (largest second derivative) / (8 n²).
[[nodiscard]] std::vector<Point> cubicCorners(Point from, Point first, Point second, Point to, double tolerance);
[[nodiscard]] std::vector<Point> quadraticCorners(Point from, Point middle, Point to, double tolerance);

/// An elliptical arc as SVG tells it.
struct SvgArc {
    Point from;
    double radiusX = 0;
    double radiusY = 0;
    double turn = 0;  ///< of the ellipse's first axis, degrees
    bool isLarge = false;
    bool isSweep = false;
    Point to;
};
/// Source    W3C SVG 2, B.2.4 and B.2.5; a side of a circle of radius r over an angle a leaves it by r (1 - cos(a / 2)).
[[nodiscard]] std::vector<Point> arcCorners(const SvgArc& arc, double tolerance);

}  // namespace kerfwall

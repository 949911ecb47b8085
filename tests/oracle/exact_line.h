// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <boost/multiprecision/gmp.hpp>
#include <optional>
#include <utility>
#include <vector>

#include "core/geometry/point.h"
#include "core/says/project.h"

namespace kerfwall::oracle {

using Exact =
    boost::multiprecision::number<boost::multiprecision::gmp_rational, boost::multiprecision::et_off>;

struct ExactPoint {
    Exact x;
    Exact y;
    bool operator==(const ExactPoint&) const = default;
    bool operator<(const ExactPoint& o) const { return x != o.x ? x < o.x : y < o.y; }
};
[[nodiscard]] inline ExactPoint operator-(const ExactPoint& a, const ExactPoint& b) {
    return {a.x - b.x, a.y - b.y};
}
[[nodiscard]] inline Exact dotOf(const ExactPoint& a, const ExactPoint& b) { return a.x * b.x + a.y * b.y; }
[[nodiscard]] inline Exact crossOf(const ExactPoint& a, const ExactPoint& b) { return a.x * b.y - a.y * b.x; }
[[nodiscard]] inline ExactPoint between(const ExactPoint& a, const ExactPoint& b, const Exact& t) {
    return {a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)};
}
[[nodiscard]] inline Point rounded(const ExactPoint& p) {
    return {static_cast<double>(p.x), static_cast<double>(p.y)};
}

/// An endless directed line through p along d.
struct ExactLine {
    ExactPoint p;
    ExactPoint d;
};
[[nodiscard]] inline ExactLine reversed(const ExactLine& line) { return {line.p, {-line.d.x, -line.d.y}}; }
/// Positive on the left of the line; grows with the distance from it.
[[nodiscard]] inline Exact offsetOf(const ExactLine& line, const ExactPoint& at) {
    return crossOf(line.d, at - line.p);
}

/// The shortest decimal that reads back as `value`, as a fraction.
[[nodiscard]] Exact exactNumber(double value);
[[nodiscard]] ExactPoint exactPoint(Point p);

/// Bottom, right, top, left; each starts in its start corner.
[[nodiscard]] std::array<ExactLine, 4> panelEdges(const Panel& panel);

/// Every line of the project; none where one refers to itself or is of a kind `plainLayout` excludes.
[[nodiscard]] std::optional<std::vector<ExactLine>> exactLines(const Project& project);

/// Where the line enters and leaves the panel; none where it has no length inside.
[[nodiscard]] std::optional<std::pair<ExactPoint, ExactPoint>> onPanel(const ExactLine& line,
                                                                       const std::array<ExactLine, 4>& edges);

}  // namespace kerfwall::oracle

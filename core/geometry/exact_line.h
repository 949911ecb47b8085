// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Private to the units that decide exactly: the only header that includes CGAL.
#include <CGAL/Exact_predicates_exact_constructions_kernel.h>

#include <array>
#include <optional>
#include <utility>
#include <vector>

#include "core/geometry/point.h"
#include "core/says/layout_line.h"
#include "core/says/panel.h"

namespace kerfwall {

using Kernel = CGAL::Exact_predicates_exact_constructions_kernel;
using Number = Kernel::FT;

/// The shortest decimal that reads back as `value`, taken exactly.
[[nodiscard]] Number exactly(double value);
/// The number rounded once to double.
[[nodiscard]] double rounded(const Number& value);

struct ExactPoint {
    Number x;
    Number y;
};

[[nodiscard]] inline Point rounded(const ExactPoint& p) { return {rounded(p.x), rounded(p.y)}; }
[[nodiscard]] inline ExactPoint exactly(Point p) { return {exactly(p.x), exactly(p.y)}; }

/// An endless directed line through `p` along (dx, dy); left of it dx y - dy x + c > 0.
struct ExactLine {
    ExactPoint p;
    Number dx;
    Number dy;
    Number c;

    ExactLine() = default;
    ExactLine(ExactPoint through, Number alongX, Number alongY)
        : p(std::move(through)), dx(std::move(alongX)), dy(std::move(alongY)), c(dy * p.x - dx * p.y) {}

    [[nodiscard]] CGAL::Sign sideOf(const ExactPoint& q) const {
        if (const auto sure = sideFromBounds(q)) return *sure;
        return CGAL::sign(dx * q.y - dy * q.x + c);
    }
    [[nodiscard]] Point direction() const { return unit({CGAL::to_double(dx), CGAL::to_double(dy)}); }

  private:
    /// The side where bounds of the numbers already tell it: spares the exact number's making.
    [[nodiscard]] std::optional<CGAL::Sign> sideFromBounds(const ExactPoint& q) const;
};

/// Positive where b turns to the left of a, zero where they are parallel.
[[nodiscard]] inline CGAL::Sign turnBetween(const ExactLine& a, const ExactLine& b) {
    return CGAL::sign(a.dx * b.dy - a.dy * b.dx);
}

/// Requires  the lines are not parallel.
[[nodiscard]] ExactPoint crossingOf(const ExactLine& a, const ExactLine& b);

/// The panel's four edges as directed lines, the panel on their left, in the order of kEdges.
struct ExactPanel {
    Number width;
    Number height;
    std::array<ExactLine, 4> edges;

    explicit ExactPanel(const Panel& panel) : width(exactly(panel.width)), height(exactly(panel.height)) {
        edges = {ExactLine({0, 0}, 1, 0), ExactLine({width, 0}, 0, 1), ExactLine({width, height}, -1, 0),
                 ExactLine({0, height}, 0, -1)};
    }
    [[nodiscard]] const ExactLine& edge(Edge e) const { return edges[static_cast<std::size_t>(e)]; }
    [[nodiscard]] ExactPoint place(const EdgeMark& mark) const {
        const ExactLine& e = edge(mark.edge);
        const Number at = exactly(mark.at);
        return {e.p.x + at * e.dx, e.p.y + at * e.dy};
    }
};

/// Where an endless line enters and leaves the panel.
struct Chord {
    ExactPoint from;
    ExactPoint to;
};

/// None where the line has no length inside the panel (its edges are not inside).
[[nodiscard]] std::optional<Chord> chordOf(const ExactLine& line, const ExactPanel& panel);

/// The marks of a place on the panel's border: one on each edge it lies on.
[[nodiscard]] std::vector<EdgeMark> marksAt(const ExactPoint& place, const ExactPanel& panel);

}  // namespace kerfwall

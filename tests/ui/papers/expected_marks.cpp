// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/papers/expected_marks.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace kerfwall {
namespace {

constexpr double kFar = std::numeric_limits<double>::infinity();

Point alongOf(const SolvedLine& line) { return (1 / distance(line.from, line.to)) * (line.to - line.from); }

Point acrossOf(const SolvedLine& line, const Kerf& kerf) {
    const Point along = alongOf(line);
    const Point left{-along.y, along.x};
    return kerf.side == Side::Left ? left : Point{-left.x, -left.y};
}

/// The part on the panel of the line through `start` between low and high along it: between where it crosses the panel's sides.
void addClipped(ExpectedMarks& marks, const Panel& panel, Point start, Point along, double low, double high) {
    const auto clip = [&](double at, double step, double size) {
        if (std::abs(step) < 1e-12) {
            if (at < 0 || at > size) high = low;
            return;
        }
        const auto [in, out] = std::minmax({-at / step, (size - at) / step});
        low = std::max(low, in);
        high = std::min(high, out);
    };
    clip(start.x, along.x, panel.width);
    clip(start.y, along.y, panel.height);
    if (high - low > 1e-6) marks.lines.emplace_back(start + low * along, start + high * along);
}

/// The shallow end of a stopped kerf: a band of the kerf's width, at the panel's edge as far as the panel goes.
void addRunOut(ExpectedMarks& marks, const Panel& panel, const SolvedLine& line, const Kerf& kerf, double from, double to) {
    if (!(to > from)) return;
    const Point along = alongOf(line);
    const Point across = acrossOf(line, kerf);
    const double low = from <= 0 ? -kFar : from;
    const double high = to >= distance(line.from, line.to) ? kFar : to;
    for (const double away : {0.0, kerf.width}) addClipped(marks, panel, line.from + away * across, along, low, high);
    for (const double end : {low, high}) {
        if (std::isfinite(end)) addClipped(marks, panel, line.from + end * along, across, 0, kerf.width);
    }
}

void addKerfs(ExpectedMarks& marks, const Panel& panel, const SolvedLine& line) {
    for (const Kerf& kerf : line.kerfs) {
        const double whole = distance(line.from, line.to);
        addClipped(marks, panel, line.from + kerf.width * acrossOf(line, kerf), alongOf(line), kerf.fullFrom <= 0 ? -kFar : kerf.fullFrom,
                   kerf.fullTo >= whole ? kFar : kerf.fullTo);
        if (!kerf.stopped) continue;
        addRunOut(marks, panel, line, kerf, kerf.surfaceFrom, kerf.fullFrom);
        addRunOut(marks, panel, line, kerf, kerf.fullTo, kerf.surfaceTo);
    }
}

void addOutline(ExpectedMarks& marks, const Outline& outline) {
    for (const OutlineLoop& loop : outline.loops) {
        for (const OutlinePiece& piece : loop) {
            if (piece.isArc) {
                marks.arcs.push_back(piece);
            } else {
                marks.lines.emplace_back(piece.from, piece.to);
            }
        }
    }
}

/// A bore touches both walls: its centre stands over the tangent points, as far from the corner as r over the sine of half the
/// angle.
void addHoles(ExpectedMarks& marks, const Corner& corner) {
    if (corner.drill) marks.circles.push_back({corner.drill->centre, corner.drill->diameter / 2});
    if (corner.regime != Regime::Bored) return;
    const Point towards = 0.5 * (corner.firstTangent + corner.secondTangent) - corner.point;
    const double reach = *corner.boreRadius / std::sin(corner.angle * std::acos(-1.0) / 360);
    marks.circles.push_back({corner.point + (reach / distance(towards, {0, 0})) * towards, *corner.boreRadius});
}

/// Three hidden lines: both sides from the edge and the hole's ground.
void addClampHole(ExpectedMarks& marks, const Panel& panel, const ClampHole& hole) {
    const double r = hole.diameter / 2;
    const auto place = [&](double at, double deep) {
        switch (hole.edge) {
            case Edge::Bottom: return Point{at, deep};
            case Edge::Right: return Point{panel.width - deep, at};
            case Edge::Top: return Point{panel.width - at, panel.height - deep};
            case Edge::Left: return Point{deep, panel.height - at};
        }
        return Point{};
    };
    marks.lines.emplace_back(place(hole.at - r, 0), place(hole.at - r, hole.depth));
    marks.lines.emplace_back(place(hole.at - r, hole.depth), place(hole.at + r, hole.depth));
    marks.lines.emplace_back(place(hole.at + r, hole.depth), place(hole.at + r, 0));
}

}  // namespace

ExpectedMarks expectedMarks(const Project& project, const Solved& solved) {
    ExpectedMarks marks;
    const Panel& panel = project.panel;
    const double w = panel.width;
    const double h = panel.height;
    marks.lines = {{{0, 0}, {w, 0}}, {{w, 0}, {w, h}}, {{w, h}, {0, h}}, {{0, h}, {0, 0}}};
    for (const SolvedLine& line : solved.lines) {
        marks.lines.emplace_back(line.from, line.to);
        addKerfs(marks, panel, line);
    }
    for (const SolvedCutout& cutout : solved.cutouts) {
        addOutline(marks, cutout.opening);
        addOutline(marks, cutout.work);
        for (const Corner& corner : cutout.corners) addHoles(marks, corner);
    }
    for (const ClampHole& hole : project.clampHoles) addClampHole(marks, panel, hole);
    return marks;
}

}  // namespace kerfwall

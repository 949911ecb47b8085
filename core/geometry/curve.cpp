// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/curve.h"

#include <algorithm>
#include <array>
#include <numbers>

#include "core/geometry/angle.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

Point onCircle(Point centre, double radius, double angle) {
    return {centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)};
}

/// The parameter of an arc at which it looks in direction `out` from its centre; may lie past its end.
double parameterOf(const Curve& arc, Point out) {
    const Point start = arc.from - arc.centre;
    const double side = arc.anticlockwise ? cross(start, out) : -cross(start, out);
    const double swept = std::atan2(side, dot(start, out));
    return swept < 0 ? swept + kTurn : swept;
}

/// True where the arc looks in direction `out` from its centre.
bool looks(const Curve& arc, Point out) {
    constexpr double kHalfTurn = std::numbers::pi;
    if (arc.size > kHalfTurn) return parameterOf(arc, out) <= arc.size;
    const double sign = arc.anticlockwise ? 1 : -1;
    return sign * cross(arc.from - arc.centre, out) >= 0 && sign * cross(out, arc.to - arc.centre) >= 0;
}

Point turned(Point p, double angle) {
    const double c = std::cos(angle);
    const double s = std::sin(angle);
    return {c * p.x - s * p.y, s * p.x + c * p.y};
}

}  // namespace

void takeOut(Spans& spans, double from, double to) {
    if (!(from < to)) return;
    Spans left;
    for (const auto& [a, b] : spans) {
        if (b <= from || a >= to) {
            left.emplace_back(a, b);
            continue;
        }
        if (a < from) left.emplace_back(a, from);
        if (b > to) left.emplace_back(to, b);
    }
    spans = std::move(left);
}

void addSpan(Spans& spans, double from, double to) {
    if (!(from < to)) return;
    Spans joined;
    for (const auto& [a, b] : spans) {
        if (b < from || a > to) {
            joined.emplace_back(a, b);
        } else {
            from = std::min(from, a);
            to = std::max(to, b);
        }
    }
    joined.emplace_back(from, to);
    std::ranges::sort(joined);
    spans = std::move(joined);
}

Spans without(Spans spans, const Spans& without) {
    for (const auto& [a, b] : without) takeOut(spans, a, b);
    return spans;
}

Point Curve::at(double t) const {
    if (t <= 0) return from;
    if (t >= size) return to;
    if (!isArc) return from + (t / size) * (to - from);
    return centre + turned(from - centre, anticlockwise ? t : -t);
}

Point Curve::tangentAt(double t) const {
    if (!isArc) return unit(to - from);
    const Point out = t <= 0 ? from - centre : t >= size ? to - centre : turned(from - centre, anticlockwise ? t : -t);
    return (anticlockwise ? 1 / radius : -1 / radius) * leftOf(out);
}

Curve Curve::part(double a, double b) const {
    Curve piece = *this;
    piece.from = at(a);
    piece.to = at(b);
    piece.size = b - a;
    return piece;
}

Curve Curve::reversed() const {
    Curve other = *this;
    std::swap(other.from, other.to);
    other.anticlockwise = !anticlockwise;
    return other;
}

Box Curve::bounds() const {
    Box box{{std::min(from.x, to.x), std::min(from.y, to.y)}, {std::max(from.x, to.x), std::max(from.y, to.y)}};
    if (!isArc) return box;
    for (int quarter = 0; quarter < 4; ++quarter) {
        constexpr std::array<Point, 4> kQuarters{{{1, 0}, {0, 1}, {-1, 0}, {0, -1}}};
        const Point out = kQuarters[static_cast<std::size_t>(quarter)];
        if (!looks(*this, out)) continue;
        const Point p = centre + radius * out;
        box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
        box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
    }
    return box;
}

Curve straight(Point from, Point to, std::size_t tag) {
    Curve curve;
    curve.from = from;
    curve.to = to;
    curve.size = distance(from, to);
    curve.tag = tag;
    return curve;
}

Curve arc(Point centre, double radius, double startAngle, double size, bool anticlockwise, std::size_t tag) {
    Curve curve;
    curve.isArc = true;
    curve.centre = centre;
    curve.radius = radius;
    curve.anticlockwise = anticlockwise;
    curve.size = size;
    curve.from = onCircle(centre, radius, startAngle);
    curve.to = onCircle(centre, radius, startAngle + (anticlockwise ? size : -size));
    curve.tag = tag;
    return curve;
}

Curve arcThrough(Point centre, double radius, Point from, Point to, bool anticlockwise, std::size_t tag) {
    Curve curve;
    curve.isArc = true;
    curve.centre = centre;
    curve.radius = radius;
    curve.anticlockwise = anticlockwise;
    curve.from = from;
    curve.to = to;
    curve.tag = tag;
    // Ends that meet are no arc at all: rounding must not make a whole turn of it.
    curve.size = distance(from, to) < 10 * kBite ? 0 : parameterOf(curve, to - centre);
    return curve;
}

double distanceTo(const Curve& curve, Point place) {
    if (curve.isArc) {
        const Point out = place - curve.centre;
        if (looks(curve, out)) return std::abs(length(out) - curve.radius);
        return std::min(distance(place, curve.from), distance(place, curve.to));
    }
    const Point along = curve.to - curve.from;
    const double square = dot(along, along);
    const double t = square > 0 ? std::clamp(dot(place - curve.from, along) / square, 0.0, 1.0) : 0.0;
    if (t > 0 && t < 1) return std::abs(cross(along, place - curve.from)) / std::sqrt(square);
    return distance(place, t > 0 ? curve.to : curve.from);
}

void meetLine(const Curve& curve, Point origin, Point direction, std::vector<double>& found) {
    const auto add = [&](double t) {
        if (t > 0 && t < curve.size) found.push_back(t);
    };
    if (!curve.isArc) {
        const Point along = (1.0 / curve.size) * (curve.to - curve.from);
        const double turn = cross(direction, along);
        if (turn != 0) add(-cross(direction, curve.from - origin) / turn);
        return;
    }
    const double off = cross(direction, curve.centre - origin);
    const double square = (curve.radius - off) * (curve.radius + off);
    if (square < 0) return;
    const double half = std::sqrt(square);
    const Point foot = -off * leftOf(direction);
    add(parameterOf(curve, foot + half * direction));
    add(parameterOf(curve, foot - half * direction));
}

void meetCircle(const Curve& curve, Point centre, double radius, std::vector<double>& found) {
    const auto add = [&](double t) {
        if (t > 0 && t < curve.size) found.push_back(t);
    };
    if (!curve.isArc) {
        const Point along = (1.0 / curve.size) * (curve.to - curve.from);
        const double off = cross(along, centre - curve.from);
        const double square = (radius - off) * (radius + off);
        if (square < 0) return;
        const double foot = dot(along, centre - curve.from);
        const double half = std::sqrt(square);
        add(foot - half);
        add(foot + half);
        return;
    }
    const Point towards = centre - curve.centre;
    const double gap = length(towards);
    const double r = curve.radius;
    const double product = (r + radius - gap) * (r - radius + gap) * (radius - r + gap) * (r + radius + gap);
    if (gap == 0 || product < 0) return;
    // Triangle with sides r, gap, radius: its foot along the centres and its height, both times 2 gap.
    const double foot = (r - radius) * (r + radius) + gap * gap;
    const double height = std::sqrt(product);
    add(parameterOf(curve, foot * towards + height * leftOf(towards)));
    add(parameterOf(curve, foot * towards - height * leftOf(towards)));
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/exact_line.h"

#include <charconv>
#include <cmath>
#include <string>

namespace kerfwall {
namespace {

/// A number known to lie within `off` of `middle`.
struct Bounded {
    double middle;
    double off;
};

Bounded bounded(const Number& number) {
    const auto [low, high] = CGAL::to_interval(number);
    constexpr double kRounding = 1e-15;
    return {(low + high) / 2, (high - low) / 2 + kRounding * std::max(std::abs(low), std::abs(high))};
}

Bounded product(const Number& a, const Number& b) {
    const Bounded x = bounded(a);
    const Bounded y = bounded(b);
    constexpr double kRounding = 1e-15;
    const double value = x.middle * y.middle;
    return {value, std::abs(x.middle) * y.off + std::abs(y.middle) * x.off + x.off * y.off + kRounding * std::abs(value)};
}

}  // namespace

Number exactly(double value) {
    std::array<char, 40> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::scientific).ptr;
    std::string digits;
    int exponent = 0;
    int decimals = 0;
    bool afterPoint = false;
    for (const char* at = text.data(); at != end; ++at) {
        if (*at == 'e') {
            std::from_chars(at[1] == '+' ? at + 2 : at + 1, end, exponent);
            break;
        }
        if (*at == '.') {
            afterPoint = true;
            continue;
        }
        digits += *at;
        decimals += afterPoint ? 1 : 0;
    }
    const int power = exponent - decimals;
    const std::string zeros(static_cast<std::size_t>(std::abs(power)), '0');
    return Number(Number::ET(power >= 0 ? digits + zeros + "/1" : digits + "/1" + zeros));
}

double rounded(const Number& value) { return CGAL::to_double(value.exact()); }

std::optional<CGAL::Sign> ExactLine::sideFromBounds(const ExactPoint& q) const {
    const Bounded across = product(dx, q.y);
    const Bounded along = product(dy, q.x);
    const Bounded offset = bounded(c);
    const double value = across.middle - along.middle + offset.middle;
    constexpr double kRounding = 1e-15;  // more than the rounding of two sums
    const double off = across.off + along.off + offset.off +
                       kRounding * (std::abs(across.middle) + std::abs(along.middle) + std::abs(offset.middle));
    if (value > off) return CGAL::POSITIVE;
    if (value < -off) return CGAL::NEGATIVE;
    return std::nullopt;
}

ExactPoint crossingOf(const ExactLine& a, const ExactLine& b) {
    const Number det = a.dx * b.dy - a.dy * b.dx;
    return {(a.dx * b.c - b.dx * a.c) / det, (a.dy * b.c - b.dy * a.c) / det};
}

std::optional<Chord> chordOf(const ExactLine& line, const ExactPanel& panel) {
    std::optional<ExactPoint> enters;
    std::optional<ExactPoint> leaves;
    // Along the line the left side of an edge is entered or left where they cross; keep the last
    // entry and the first exit.
    const auto param = [&](const ExactPoint& q) { return line.dx * q.x + line.dy * q.y; };
    for (const ExactLine& edge : panel.edges) {
        const CGAL::Sign turn = turnBetween(edge, line);
        if (turn == CGAL::ZERO) {
            if (edge.sideOf(line.p) != CGAL::POSITIVE) return std::nullopt;
            continue;
        }
        ExactPoint at = crossingOf(line, edge);
        if (turn == CGAL::POSITIVE) {
            if (!enters || param(at) > param(*enters)) enters = std::move(at);
        } else if (!leaves || param(at) < param(*leaves)) {
            leaves = std::move(at);
        }
    }
    if (!enters || !leaves || param(*enters) >= param(*leaves)) return std::nullopt;
    return Chord{*enters, *leaves};
}

std::vector<EdgeMark> marksAt(const ExactPoint& place, const ExactPanel& panel) {
    std::vector<EdgeMark> marks;
    for (const Edge e : kEdges) {
        const ExactLine& edge = panel.edge(e);
        if (edge.sideOf(place) != CGAL::ZERO) continue;
        marks.push_back({e, rounded((place.x - edge.p.x) * edge.dx + (place.y - edge.p.y) * edge.dy)});
    }
    return marks;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/facing_sizes.h"

#include <algorithm>
#include <optional>

#include "core/geometry/angle.h"
#include "core/geometry/curve.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

constexpr double kMostSplay = 30;

/// Where along `first` (mm from its start) the wall `second` stands opposite.
std::optional<std::pair<double, double>> overlap(const Wall& first, const Wall& second) {
    const Point u = unit(first.to - first.from);
    double a = dot(second.from - first.from, u);
    double b = dot(second.to - first.from, u);
    if (a > b) std::swap(a, b);
    const double low = std::max(0.0, a);
    const double high = std::min(distance(first.from, first.to), b);
    if (high - low < kShortestWall) return std::nullopt;
    return std::pair{low, high};
}

/// From the place `at` mm along `first`, square to it, as far as the line of `second`.
double squareAcross(const Wall& first, const Wall& second, double at) {
    const Point u = unit(first.to - first.from);
    const Point v = second.to - second.from;
    const Point place = first.from + at * u;
    return cross(second.from - place, v) / cross(leftOf(u), v);
}

/// True where nothing of the border stands between two places of the cutout.
bool seeEachOther(const Outline& drawn, Point a, Point b) {
    constexpr double kInset = 1e-6;
    const Point inwards = kInset * unit(b - a);
    const Curve sight = straight(a + inwards, b - inwards);
    for (const OutlineLoop& loop : drawn.loops) {
        for (const OutlinePiece& piece : loop) {
            const Point along = piece.to - piece.from;
            const double from = cross(along, sight.from - piece.from);
            const double to = cross(along, sight.to - piece.from);
            const Point look = sight.to - sight.from;
            const double left = cross(look, piece.from - sight.from);
            const double right = cross(look, piece.to - sight.from);
            if (from * to < 0 && left * right < 0) return false;
        }
    }
    return isInside(drawn, 0.5 * (a + b));
}

std::optional<FacingSize> sizeBetween(const SolvedCutout& cutout, std::size_t i, std::size_t j) {
    const Wall& first = cutout.walls[i];
    const Wall& second = cutout.walls[j];
    const Point u = unit(first.to - first.from);
    const Point v = unit(second.to - second.from);
    // Walls that face run opposite ways round the cutout.
    const double splay = degrees(std::abs(std::atan2(cross(u, -1.0 * v), dot(u, -1.0 * v))));
    if (splay > kMostSplay + 1e-9) return std::nullopt;
    const auto where = overlap(first, second);
    if (!where) return std::nullopt;
    const double middle = (where->first + where->second) / 2;
    const double across = squareAcross(first, second, middle);
    if (across <= kShortestWall) return std::nullopt;
    const Point place = first.from + middle * u;
    if (!seeEachOther(cutout.drawn, place, place + across * leftOf(u))) return std::nullopt;
    FacingSize size{first.line, second.line, across, {}, i, j};
    constexpr double kParallel = 1e-9;
    if (splay > kParallel) {
        size.atEnds = {squareAcross(first, second, where->first), squareAcross(first, second, where->second)};
        size.distance = (size.atEnds->first + size.atEnds->second) / 2;
    }
    return size;
}

}  // namespace

std::vector<FacingSize> facingSizes(const SolvedCutout& cutout) {
    std::vector<FacingSize> sizes;
    for (std::size_t i = 0; i < cutout.walls.size(); ++i) {
        for (std::size_t j = i + 1; j < cutout.walls.size(); ++j) {
            if (auto size = sizeBetween(cutout, i, j)) sizes.push_back(std::move(*size));
        }
    }
    return sizes;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/hatch.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace kerfwall {
namespace {

constexpr double kMostLines = 5000;

/// How far a place lies to the left of the line.
double heightOver(Point place, Point origin, Point along) { return cross(along, place - origin); }

void crossStraight(const OutlinePiece& piece, Point origin, Point along, std::vector<double>& found) {
    const double a = heightOver(piece.from, origin, along);
    const double b = heightOver(piece.to, origin, along);
    // Half-open, so that a corner on the line counts once where the border crosses it.
    if ((a < 0) == (b < 0)) return;
    const double share = a / (a - b);
    found.push_back(dot(along, piece.from + share * (piece.to - piece.from) - origin));
}

bool isOnArc(const OutlinePiece& arc, Point place) {
    const Point start = arc.from - arc.centre;
    const Point here = place - arc.centre;
    double turned = std::atan2(cross(start, here), dot(start, here));
    if (arc.turn == Turn::Right) turned = -turned;
    if (turned < 0) turned += 2 * std::numbers::pi;
    return turned <= sweepOf(arc);
}

/// Parity is kept by the ends, not by the arc test: the ends say how often the arc must cross.
void crossArc(const OutlinePiece& arc, Point origin, Point along, std::vector<double>& found) {
    const double h = heightOver(arc.centre, origin, along);
    if (std::abs(h) >= arc.radius) return;
    const double half = std::sqrt(arc.radius * arc.radius - h * h);
    const double foot = dot(along, arc.centre - origin);
    std::vector<double> hits;
    for (const double t : {foot - half, foot + half}) {
        if (isOnArc(arc, origin + t * along)) hits.push_back(t);
    }
    const bool odd = (heightOver(arc.from, origin, along) < 0) != (heightOver(arc.to, origin, along) < 0);
    if (odd && hits.size() != 1) {
        const double a = dot(along, arc.from - origin);
        const double near = std::abs(a - (foot - half)) < std::abs(a - (foot + half)) ? foot - half : foot + half;
        hits = {near};
    }
    if (!odd && hits.size() == 1) hits.clear();
    found.insert(found.end(), hits.begin(), hits.end());
}

}  // namespace

std::vector<double> crossings(const std::vector<OutlineLoop>& loops, Point origin, Point along) {
    std::vector<double> found;
    for (const OutlineLoop& loop : loops) {
        for (const OutlinePiece& piece : loop) {
            if (piece.isArc) {
                crossArc(piece, origin, along, found);
            } else {
                crossStraight(piece, origin, along, found);
            }
        }
    }
    std::ranges::sort(found);
    return found;
}

std::vector<std::pair<Point, Point>> hatchOf(const std::vector<OutlineLoop>& loops, double spacing, double angle) {
    std::vector<std::pair<Point, Point>> hatch;
    if (!(spacing > 0)) return hatch;
    const double turn = angle * std::numbers::pi / 180;
    const Point along{std::cos(turn), std::sin(turn)};
    const Point across = leftOf(along);
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    for (const OutlineLoop& loop : loops) {
        for (const OutlinePiece& piece : loop) {
            const double at = piece.isArc ? dot(across, piece.centre) : dot(across, piece.from);
            const double reach = piece.isArc ? piece.radius : 0;
            low = std::min(low, at - reach);
            high = std::max(high, at + reach);
        }
    }
    if (!((high - low) / spacing < kMostLines)) return hatch;
    for (double n = std::ceil(low / spacing); n * spacing < high; ++n) {
        const Point origin = (n * spacing) * across;
        const std::vector<double> at = crossings(loops, origin, along);
        for (std::size_t i = 0; i + 1 < at.size(); i += 2) {
            hatch.emplace_back(origin + at[i] * along, origin + at[i + 1] * along);
        }
    }
    return hatch;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/hatch.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/geometry/angle.h"

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

/// The arc falls into stretches that only rise or only fall over the line; each is crossed as a straight
/// piece is.
void crossArc(const OutlinePiece& arc, Point origin, Point along, std::vector<double>& found) {
    constexpr double kQuarter = std::numbers::pi / 2;
    const double middle = heightOver(arc.centre, origin, along);
    const double half = std::sqrt(std::max(0.0, arc.radius * arc.radius - middle * middle));
    const double foot = dot(along, arc.centre - origin);
    const Point start = arc.from - arc.centre;
    const double turn = arc.turn == Turn::Left ? 1 : -1;
    const double first = std::atan2(cross(along, start), dot(along, start));
    const double last = first + turn * sweepOf(arc);
    double from = first;
    double fromHeight = heightOver(arc.from, origin, along);
    // Highest and lowest places lie at odd quarters from the line's direction.
    double quarter = 2 * (turn > 0 ? std::floor((first / kQuarter - 1) / 2) + 1
                                   : std::ceil((first / kQuarter - 1) / 2) - 1) +
                     1;
    while (true) {
        const bool ends = turn * (quarter * kQuarter - last) >= 0;
        const double to = ends ? last : quarter * kQuarter;
        const double toHeight =
            ends ? heightOver(arc.to, origin, along) : middle + arc.radius * std::sin(quarter * kQuarter);
        if ((fromHeight < 0) != (toHeight < 0)) {
            found.push_back(foot + (std::cos((from + to) / 2) > 0 ? half : -half));
        }
        if (ends) return;
        from = to;
        fromHeight = toHeight;
        quarter += 2 * turn;
    }
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

std::vector<std::pair<Point, Point>> hatchOf(const std::vector<OutlineLoop>& loops, double spacing,
                                             double angle, const std::optional<Box>& within) {
    std::vector<std::pair<Point, Point>> hatch;
    if (!(spacing > 0)) return hatch;
    const double turn = radians(angle);
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
    if (within) {
        const auto corners = {within->low, within->high, Point{within->low.x, within->high.y},
                              Point{within->high.x, within->low.y}};
        const auto over = [across](Point corner) { return dot(across, corner); };
        low = std::max(low, over(std::ranges::min(corners, {}, over)));
        high = std::min(high, over(std::ranges::max(corners, {}, over)));
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

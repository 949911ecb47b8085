// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/widest_disc.h"

#include <algorithm>
#include <array>
#include <functional>
#include <optional>
#include <queue>
#include <vector>

#include "core/geometry/curve.h"
#include "core/geometry/drawn_border.h"

namespace kerfwall {
namespace {

/// Distance to the border, negative outside.
double roomAt(const DrawnBorder& border, Point p) {
    const double off = border.distanceTo(p);
    return border.isInside(p) ? off : -off;
}

struct Cell {
    Point centre;
    double half = 0;
    double room = 0;
    [[nodiscard]] double most() const { return room + half * std::sqrt(2.0); }
    bool operator<(const Cell& other) const { return most() < other.most(); }
};

/// Places from which climbing can reach the widest disc: the best cells of a search that halves squares
/// until none can hold a disc more than `kCoarse` wider.
std::vector<Point> startingPlaces(const DrawnBorder& border, const Box& bounds) {
    constexpr double kCoarse = 0.02;
    constexpr std::size_t kMostCells = 4000;
    constexpr std::size_t kMostStarts = 6;
    constexpr double kMostInARow = 64;
    const Point size = bounds.high - bounds.low;
    const double side = std::max(std::min(size.x, size.y), std::max(size.x, size.y) / kMostInARow);
    std::priority_queue<Cell> open;
    std::vector<Cell> seen;
    const auto add = [&](Point centre, double half) {
        Cell cell{centre, half, roomAt(border, centre)};
        open.push(cell);
        seen.push_back(cell);
    };
    for (double x = bounds.low.x; x < bounds.high.x; x += side) {
        for (double y = bounds.low.y; y < bounds.high.y; y += side) add({x + side / 2, y + side / 2}, side / 2);
    }
    double best = 0;
    while (!open.empty() && seen.size() < kMostCells) {
        const Cell cell = open.top();
        open.pop();
        best = std::max(best, cell.room);
        if (cell.most() <= best * (1 + kCoarse)) break;
        const double h = cell.half / 2;
        for (const double dx : {-h, h}) {
            for (const double dy : {-h, h}) add({cell.centre.x + dx, cell.centre.y + dy}, h);
        }
    }
    std::ranges::sort(seen, [](const Cell& a, const Cell& b) { return a.room > b.room; });
    std::vector<Point> starts;
    for (const Cell& cell : seen) {
        const bool apart = std::ranges::all_of(starts, [&](Point p) { return distance(p, cell.centre) > best / 2; });
        if (apart) starts.push_back(cell.centre);
        if (starts.size() == kMostStarts) break;
    }
    return starts;
}

/// The middle of the way from a side's middle straight across to the next wall: inside however thin a sliver is.
std::vector<Point> middlesAcross(const Outline& drawn) {
    std::vector<Curve> sides;
    for (const OutlineLoop& loop : drawn.loops) {
        for (const OutlinePiece& piece : loop) sides.push_back(straight(piece.from, piece.to));
    }
    std::ranges::sort(sides, std::greater{}, &Curve::size);
    constexpr std::size_t kMostSides = 6;
    std::vector<Point> middles;
    std::vector<double> met;
    for (std::size_t i = 0; i < std::min(sides.size(), kMostSides); ++i) {
        if (sides[i].size <= 0) break;
        const Point foot = sides[i].at(sides[i].size / 2);
        const Point across = leftOf(sides[i].tangentAt(0));
        std::optional<double> nearest;
        for (std::size_t other = 0; other < sides.size(); ++other) {
            if (other == i || sides[other].size <= 0) continue;
            met.clear();
            meetLine(sides[other], foot, across, met);
            for (const double at : met) {
                const double far = dot(across, sides[other].at(at) - foot);
                if (far > 0 && (!nearest || far < *nearest)) nearest = far;
            }
        }
        if (nearest) middles.push_back(foot + (*nearest / 2) * across);
    }
    return middles;
}

/// a x + b y + c t = d.
struct Plane {
    double a, b, c, d;
};

std::optional<std::array<double, 3>> meet(const Plane& p, const Plane& q, const Plane& r) {
    const double det = p.a * (q.b * r.c - q.c * r.b) - p.b * (q.a * r.c - q.c * r.a) + p.c * (q.a * r.b - q.b * r.a);
    if (std::abs(det) < 1e-14) return std::nullopt;
    const double x = p.d * (q.b * r.c - q.c * r.b) - p.b * (q.d * r.c - q.c * r.d) + p.c * (q.d * r.b - q.b * r.d);
    const double y = p.a * (q.d * r.c - q.c * r.d) - p.d * (q.a * r.c - q.c * r.a) + p.c * (q.a * r.d - q.d * r.a);
    const double t = p.a * (q.b * r.d - q.d * r.b) - p.b * (q.a * r.d - q.d * r.a) + p.d * (q.a * r.b - q.b * r.a);
    return std::array{x / det, y / det, t / det};
}

/// The step of at most `trust` each way that gains the most room from the nearest sides, taken as straight.
Point bestStep(const DrawnBorder& border, Point place, double trust) {
    constexpr std::size_t kNearest = 8;
    std::vector<std::pair<double, Point>> sides;
    for (const DrawnBorder::Segment& side : border.segments()) {
        const Point away = side.awayTo(place);
        if (const double gap = length(away); gap > 0) sides.emplace_back(gap, (1.0 / gap) * away);
    }
    std::ranges::sort(sides, [](const auto& a, const auto& b) { return a.first < b.first; });
    if (sides.size() > kNearest) sides.resize(kNearest);
    // t <= gap + gradient . step, |step.x| <= trust, |step.y| <= trust; a corner of this with the largest t.
    std::vector<Plane> planes;
    for (const auto& [gap, g] : sides) planes.push_back({-g.x, -g.y, 1, gap});
    for (const double sign : {-1.0, 1.0}) {
        planes.push_back({sign, 0, 0, trust});
        planes.push_back({0, sign, 0, trust});
    }
    const double slack = 1e-12 + 1e-9 * trust;
    Point step;
    double most = -1e300;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        for (std::size_t j = i + 1; j < planes.size(); ++j) {
            for (std::size_t k = j + 1; k < planes.size(); ++k) {
                const auto corner = meet(planes[i], planes[j], planes[k]);
                if (!corner || (*corner)[2] <= most) continue;
                const bool allowed = std::ranges::all_of(planes, [&](const Plane& p) {
                    return p.a * (*corner)[0] + p.b * (*corner)[1] + p.c * (*corner)[2] <= p.d + slack;
                });
                if (!allowed) continue;
                most = (*corner)[2];
                step = {(*corner)[0], (*corner)[1]};
            }
        }
    }
    return step;
}

WidestDisc climb(const DrawnBorder& border, Point place) {
    double room = roomAt(border, place);
    double trust = std::max(room, 1e-3) / 2;
    constexpr int kMostSteps = 80;
    for (int i = 0; i < kMostSteps && trust > 1e-12; ++i) {
        const Point next = place + bestStep(border, place, trust);
        const double there = roomAt(border, next);
        if (there > room + 1e-13) {
            place = next;
            room = there;
        } else {
            trust /= 4;
        }
    }
    return {place, 2 * room};
}

}  // namespace

WidestDisc widestDisc(const Outline& drawn) {
    WidestDisc widest;
    if (drawn.loops.empty()) return widest;
    const DrawnBorder border(drawn);
    const auto climbFrom = [&](const std::vector<Point>& starts) {
        for (const Point start : starts) {
            const WidestDisc disc = climb(border, start);
            if (disc.diameter > widest.diameter) widest = disc;
        }
    };
    climbFrom(startingPlaces(border, drawn.bounds));
    if (widest.diameter <= 0) climbFrom(middlesAcross(drawn));
    return widest;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/outline_measure.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>

namespace kerfwall::oracle {
namespace {

constexpr int kLooks = 400;        // places looked at along one piece before narrowing
constexpr int kRoundLooks = 4000;  // ... and round the reach

constexpr Point kAside{1e-5, 0};   // mm
constexpr double kNoTurn = 1e-9;  // radians: an arc as short as this is a point, not a full turn

// The angle an arc turns through, in [0, 2 pi).
double turnOf(const OutlinePiece& arc) {
    const Point a = arc.from - arc.centre;
    const Point b = arc.to - arc.centre;
    const double left = std::atan2(cross(a, b), dot(a, b));
    const double turn = arc.turn == Turn::Left ? left : -left;
    return turn > -kNoTurn ? std::max(turn, 0.0) : turn + 2 * std::numbers::pi;
}

Point along(const OutlinePiece& piece, double t) {
    if (!piece.isArc) return piece.from + t * (piece.to - piece.from);
    const Point a = piece.from - piece.centre;
    const double turn = t * turnOf(piece) * (piece.turn == Turn::Left ? 1 : -1);
    return piece.centre + Point{a.x * std::cos(turn) - a.y * std::sin(turn),
                                a.x * std::sin(turn) + a.y * std::cos(turn)};
}

double toStretch(Point a, Point b, Point at) {
    const Point run = b - a;
    const double t = std::clamp(dot(at - a, run) / dot(run, run), 0.0, 1.0);
    return distance(at, a + t * run);
}

// No point of the piece lies nearer to `at` than this.
double leastDistance(const OutlinePiece& piece, Point at) {
    if (!piece.isArc) return toStretch(piece.from, piece.to, at);
    return std::abs(distance(piece.centre, at) - piece.radius);
}

// The greatest value between `low` and `high`, where one hump is expected.
double narrowed(const std::function<double(double)>& value, double low, double high) {
    const double golden = (std::sqrt(5.0) - 1) / 2;
    for (int i = 0; i < 60; ++i) {
        const double a = high - golden * (high - low);
        const double b = low + golden * (high - low);
        if (value(a) < value(b)) low = a;
        else high = b;
    }
    return value((low + high) / 2);
}

// Whether an upward ray from `at` meets the piece, which runs left to right or right to left throughout.
bool liesUnder(const OutlinePiece& piece, Point at) {
    if ((piece.from.x > at.x) == (piece.to.x > at.x)) return false;
    if (!piece.isArc) {
        const double t = (at.x - piece.from.x) / (piece.to.x - piece.from.x);
        return piece.from.y + t * (piece.to.y - piece.from.y) > at.y;
    }
    const double aside = at.x - piece.centre.x;
    const double rise = std::sqrt(std::max(0.0, piece.radius * piece.radius - aside * aside));
    const bool upper = (piece.turn == Turn::Left) == (piece.from.x > piece.to.x);
    return piece.centre.y + (upper ? rise : -rise) > at.y;
}

// Asked twice, a little to either side: a ray through the end of two pieces counts neither or both.
bool isWithin(const std::vector<OutlinePiece>& border, Point at) {
    bool left = false;
    bool right = false;
    for (const OutlinePiece& piece : border) {
        if (liesUnder(piece, at - kAside)) left = !left;
        if (liesUnder(piece, at + kAside)) right = !right;
    }
    return left && right;
}

// The end of the stretch between `a` and `b` over which `holds` is true at just one of them.
double lastTrue(const std::function<bool(double)>& holds, double a, double b) {
    if (holds(a) == holds(b)) return a;
    if (!holds(a)) std::swap(a, b);
    for (int i = 0; i < 60; ++i) {
        const double middle = (a + b) / 2;
        (holds(middle) ? a : b) = middle;
    }
    return a;
}

// The greatest of `value` over 0 to 1 by `looks` looks and narrowing about the best.
double greatest(const std::function<double(double)>& value, int looks) {
    int best = 0;
    double most = 0;
    for (int i = 0; i <= looks; ++i) {
        const double here = value(static_cast<double>(i) / looks);
        if (here <= most) continue;
        most = here;
        best = i;
    }
    if (most == 0) return 0;
    const double low = std::max(0, best - 1) / static_cast<double>(looks);
    const double high = std::min(looks, best + 1) / static_cast<double>(looks);
    return std::max(most, narrowed(value, low, high));
}

// How far along the piece (0 to 1) its point in direction `way` from the centre lies; beyond 1: not on it.
double placeOn(const OutlinePiece& arc, Point way) {
    const Point a = arc.from - arc.centre;
    const double left = std::atan2(cross(a, way), dot(a, way));
    const double turn = arc.turn == Turn::Left ? left : -left;
    const double whole = turnOf(arc);
    return whole > 0 ? (turn < 0 ? turn + 2 * std::numbers::pi : turn) / whole : 0;
}

}  // namespace

double distanceTo(const std::vector<std::vector<Point>>& faces, Point place) {
    double nearest = HUGE_VAL;
    for (const std::vector<Point>& face : faces) {
        bool inside = true;
        for (std::size_t i = 0; i < face.size(); ++i) {
            const Point a = face[i];
            const Point b = face[(i + 1) % face.size()];
            if (cross(b - a, place - a) < 0) inside = false;
            nearest = std::min(nearest, toStretch(a, b, place));
        }
        if (inside) return 0;
    }
    return nearest;
}

double greatestStep(const std::vector<OutlinePiece>& border, const std::vector<std::vector<Point>>& faces,
                    Point corner, double reach) {
    double step = 0;
    for (const OutlinePiece& piece : border) {
        if (leastDistance(piece, corner) > reach) continue;
        const auto isNear = [&](double t) { return distance(along(piece, t), corner) <= reach; };
        const auto value = [&](double t) { return isNear(t) ? distanceTo(faces, along(piece, t)) : 0; };
        step = std::max(step, greatest(value, kLooks));
        for (int i = 0; i < kLooks; ++i)
            step = std::max(step, value(lastTrue(isNear, static_cast<double>(i) / kLooks, (i + 1.0) / kLooks)));
        if (!piece.isArc) continue;
        // A shallow dip may hide between two looks: an arc is farthest past a side square to it.
        for (const std::vector<Point>& face : faces)
            for (std::size_t i = 0; i < face.size(); ++i) {
                const Point side = face[(i + 1) % face.size()] - face[i];
                const double t = placeOn(piece, {side.y, -side.x});
                if (t <= 1) step = std::max(step, value(t));
            }
    }
    // Where a hollow runs on out of reach, its farthest place within reach may lie inside it.
    const auto round = [&](double t) {
        const double turn = 2 * std::numbers::pi * t;
        const Point at = corner + reach * Point{std::cos(turn), std::sin(turn)};
        const double far = distanceTo(faces, at);
        return far > step && isWithin(border, at) ? far : 0;
    };
    return std::max(step, greatest(round, kRoundLooks));
}

}  // namespace kerfwall::oracle

// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/outline_measure.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>

namespace kerfwall::oracle {
namespace {

constexpr int kLooks = 400;  // places looked at along one piece before narrowing

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
        const auto value = [&](double t) {
            const Point at = along(piece, t);
            return distance(at, corner) > reach ? 0 : distanceTo(faces, at);
        };
        int best = -1;
        double most = 0;
        for (int i = 0; i <= kLooks; ++i) {
            const double here = value(static_cast<double>(i) / kLooks);
            if (here > most) {
                most = here;
                best = i;
            }
        }
        if (best < 0) continue;
        const double low = std::max(0, best - 1) / static_cast<double>(kLooks);
        const double high = std::min(kLooks, best + 1) / static_cast<double>(kLooks);
        step = std::max({step, most, narrowed(value, low, high)});
    }
    return step;
}

}  // namespace kerfwall::oracle

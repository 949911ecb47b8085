// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cstdint>
#include <tuple>
#include <unordered_map>

#include "core/geometry/angle.h"
#include "core/geometry/curve.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

/// The cell of side kJoin a place lies in, or one of its neighbours.
std::int64_t cellOf(Point place, int right = 0, int up = 0) {
    const auto column = static_cast<std::int64_t>(std::floor(place.x / kJoin)) + right;
    const auto row = static_cast<std::int64_t>(std::floor(place.y / kJoin)) + up;
    return column * 4294967291LL + row;
}

/// Clockwise angle from looking back along `arriving` to `leaving`: the free wedge between them.
double wedge(Point arriving, Point leaving) {
    const Point back = -1.0 * arriving;
    double angle = std::atan2(-cross(back, leaving), dot(back, leaving));
    if (angle <= 0) angle += kTurn;
    return angle;
}

}  // namespace

std::vector<std::vector<std::size_t>> Rim::loops() const {
    std::vector<std::vector<std::size_t>> found;
    std::vector<bool> seen(curves.size(), false);
    for (std::size_t i = 0; i < curves.size(); ++i) {
        std::vector<std::size_t> loop;
        std::size_t at = i;
        while (at != kOpenEnd && !seen[at]) {
            seen[at] = true;
            loop.push_back(at);
            at = next[at];
        }
        if (!loop.empty() && at == loop.front()) found.push_back(std::move(loop));
    }
    return found;
}

std::vector<std::vector<Curve>> Rim::closedRuns() const {
    std::vector<std::vector<Curve>> runs;
    for (const auto& loop : loops()) {
        runs.emplace_back();
        for (const std::size_t i : loop) runs.back().push_back(curves[i]);
    }
    return runs;
}

std::vector<std::size_t> Rim::openEnds() const {
    std::vector<std::size_t> ends;
    for (const auto& run : openRuns()) {
        if (lengthOf(run) > kJoin) ends.push_back(run.back());
    }
    return ends;
}

Rim Rim::withoutStubs() const {
    std::vector<bool> isStub(curves.size(), false);
    for (const auto& run : openRuns()) {
        if (lengthOf(run) > kJoin) continue;
        for (const std::size_t i : run) isStub[i] = true;
    }
    std::vector<std::size_t> placeOf(curves.size(), kOpenEnd);
    Rim kept;
    for (std::size_t i = 0; i < curves.size(); ++i) {
        if (isStub[i]) continue;
        placeOf[i] = kept.curves.size();
        kept.curves.push_back(curves[i]);
    }
    for (std::size_t i = 0; i < curves.size(); ++i) {
        if (!isStub[i]) kept.next.push_back(next[i] == kOpenEnd ? kOpenEnd : placeOf[next[i]]);
    }
    return kept;
}

std::vector<std::vector<std::size_t>> Rim::openRuns() const {
    std::vector<std::size_t> before(next.size(), kOpenEnd);
    for (std::size_t i = 0; i < next.size(); ++i) {
        if (next[i] != kOpenEnd) before[next[i]] = i;
    }
    std::vector<std::vector<std::size_t>> runs;
    for (std::size_t i = 0; i < next.size(); ++i) {
        if (next[i] != kOpenEnd) continue;
        runs.emplace_back();
        for (std::size_t at = i; at != kOpenEnd; at = before[at]) runs.back().push_back(at);
        std::ranges::reverse(runs.back());
    }
    return runs;
}

double Rim::lengthOf(const std::vector<std::size_t>& run) const {
    double length = 0;
    for (const std::size_t i : run) length += curves[i].lengthInMm();
    return length;
}

Rim joinToRim(std::vector<Curve> curves) {
    Rim rim;
    rim.next.assign(curves.size(), Rim::kOpenEnd);
    std::unordered_multimap<std::int64_t, std::size_t> starts;
    starts.reserve(curves.size());
    for (std::size_t i = 0; i < curves.size(); ++i) starts.emplace(cellOf(curves[i].from), i);

    // (distance in steps of kBite, wedge, end, start): nearest first, then the narrowest free wedge.
    std::vector<std::tuple<std::int64_t, double, std::size_t, std::size_t>> pairs;
    for (std::size_t i = 0; i < curves.size(); ++i) {
        const Point end = curves[i].to;
        const Point arriving = curves[i].tangentAt(curves[i].size);
        for (int dx = -1; dx <= 1; ++dx) {
            for (int dy = -1; dy <= 1; ++dy) {
                const auto [first, last] = starts.equal_range(cellOf(end, dx, dy));
                for (auto it = first; it != last; ++it) {
                    const Curve& other = curves[it->second];
                    const double gap = distance(end, other.from);
                    const bool itself = it->second == i && curves[i].lengthInMm() < 2 * kJoin;
                    if (gap > kJoin || itself) continue;
                    pairs.emplace_back(static_cast<std::int64_t>(gap / kBite), wedge(arriving, other.tangentAt(0)), i,
                                       it->second);
                }
            }
        }
    }
    std::ranges::sort(pairs);
    std::vector<bool> taken(curves.size(), false);
    for (const auto& [gap, angle, end, start] : pairs) {
        if (rim.next[end] != Rim::kOpenEnd || taken[start]) continue;
        rim.next[end] = start;
        taken[start] = true;
    }
    rim.curves = std::move(curves);
    return rim;
}

Rim reversed(const Rim& rim) {
    Rim other;
    other.curves.reserve(rim.curves.size());
    for (const Curve& curve : rim.curves) other.curves.push_back(curve.reversed());
    other.next.assign(rim.next.size(), Rim::kOpenEnd);
    for (std::size_t i = 0; i < rim.next.size(); ++i) {
        if (rim.next[i] != Rim::kOpenEnd) other.next[rim.next[i]] = i;
    }
    return other;
}

double signedArea(const std::vector<Curve>& loop) {
    if (loop.empty()) return 0;
    const Point origin = loop.front().from;
    double twice = 0;
    for (const Curve& curve : loop) {
        twice += cross(curve.from - origin, curve.to - origin);
        if (!curve.isArc) continue;
        const double segment = curve.radius * curve.radius * (curve.size - std::sin(curve.size));
        twice += curve.anticlockwise ? segment : -segment;
    }
    return twice / 2;
}

int windingRound(const std::vector<Curve>& loop, Point place) {
    double angle = 0;
    int turns = 0;
    const auto chord = [&](Point a, Point b) { angle += std::atan2(cross(a - place, b - place), dot(a - place, b - place)); };
    for (const Curve& curve : loop) {
        if (!curve.isArc) {
            chord(curve.from, curve.to);
            continue;
        }
        // Halves of at most half a turn: a chord, and one turn more inside the slice it cuts off.
        const Point middle = curve.at(curve.size / 2);
        for (const auto& [a, b] : {std::pair{curve.from, middle}, std::pair{middle, curve.to}}) {
            chord(a, b);
            const double side = cross(b - a, place - a);
            const bool beyond = curve.anticlockwise ? side < 0 : side > 0;
            if (beyond && distance(place, curve.centre) < curve.radius) turns += curve.anticlockwise ? 1 : -1;
        }
    }
    return turns + static_cast<int>(std::lround(angle / kTurn));
}

}  // namespace kerfwall

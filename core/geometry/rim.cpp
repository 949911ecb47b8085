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

/// Which way a stretch that only rises or only falls passes the level of `place`: 1 up, -1 down. The lower end counts
/// as on it, the upper does not, so that two stretches never count their common end twice.
int passing(Point a, Point b, Point place) {
    return static_cast<int>(b.y > place.y) - static_cast<int>(a.y > place.y);
}

/// Which way a straight stretch crosses the ray from `place` to the right.
int crossingOf(Point a, Point b, Point place) {
    const int way = passing(a, b, place);
    return way != 0 && way * cross(b - a, place - a) > 0 ? way : 0;
}

/// The same for an arc, by its parts that only rise or only fall.
int crossingOfArc(const Curve& arc, Point place) {
    const Point off = place - arc.centre;
    if (off.x > arc.radius) return 0;
    // The ray meets the circle at most once on either side of its middle.
    if (off.x < -arc.radius) return passing(arc.from, arc.to, place);
    const double half = std::sqrt(std::max(0.0, (arc.radius - off.y) * (arc.radius + off.y)));
    const double start = std::atan2(arc.from.y - arc.centre.y, arc.from.x - arc.centre.x);
    const double way = arc.anticlockwise ? 1 : -1;
    int turns = 0;
    Point from = arc.from;
    double done = 0;
    while (done < arc.size) {
        // On to the next top or bottom of the circle, or to the arc's end.
        const double quarter = kTurn / 4;
        const double at = way * (start + way * done);
        double next = (std::floor((at - quarter) / (2 * quarter)) + 1) * 2 * quarter + quarter - at;
        if (next < 1e-12) next += 2 * quarter;
        const double to = std::min(done + next, arc.size);
        const Point end = to < arc.size ? arc.at(to) : arc.to;
        const bool right = std::cos(start + way * (done + to) / 2) > 0;
        const int passes = passing(from, end, place);
        if (passes != 0 && (right ? half : -half) > off.x) turns += passes;
        from = end;
        done = to;
    }
    return turns;
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
    int turns = 0;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Curve& curve = loop[i];
        const Curve& before = loop[(i + loop.size() - 1) % loop.size()];
        turns += crossingOf(before.to, curve.from, place);
        turns += curve.isArc ? crossingOfArc(curve, place) : crossingOf(curve.from, curve.to, place);
    }
    return turns;
}

}  // namespace kerfwall

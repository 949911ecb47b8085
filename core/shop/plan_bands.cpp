// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/plan_bands.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "core/geometry/kerf_layout.h"

namespace kerfwall {
namespace {

constexpr double kTouch = 1e-9;  // mm

std::pair<double, double> shadow(const PlanShape& shape, Point way) {
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    for (const Point& corner : shape) {
        low = std::min(low, dot(corner, way));
        high = std::max(high, dot(corner, way));
    }
    return {low, high};
}

// A stretch of line has no width along its own normal: there a touch is enough to part.
bool partedBy(const PlanShape& a, const PlanShape& b, Point way) {
    const auto [lowA, highA] = shadow(a, way);
    const auto [lowB, highB] = shadow(b, way);
    return highA <= lowB + kTouch || highB <= lowA + kTouch;
}

bool partedBySidesOf(const PlanShape& shape, const PlanShape& a, const PlanShape& b) {
    for (std::size_t i = 0; i < shape.size(); ++i) {
        const Point side = shape[(i + 1) % shape.size()] - shape[i];
        if (length(side) == 0) {
            continue;
        }
        const Point along = unit(side);
        // A stretch's own direction parts too: it ends.
        if (partedBy(a, b, leftOf(along)) || (shape.size() == 2 && partedBy(a, b, along))) {
            return true;
        }
    }
    return false;
}

}  // namespace

bool overlapInPlan(const PlanShape& a, const PlanShape& b) {
    return !partedBySidesOf(a, a, b) && !partedBySidesOf(b, a, b);
}

PlanShape bandOf(const SolvedLine& line, const Kerf& kerf, double from, double to) {
    const Point way = unit(line.to - line.from);
    const Point across = (kerf.side == Side::Left ? kerf.width : -kerf.width) * leftOf(way);
    const Point start = line.from + from * way;
    const Point end = line.from + to * way;
    return {start, end, end + across, start + across};
}

PlanShape stripRound(Point from, Point to, double width) {
    const Point across = (width / 2) * leftOf(unit(to - from));
    return {from - across, to - across, to + across, from + across};
}

double roundReach(const Kerf& kerf, double bladeRadius, double depth) {
    if (!kerf.stopped || depth >= kerf.depth) {
        return 0;
    }
    return reachOfRound(2 * bladeRadius, kerf.depth, std::max(depth, 0.0));
}

double bladeRadiusOf(const Project& project, const Kerf& kerf) {
    const Bench& bench = benchOf(project);
    if (kerf.saw && *kerf.saw < bench.saws.size()) {
        return bench.saws[*kerf.saw].blade / 2;
    }
    return (bench.saws.empty() ? stockSaw(SawKind::RipFence).blade : bench.saws.front().blade) / 2;
}

}  // namespace kerfwall

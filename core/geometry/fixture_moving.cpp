// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/fixture_moving.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/bases.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/fence_place.h"

namespace kerfwall {
namespace {

constexpr double kParallel = 1e-9;  // sine under which a fence runs along a straight

/// What a fence can be measured along: what it is, the reference edge and the edge square to it, all edges, all lines.
std::vector<Base> basesFor(const Panel& panel, const Solved& solved, const Fence& fence) {
    std::vector<Base> bases = allBases(panel, solved);
    bases.insert(bases.begin(), fence.along);
    return bases;
}

}  // namespace

std::optional<ClampHole> movedHole(const Panel& panel, const ClampHole& hole, const Motion& motion) {
    ClampHole next = hole;
    if (isShift(motion)) {
        const double at = tidied(hole.at + dot(motion.shift, edgeHeading(hole.edge)));
        next.at = std::clamp(at, 0.0, edgeLength(panel, hole.edge));
        return next;
    }
    const Point inwards = headed(motion, leftOf(edgeHeading(hole.edge)));
    for (const Edge edge : kEdges) {
        if (dot(inwards, leftOf(edgeHeading(edge))) < 1 - kParallel) continue;
        const EdgeMark mark = markOnEdge(panel, edge, moved(motion, markPlace(panel, {hole.edge, hole.at})));
        next.edge = mark.edge;
        next.at = tidied(mark.at);
        return next;
    }
    return std::nullopt;
}

std::optional<Fence> movedFence(const Panel& panel, const Solved& after, Fence fence, const std::vector<Point>& before,
                                const Motion& motion) {
    const Point a = moved(motion, before[0]), b = moved(motion, before[1]), body = moved(motion, before[3]);
    for (const Base& base : basesFor(panel, after, fence)) {
        const auto straight = straightOf(panel, after, base);
        if (!straight || std::abs(cross(straight->along, unit(b - a))) > kParallel) continue;
        const Point left = leftOf(straight->along);
        const double one = dot(a - straight->start, straight->along), other = dot(b - straight->start, straight->along);
        fence.along = base;
        fence.offset = tidied(dot(a - straight->start, left));
        fence.body = dot(body - a, left) > 0 ? Side::Left : Side::Right;
        fence.from = tidied(std::min(one, other));
        fence.to = tidied(std::max(one, other));
        return fence;
    }
    return std::nullopt;
}

}  // namespace kerfwall

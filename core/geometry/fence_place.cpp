// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/fence_place.h"

#include "core/geometry/edge_place.h"

namespace kerfwall {

std::optional<Straight> straightOf(const Panel& panel, const Solved& solved, const Base& base) {
    if (const auto* edge = std::get_if<Edge>(&base)) {
        return Straight{markPlace(panel, {*edge, 0}), edgeHeading(*edge), edgeLength(panel, *edge)};
    }
    const SolvedLine* line = findLine(solved, std::get<LineId>(base));
    if (!line) return std::nullopt;
    return Straight{line->from, unit(line->to - line->from), distance(line->from, line->to)};
}

std::vector<Point> fenceBody(const Project& project, const Solved& solved, const Fence& fence) {
    const auto straight = straightOf(project.panel, solved, fence.along);
    if (!straight) return {};
    const Point left = leftOf(straight->along);
    const Point face = straight->start + fence.offset * left;
    const Point a = face + fence.from * straight->along;
    const Point b = face + fence.to * straight->along;
    const Point body = (fence.body == Side::Left ? fence.width : -fence.width) * left;
    return {a, b, b + body, a + body};
}

std::optional<Point> fenceMiddle(const Project& project, const Solved& solved, const Fence& fence) {
    const std::vector<Point> body = fenceBody(project, solved, fence);
    if (body.empty()) return std::nullopt;
    return 0.5 * (body[0] + body[2]);
}

}  // namespace kerfwall

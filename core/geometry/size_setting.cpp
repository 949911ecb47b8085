// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/size_setting.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/carrying.h"
#include "core/geometry/fence_place.h"
#include "core/geometry/placing.h"

namespace kerfwall {
namespace {

constexpr double kMet = 1e-6;      // mm; a size set this exactly is met
constexpr double kUnmoved = 1e-9;  // mm; less is rounding

std::ptrdiff_t placeInList(const Project& project, const Base& base) {
    const auto* id = std::get_if<LineId>(&base);
    if (!id) return -1;
    return std::ranges::find(project.lines, *id, &LayoutLine::id) - project.lines.begin();
}

/// The ends that are lines, the one laid later first.
std::vector<Base> movableEnds(const Project& project, const DrawnBetween& size) {
    std::vector<Base> ends{size.first, size.second};
    if (placeInList(project, ends.front()) < placeInList(project, ends.back())) std::swap(ends.front(), ends.back());
    std::erase_if(ends, [](const Base& end) { return std::holds_alternative<Edge>(end); });
    return ends;
}

/// From one straight to the other along the size's own line; none where either is in trouble.
std::optional<double> measured(const Panel& panel, const Solved& solved, const DrawnBetween& size) {
    const auto first = straightOf(panel, solved, size.first), second = straightOf(panel, solved, size.second);
    if (!first || !second) return std::nullopt;
    const Point along = unit(size.to - size.from);
    const auto reached = [&](const Straight& straight) {
        return cross(straight.start - size.from, straight.along) / cross(along, straight.along);
    };
    return reached(*second) - reached(*first);
}

}  // namespace

LineId movedBy(const Project& project, const DrawnBetween& size) {
    const std::vector<Base> ends = movableEnds(project, size);
    return ends.empty() ? LineId{} : std::get<LineId>(ends.front());
}

std::expected<Project, NoSize> withSize(const Project& project, const Solved& solved, const DrawnBetween& size, double value) {
    if (!(value > kUnmoved)) return std::unexpected(NoSize::TooSmall);
    const auto before = measured(project.panel, solved, size);
    if (!before) return std::unexpected(NoSize::OffThePanel);
    if (std::abs(value - *before) < kUnmoved) return project;
    const Point along = unit(size.to - size.from);
    bool vanished = false;
    for (const Base& end : movableEnds(project, size)) {
        const auto moved = [&](double by) {
            const double outwards = end == size.second ? by : -by;
            return nudged(project, solved, onlyLine(std::get<LineId>(end)), outwards * along);
        };
        // What the size follows of a line's move: nothing where both go along, double where they mirror one another.
        const double trial = std::min(1.0, *before / 4);
        const auto followed = measured(project.panel, linesAlone(moved(trial)), size);
        if (!followed || std::abs(*followed - *before) < kUnmoved) continue;
        const Project next = moved((value - *before) * trial / (*followed - *before));
        const auto after = measured(project.panel, linesAlone(next), size);
        if (after && std::abs(*after - value) < kMet) return next;
        vanished = vanished || !after;
    }
    return std::unexpected(vanished ? NoSize::OffThePanel : NoSize::GoesAlong);
}

}  // namespace kerfwall

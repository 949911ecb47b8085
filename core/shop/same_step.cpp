// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/same_step.h"

#include <algorithm>

namespace kerfwall {
namespace {

bool isAboutTheSame(const WorkStep& one, const WorkStep& other) {
    return one.task == other.task && one.lines == other.lines && one.sides == other.sides && one.cutout == other.cutout &&
           one.clampHoles == other.clampHoles && one.fence == other.fence &&
           (!one.fence || one.setting.depth.has_value() == other.setting.depth.has_value());
}

/// How many lines, on the same sides, both are about; a step without sides counts its lines.
std::size_t sharedLines(const WorkStep& one, const WorkStep& other) {
    std::size_t shared = 0;
    for (std::size_t i = 0; i < one.lines.size(); ++i) {
        for (std::size_t k = 0; k < other.lines.size(); ++k) {
            const bool sides = i >= one.sides.size() || k >= other.sides.size() || one.sides[i] == other.sides[k];
            if (one.lines[i] == other.lines[k] && sides) ++shared;
        }
    }
    return shared;
}

}  // namespace

std::optional<std::size_t> sameStep(const std::vector<WorkStep>& before, std::size_t index,
                                    const std::vector<WorkStep>& now) {
    const WorkStep& step = before.at(index);
    // Steps about the same things keep their order among themselves (two stretches of one line, cut apart).
    const auto end = before.begin() + static_cast<std::ptrdiff_t>(index);
    auto earlier = std::count_if(before.begin(), end, [&](const WorkStep& is) { return isAboutTheSame(is, step); });
    std::optional<std::size_t> last;
    for (std::size_t i = 0; i < now.size(); ++i) {
        if (!isAboutTheSame(now[i], step)) continue;
        last = i;
        if (earlier-- == 0) break;
    }
    if (last) return last;
    std::size_t most = 0;
    for (std::size_t i = 0; i < now.size(); ++i) {
        if (now[i].task != step.task || now[i].cutout != step.cutout) continue;
        const std::size_t shared = sharedLines(step, now[i]);
        if (shared <= most) continue;
        most = shared;
        last = i;
    }
    return last;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/step_way.h"

#include <algorithm>

namespace kerfwall {

const WorkStep* stepCutting(const OrderOfWork& order, const LineId& line, Side side) {
    for (const WorkStep& step : order.steps) {
        if (step.task != Task::Kerf) {
            continue;
        }
        for (std::size_t i = 0; i < step.lines.size() && i < step.sides.size(); ++i) {
            if (step.lines[i] == line && step.sides[i] == side) {
                return &step;
            }
        }
    }
    return nullptr;
}

Way wayOf(const Project& project, const WorkStep& step) {
    const auto& saws = benchOf(project).saws;
    const auto saw = std::ranges::find(saws, step.saw, &Saw::id);
    Way way;
    if (saw != saws.end()) {
        way.saw = static_cast<std::size_t>(saw - saws.begin());
    }
    way.setting = step.setting;
    way.faceUp = step.faceUp;
    way.against = step.against;
    way.stopEdge = step.stopEdge;
    way.stopSide = step.stopSide;
    way.leads = step.leads;
    way.turn = step.turn;
    way.toMarks = !step.setting.fence && !step.setting.stop;
    return way;
}

}  // namespace kerfwall

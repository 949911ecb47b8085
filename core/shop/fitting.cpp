// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/fitting.h"

#include <algorithm>

#include "core/shop/cautions.h"
#include "core/shop/panel_edges.h"
#include "core/shop/step_text.h"
#include "core/shop/word_list.h"

namespace kerfwall {

namespace {

bool isSameSetting(const Project& project, const ClampHole& one, const ClampHole& other) {
    return one.edge == other.edge && one.diameter == other.diameter && one.depth == other.depth &&
           heightOf(project.panel, one) == heightOf(project.panel, other);
}

WorkStep holeStep(const Project& project, const std::vector<std::size_t>& indices) {
    const ClampHole& first = project.clampHoles[indices.front()];
    std::vector<std::string> places;
    WorkStep step;
    step.task = Task::Hole;
    step.clampHoles = indices;
    for (const std::size_t index : indices) {
        const ClampHole& hole = project.clampHoles[index];
        step.see.push_back({hole.edge, hole.at});
        places.push_back(markText(project, step.see.back()) + (hole.id.empty() ? "" : " (" + hole.id + ")"));
    }
    step.text = "Drill " + std::string(indices.size() > 1 ? "clamp holes" : "a clamp hole") + " of " +
                sizeText(project, first.diameter) + " into the " + edgeWord(first.edge) + " edge, " +
                sizeText(project, first.depth) + " deep to the drill's point by the depth stop, the axis " +
                sizeText(project, heightOf(project.panel, first)) + " below the layout face: " + listText(places) +
                ".";
    step.cautions = taskCautions(Task::Hole);
    return step;
}

std::string baseText(const Base& base) {
    const Edge* edge = std::get_if<Edge>(&base);
    return edge != nullptr ? "the " + edgeWord(*edge) + " edge" : "line " + std::get<LineId>(base);
}

}  // namespace

std::vector<WorkStep> holeSteps(const Project& project) {
    std::vector<std::vector<std::size_t>> groups;
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) {
        const auto group = std::ranges::find_if(groups, [&](const auto& is) {
            return isSameSetting(project, project.clampHoles[is.front()], project.clampHoles[i]);
        });
        if (group != groups.end()) {
            group->push_back(i);
        } else {
            groups.push_back({i});
        }
    }
    std::vector<WorkStep> steps;
    for (const auto& group : groups) {
        steps.push_back(holeStep(project, group));
    }
    return steps;
}

std::vector<WorkStep> fenceSteps(const Project& project) {
    std::vector<WorkStep> steps;
    for (std::size_t i = 0; i < project.fences.size(); ++i) {
        const Fence& fence = project.fences[i];
        WorkStep& step = steps.emplace_back();
        step.task = Task::Fence;
        step.fence = i;
        step.faceUp = fence.face != Face::Back;
        if (const LineId* line = std::get_if<LineId>(&fence.along)) {
            step.lines = {*line};
        }
        step.text = std::string("Fix a ") + (fence.kind == FenceKind::Stop ? "stop" : "straight fence") +
                    " of " + sizeText(project, fence.width) + " by " + sizeText(project, fence.height) +
                    " to the " + (step.faceUp ? "layout" : "back") + " face, the face the work touches " +
                    sizeText(project, fence.offset) + " to the left of " + baseText(fence.along) + ", from " +
                    sizeText(project, fence.from) + " to " + sizeText(project, fence.to) +
                    " along it, its body on the " + sideWord(fence.body) + " of that face.";
        if (fence.groove > 0) {
            step.text += " It stands in a groove " + sizeText(project, fence.groove) + " deep.";
        }
        step.cautions = taskCautions(Task::Fence);
    }
    return steps;
}

WorkStep labelStep(const Project& project, const Solved& solved) {
    const UseAnswer& use = solved.use;
    WorkStep step;
    step.task = Task::Label;
    step.text =
        "Write on the template: " + (project.title.empty() ? std::string("what it is for") : project.title) +
        "; " + (project.use.byBush ? "guide bush " : "bearing ") + sizeText(project, use.guide) +
        ", cutter " + sizeText(project, use.cutter) + "; " +
        (use.againstWork == Face::Back ? "back" : "layout face") + " on the work.";
    return step;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/fitting.h"

#include <algorithm>

#include "core/geometry/edge_place.h"
#include "core/geometry/fence_place.h"
#include "core/shop/bore.h"
#include "core/shop/cautions.h"
#include "core/shop/heading.h"
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

/// The band in which a template with bored corners is ridden: under the kerfs, where its rounds are unbroken.
std::string rideText(const Project& project, const Solved& solved) {
    const bool bored = std::ranges::any_of(solved.cutouts, [&](const SolvedCutout& cutout) {
        return std::ranges::any_of(cutout.corners, [&](const Corner& corner) { return isBored(corner, solved); });
    });
    if (!bored) return "";
    return "; ride it " + sizeText(project, solved.kerfDepth) + " to " + sizeText(project, project.panel.thickness) +
           " below the layout face, where its bored corners are unbroken";
}

std::string fenceName(const Fence& fence) { return fence.kind == FenceKind::Stop ? "stop" : "straight fence"; }

std::string baseText(const Base& base) {
    const Edge* edge = std::get_if<Edge>(&base);
    return edge != nullptr ? "the " + edgeWord(*edge) + " edge" : "line " + std::get<LineId>(base);
}

/// Where both sides of a groove lie: from the edge it runs along of those measured from, else from its base.
std::string grooveSides(const Project& project, const Fence& fence, const std::vector<Point>& body) {
    const Edge reference = project.panel.referenceEdge;
    for (const Edge edge : {reference, measuredEnd(project.panel)}) {
        if (headingFrom(edge, body[0], body[1]) != Heading::Along) continue;
        const auto [low, high] = std::minmax({distanceFromEdge(project.panel, edge, body[0]),
                                              distanceFromEdge(project.panel, edge, body[2])});
        return "its sides " + sizeText(project, low) + " and " + sizeText(project, high) + " from the " + edgeWord(edge) +
               " edge";
    }
    const auto [low, high] = std::minmax({fence.offset, fence.offset + (fence.body == Side::Left ? fence.width : -fence.width)});
    return "its sides " + sizeText(project, low) + " and " + sizeText(project, high) + " to the left of " +
           baseText(fence.along);
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

std::vector<WorkStep> grooveSteps(const Project& project, const Solved& solved) {
    std::vector<WorkStep> steps;
    for (std::size_t i = 0; i < project.fences.size(); ++i) {
        const Fence& fence = project.fences[i];
        const std::vector<Point> body = fenceBody(project, solved, fence);
        if (fence.groove <= 0 || body.empty()) continue;
        WorkStep& step = steps.emplace_back();
        step.task = Task::Fence;
        step.fence = i;
        step.faceUp = fence.face != Face::Back;
        step.setting.depth = fence.groove;
        if (const LineId* line = std::get_if<LineId>(&fence.along)) step.lines = {*line};
        step.text = "Cut the groove of the " + fenceName(fence) + " into the " + (step.faceUp ? "layout" : "back") +
                    " face, " + sizeText(project, fence.groove) + " deep and " + sizeText(project, fence.width) +
                    " wide, " + grooveSides(project, fence, body) + ", from " + sizeText(project, fence.from) + " to " +
                    sizeText(project, fence.to) + " along " + baseText(fence.along) + ".";
        step.cautions = taskCautions(Task::Kerf);
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
        step.text = "Fix a " + fenceName(fence) + " of " + sizeText(project, fence.width) + " by " + sizeText(project, fence.height) +
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
        (use.againstWork == Face::Back ? "back" : "layout face") + " on the work" + rideText(project, solved) + ".";
    return step;
}

}  // namespace kerfwall

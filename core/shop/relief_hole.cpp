// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/relief_hole.h"

#include <algorithm>
#include <map>

#include "core/shop/bore.h"
#include "core/shop/cautions.h"
#include "core/shop/step_text.h"
#include "core/shop/wall_kerf.h"

namespace kerfwall {

namespace {

WorkStep drillStep(const Project& project, const std::string& cutout, double diameter,
                   const std::string& what) {
    WorkStep step;
    step.task = Task::Drill;
    step.text = "Drill the " + what + " of " + cutout + " through with " + sizeText(project, diameter) +
                ", backed up from below.";
    step.cautions = taskCautions(Task::Drill);
    return step;
}

void addHole(const Project& project, const Corner& corner, WorkStep& step) {
    for (const LineId& line : {corner.first, corner.second}) {
        if (std::ranges::find(step.lines, line) == step.lines.end()) {
            step.lines.push_back(line);
        }
    }
    step.bores.push_back(*corner.drill);
    step.text += " Corner of " + corner.first + " with " + corner.second + ": centre " +
                 placeText(project, corner.drill->centre) + ".";
}

bool letsJigsawIn(const Corner& corner, const Solved& solved) {
    return isBored(corner, solved) || (corner.drill && corner.drill->diameter >= kSmallestStart);
}

}  // namespace

std::vector<WorkStep> drillSteps(const Project& project, const Solved& solved) {
    std::vector<WorkStep> steps;
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (!isWorkable(solved, cutout)) {
            continue;
        }
        std::map<double, WorkStep> byDiameter;
        for (const Corner& corner : cutout.corners) {
            if (corner.drill) {
                const double diameter = corner.drill->diameter;
                const auto at = byDiameter.try_emplace(
                    diameter, drillStep(project, cutout.id, diameter, "relief holes in the corners"));
                addHole(project, corner, at.first->second);
            }
        }
        for (auto& [diameter, step] : byDiameter) {
            steps.push_back(std::move(step));
        }
        const auto starts = [&](const Corner& corner) { return letsJigsawIn(corner, solved); };
        if (!cutout.open && std::ranges::none_of(cutout.corners, starts)) {
            WorkStep& step =
                steps.emplace_back(drillStep(project, cutout.id, kStarterHole, "jigsaw's starter hole"));
            step.lines = linesAlong(cutout);
            step.bores.push_back({cutout.widestAt, kStarterHole});
            step.text += " Centre " + placeText(project, cutout.widestAt) + ", well inside the kerfs.";
        }
    }
    return steps;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/bore.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/shop/cautions.h"
#include "core/shop/step_text.h"

namespace kerfwall {

namespace {

constexpr double kSameDrill = 0.01;  ///< mm: a drill this close has the bore's size

void addLine(WorkStep& step, const LineId& line) {
    if (std::ranges::find(step.lines, line) == step.lines.end()) {
        step.lines.push_back(line);
    }
}

std::string toolText(const Project& project, double radius) {
    const BoreTool tool = boreToolFor(benchOf(project), radius);
    const std::string size = sizeText(project, 2 * radius);
    if (tool.drill) {
        return "Bore through with the " + size + " drill or hole saw, backed up from below.";
    }
    if (tool.pivotToFar) {
        return "Rout through on the circle jig, a circle of " + size + ": from the pivot " +
               sizeText(project, *tool.pivotToNear) + " to the near side of the cut, " +
               sizeText(project, *tool.pivotToFar) + " to its far side.";
    }
    return "Bore through with a drill or hole saw of " + size +
           "; there is none on the bench, nor a circle jig's bit.";
}

WorkStep& stepOf(std::vector<WorkStep>& steps, std::vector<double>& radii, const Project& project,
                 double radius) {
    const auto known = std::ranges::find(radii, radius);
    if (known != radii.end()) {
        return steps[static_cast<std::size_t>(known - radii.begin())];
    }
    radii.push_back(radius);
    WorkStep& step = steps.emplace_back();
    step.task = Task::Bore;
    step.text = toolText(project, radius) + " The kerfs must touch the bores, so the bores come first.";
    step.cautions = taskCautions(Task::Bore);
    return step;
}

}  // namespace

bool isBored(const Corner& corner, const Solved& solved) {
    return corner.regime == Regime::Bored && corner.boreRadius && *corner.boreRadius > solved.bitRadius;
}

Point centreOf(const Corner& corner, double radius) {
    const Point middle = 0.5 * (corner.firstTangent + corner.secondTangent);
    const double off = radius / std::sin(radians(corner.angle) / 2);
    return corner.point + off * unit(middle - corner.point);
}

BoreTool boreToolFor(const Bench& bench, double radius) {
    BoreTool tool;
    tool.drill = std::ranges::any_of(bench.bores,
                                     [&](double bore) { return std::abs(bore - 2 * radius) <= kSameDrill; });
    if (!tool.drill && bench.circleBit && *bench.circleBit < radius) {
        tool.pivotToNear = radius - *bench.circleBit;
        tool.pivotToFar = radius;
    }
    return tool;
}

std::vector<WorkStep> boreSteps(const Project& project, const Solved& solved) {
    std::vector<WorkStep> steps;
    std::vector<double> radii;
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const Corner& corner : cutout.corners) {
            if (!isBored(corner, solved)) {
                continue;
            }
            WorkStep& step = stepOf(steps, radii, project, *corner.boreRadius);
            addLine(step, corner.first);
            addLine(step, corner.second);
            const Point centre = centreOf(corner, *corner.boreRadius);
            step.bores.push_back({centre, 2 * *corner.boreRadius});
            step.text += " Corner of " + corner.first + " with " + corner.second + ": centre " +
                         placeText(project, centre) + ".";
        }
    }
    return steps;
}

std::vector<WorkStep> handSteps(const Project& project, const Solved& solved) {
    std::vector<WorkStep> steps;
    for (const SolvedCutout& cutout : solved.cutouts) {
        WorkStep step;
        step.task = Task::Hand;
        step.cutout = cutout.id;
        step.text = "Clean the bored corners of " + cutout.id +
                    " by hand, flush with the bore, where the trimming bit had to stop.";
        for (const Corner& corner : cutout.corners) {
            if (isBored(corner, solved)) {
                addLine(step, corner.first);
                addLine(step, corner.second);
                step.text += " Corner of " + corner.first + " with " + corner.second + ": from " +
                             placeText(project, corner.firstTangent) + " to " +
                             placeText(project, corner.secondTangent) + ".";
            }
        }
        if (!step.lines.empty()) {
            steps.push_back(step);
        }
    }
    return steps;
}

}  // namespace kerfwall

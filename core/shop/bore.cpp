// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/bore.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/shop/bore_reach.h"
#include "core/shop/bore_rows.h"
#include "core/shop/cautions.h"
#include "core/shop/heading.h"
#include "core/shop/lie.h"
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

std::string cornerText(const LineId& first, const LineId& second) { return " Corner of " + first + " with " + second + ": "; }

/// A row at the drill press: one fence, a stop for each bore where the panel has a true end for it.
void setAtPress(WorkStep& step, const Project& project, const BoreRow& row) {
    const Panel& panel = project.panel;
    step.setting.fence = row.front().fence;
    step.against = panel.referenceEdge;
    step.text += " At the drill press lay the panel layout face up with its " + edgeWord(panel.referenceEdge) +
                 " edge on the fence, " + sizeText(project, row.front().fence) + " from its face to the spindle's centre.";
    if (panel.squareCorner == SquareCorner::None) {
        step.text += " Set no stop: bring each marked centre to the bit.";
        return;
    }
    const Edge end = measuredEnd(panel);
    step.stopEdge = end;
    step.stopSide = sideOfEnd(end == nextOf(panel.referenceEdge), true, true);
    if (row.size() == 1) step.setting.stop = row.front().stop;
    step.text += " Set the stop on the " + sideWord(*step.stopSide) + ", the panel's " + edgeWord(end) +
                 " edge to it, by the distance from the " + edgeWord(end) + " edge.";
}

WorkStep stepOf(const Project& project, const BoreRow& row) {
    WorkStep step;
    step.task = Task::Bore;
    step.text = toolText(project, row.front().radius);
    if (boreToolFor(benchOf(project), row.front().radius).drill) setAtPress(step, project, row);
    for (const Bore& bore : row) {
        addLine(step, bore.first);
        addLine(step, bore.second);
        step.bores.push_back({bore.centre, 2 * bore.radius});
        step.text += cornerText(bore.first, bore.second) + "centre " + placeText(project, bore.centre) + ".";
    }
    const BoreTool tool = boreToolFor(benchOf(project), row.front().radius);
    step.cautions = tool.pivotToFar && !tool.drill ? routerCautions() : taskCautions(Task::Bore);
    return step;
}

/// Both rests of a corner: how long, and where each ends at the bore.
std::string restText(const Project& project, const Corner& corner) {
    return cornerText(corner.first, corner.second) + sizeText(project, stopShortFor(*corner.boreRadius, kHandRest)) +
           " long on each wall, " + corner.first + "'s up to " + placeText(project, corner.firstTangent) + ", " +
           corner.second + "'s up to " + placeText(project, corner.secondTangent) + ".";
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
    for (const BoreRow& row : boreRows(project, solved)) steps.push_back(stepOf(project, row));
    return steps;
}

std::vector<WorkStep> handSteps(const Project& project, const Solved& solved) {
    std::vector<WorkStep> steps;
    for (const SolvedCutout& cutout : solved.cutouts) {
        WorkStep step;
        step.task = Task::Hand;
        step.cutout = cutout.id;
        step.text = "Clean the bored corners of " + cutout.id +
                    " by hand, flush with the bores. Where the trimming bit stopped short of them it leaves rests up to " +
                    sizeText(project, kHandRest) + " thick.";
        for (const Corner& corner : cutout.corners) {
            if (isBored(corner, solved)) {
                addLine(step, corner.first);
                addLine(step, corner.second);
                step.text += restText(project, corner);
            }
        }
        if (!step.lines.empty()) {
            steps.push_back(step);
        }
    }
    return steps;
}

}  // namespace kerfwall

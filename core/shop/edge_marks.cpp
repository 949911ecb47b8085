// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/edge_marks.h"

#include <algorithm>

#include "core/geometry/edge_place.h"
#include "core/shop/heading.h"
#include "core/shop/step_text.h"
#include "core/shop/word_list.h"

namespace kerfwall {

namespace {

std::string squareText(const Panel& panel) {
    const Edge reference = panel.referenceEdge;
    const std::string atStart = cornerWord(reference, previousOf(reference));
    const std::string atEnd = cornerWord(reference, nextOf(reference));
    switch (panel.squareCorner) {
        case SquareCorner::Start:
            return " Check with a square that the " + atStart + " is a true right angle.";
        case SquareCorner::End:
            return " Check with a square that the " + atEnd + " is a true right angle.";
        case SquareCorner::Both:
            return " Check with a square that the " + atStart + " and the " + atEnd +
                   " are true right angles.";
        case SquareCorner::None:
            return " No corner is said to be true: only the " + edgeWord(reference) + " edge may be used.";
        case SquareCorner::All:
            break;
    }
    return " Check with a square that all four corners are true right angles, and measure both sizes.";
}

WorkStep trueStep(const Project& project) {
    const Panel& panel = project.panel;
    WorkStep step;
    step.task = Task::Mark;
    step.text = "Check the " + edgeWord(panel.referenceEdge) +
                " edge with a straightedge and true it: a factory edge is no reference until it is checked." +
                squareText(panel);
    if (panel.squareCorner == SquareCorner::All) {
        step.text += " The panel must measure " + sizeText(project, panel.width) + " by " +
                     sizeText(project, panel.height) + ".";
    }
    return step;
}

bool isCutIn(const SolvedLine& line, const WorkStep& step) {
    return step.task == Task::Kerf && std::ranges::find(step.lines, line.id) != step.lines.end();
}

bool isLookedAt(const SolvedLine& line, const LineMark& mark, const std::vector<WorkStep>& kerfs) {
    return std::ranges::any_of(kerfs, [&](const WorkStep& step) {
        return isCutIn(line, step) && std::ranges::find(step.see, mark.mark) != step.see.end();
    });
}

bool liesFaceDown(const SolvedLine& line, const std::vector<WorkStep>& kerfs) {
    return std::ranges::any_of(kerfs, [&](const WorkStep& step) { return isCutIn(line, step) && !step.faceUp; });
}

}  // namespace

std::string tickedMarkText(const Project& project, const LineMark& mark) {
    const Edge edge = mark.mark.edge;
    const Edge from = measuredFrom(project.panel, edge);
    const double at = from == previousOf(edge) ? mark.mark.at : edgeLength(project.panel, edge) - mark.mark.at;
    std::string text = edgeWord(edge) + " edge " + sizeText(project, at) + " from the " + edgeWord(from);
    if (mark.wasteToStart && mark.wasteToEnd) {
        return text + ", ticks on both sides";
    }
    if (mark.wasteToStart || mark.wasteToEnd) {
        text += ", tick to the " + edgeWord(mark.wasteToStart ? previousOf(edge) : nextOf(edge));
    }
    return text;
}

std::vector<WorkStep> markSteps(const Project& project, const Solved& solved, const std::vector<WorkStep>& kerfs) {
    WorkStep step;
    step.task = Task::Mark;
    step.text = "Mark the edges, with a tick on the waste side of each mark.";
    std::string marked;
    std::vector<std::string> faceDown;
    for (const SolvedLine& line : solved.lines) {
        std::vector<std::string> marks;
        for (const LineMark& mark : line.marks) {
            if (line.cut && !isLookedAt(line, mark, kerfs)) continue;
            step.see.push_back(mark.mark);
            marks.push_back(tickedMarkText(project, mark));
        }
        if (marks.empty()) continue;
        if (liesFaceDown(line, kerfs)) faceDown.push_back(line.id);
        step.lines.push_back(line.id);
        marked += "\n" + line.id + (line.cut ? ": " : " (a foot line, not cut): ");
        for (std::size_t i = 0; i < marks.size(); ++i) marked += (i > 0 ? "; " : "") + marks[i];
        marked += ".";
    }
    if (step.lines.empty()) return {};
    if (!faceDown.empty()) {
        step.text += " Carry those of " + listText(faceDown) +
                     " square over the edge to the back: the panel lies face down where they are cut.";
    }
    step.text += marked;
    return {trueStep(project), step};
}

}  // namespace kerfwall

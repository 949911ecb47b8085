// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/edge_marks.h"

#include "core/shop/heading.h"
#include "core/shop/step_text.h"

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

}  // namespace

std::string tickedMarkText(const Project& project, const LineMark& mark) {
    const std::string start = cornerWord(mark.mark.edge, previousOf(mark.mark.edge));
    const std::string end = cornerWord(mark.mark.edge, nextOf(mark.mark.edge));
    std::string text = markText(project, mark.mark);
    if (mark.wasteToStart && mark.wasteToEnd) {
        return text + ", ticks on both sides";
    }
    if (mark.wasteToStart || mark.wasteToEnd) {
        text += ", tick towards the " + (mark.wasteToStart ? start : end);
    }
    return text;
}

std::vector<WorkStep> markSteps(const Project& project, const Solved& solved) {
    WorkStep step;
    step.task = Task::Mark;
    step.text = "Mark the edges, with a tick on the waste side of each mark.";
    for (const SolvedLine& line : solved.lines) {
        if (line.cut && line.kerfs.empty()) {
            continue;
        }
        std::vector<std::string> marks;
        for (const LineMark& mark : line.marks) {
            step.see.push_back(mark.mark);
            marks.push_back(tickedMarkText(project, mark));
        }
        step.lines.push_back(line.id);
        step.text += " " + line.id + (line.cut ? ": " : " (a foot line, not cut): ");
        for (std::size_t i = 0; i < marks.size(); ++i) {
            step.text += (i > 0 ? "; " : "") + marks[i];
        }
        step.text += ".";
    }
    if (step.lines.empty()) {
        return {};
    }
    return {trueStep(project), step};
}

}  // namespace kerfwall

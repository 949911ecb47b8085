// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/step_drawing.h"

#include <algorithm>

#include "core/drawing/id_label.h"
#include "core/drawing/plan_parts.h"
#include "core/drawing/running_sizes.h"
#include "core/drawing/step_parts.h"
#include "core/shop/heading.h"
#include "core/shop/step_text.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kAroundBlade = kBladeAway + kBladeLong + kBladeWords;
constexpr double kAroundFence = 16;
constexpr double kAroundTurn = 21;
constexpr double kAroundStop = 18;
constexpr double kAroundMarks = 25;
constexpr double kCrossing = 0.3;  // share of a way that counts as going across a side

void takeIn(Box& box, const std::vector<Point>& places) {
    for (const Point at : places) {
        box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y)};
        box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y)};
    }
}

void makeRoom(StepRoom& room, Point towards, double mm) {
    if (towards.x < -kCrossing) room.left = std::max(room.left, mm);
    if (towards.x > kCrossing) room.right = std::max(room.right, mm);
    if (towards.y < -kCrossing) room.below = std::max(room.below, mm);
    if (towards.y > kCrossing) room.above = std::max(room.above, mm);
}

/// What long ids of lines take beyond the usual room.
double idRoom(const Project& project, const WorkStep& step) {
    if (step.task == Task::Kerf) return 0;
    double longest = 0;
    for (const LayoutLine& line : project.lines) longest = std::max(longest, idLength(pictureId(line.id)));
    return longest;
}

}  // namespace

StepRoom stepRoom(const Project& project, const Solved& solved, const OrderOfWork& order, std::size_t index) {
    const WorkStep& step = order.steps.at(index);
    const Lying lying = lyingAt(project, step);
    StepRoom room;
    room.panel = boundsLaid(project.panel, lying);
    if (!step.bores.empty() && !step.against) {
        for (const Edge edge : {project.panel.referenceEdge, oppositeOf(measuredEnd(project.panel))}) {
            makeRoom(room, lying.put(-1.0 * leftOf(edgeRun(project.panel, edge).along)), kRunningRoom);
        }
    }
    for (const EdgeMark& mark : step.see) {
        const Point off = lying.put(-1.0 * leftOf(edgeRun(project.panel, mark.edge).along));
        makeRoom(room, off, (step.task == Task::Mark ? kAroundMarks : kLongIdAway) + idRoom(project, step));
    }
    if (step.task != Task::Kerf && !step.against) return room;
    takeIn(room.panel, laid(railOf(project, solved, step), lying));
    if (const auto way = cutWayOf(project, solved, step)) makeRoom(room, -1.0 * way->forward, kAroundBlade);
    if (step.against) {
        const Point off = lying.put(-1.0 * leftOf(edgeRun(project.panel, *step.against).along));
        makeRoom(room, off, step.turn ? kAroundTurn : kAroundFence);
        if (step.stopEdge) makeRoom(room, lying.put(-1.0 * leftOf(edgeRun(project.panel, *step.stopEdge).along)), kAroundStop);
    }
    return room;
}

double fittingScale(const StepRoom& room, double width, double height) {
    constexpr double kLeast = 10;  // mm on paper the panel keeps
    const double across = std::max(kLeast, width - room.left - room.right);
    const double up = std::max(kLeast, height - room.below - room.above);
    return std::max((room.panel.high.x - room.panel.low.x) / across, (room.panel.high.y - room.panel.low.y) / up);
}

Drawing stepDrawing(const Project& project, const Solved& solved, const OrderOfWork& order, std::size_t index,
                    double markScale) {
    const WorkStep& step = order.steps.at(index);
    Drawing drawing;
    StepSheet sheet{drawing, project, solved, step, lyingAt(project, step), markScale};
    addPanelAfter(sheet, panelAfter(solved, order, index));
    addMachine(sheet);
    addHoleSizes(sheet);
    const StepRoom room = stepRoom(project, solved, order, index);
    drawing.bounds = {room.panel.low - markScale * Point{room.left, room.below},
                      room.panel.high + markScale * Point{room.right, room.above}};
    return drawing;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/plan_drawing.h"

#include "core/drawing/plan_parts.h"

namespace kerfwall {
namespace {

constexpr double kRoomOutside = 16;  // mm on paper round the panel, for ids, ticks and the reference edge

}  // namespace

Drawing planDrawing(const Project& project, const Solved& solved, const std::vector<Finding>& findings,
                    const PlanLayers& layers) {
    Drawing drawing;
    const Panel& panel = project.panel;
    const double room = kRoomOutside * layers.markScale;
    drawing.bounds = {{-room, -room}, {panel.width + room, panel.height + room}};
    const OutlineLoop border = rectangleLoop({0, 0}, {panel.width, panel.height});
    if (layers.fills) drawing.marks.emplace_back(Area{Ink::PanelFill, {border}, "panel"});
    if (layers.kerfs) addKerfs(drawing, project, solved, layers);
    if (layers.opening && layers.fills) {
        for (const SolvedCutout& cutout : solved.cutouts) {
            if (!cutout.opening.loops.empty()) {
                drawing.marks.emplace_back(Area{Ink::Waste, cutout.opening.loops, cutout.id});
            }
        }
    }
    drawing.marks.emplace_back(Area{Ink::PanelEdge, {border}, "panel"});
    addReferenceEdge(drawing, project, solved, layers);
    addLines(drawing, project, solved, layers);
    if (layers.strays) addStrays(drawing, solved, layers);
    if (layers.workpiece || layers.work) addWork(drawing, project, solved, layers);
    if (layers.opening) addOpenings(drawing, solved);
    if (layers.opening) addReliefHoles(drawing, solved, layers);
    addClampHoles(drawing, project, layers);
    addFences(drawing, project, solved, layers);
    if (layers.edgeMarks) addEdgeMarks(drawing, project, solved, layers);
    if (layers.dimensions) addSizes(drawing, project, solved, layers);
    if (layers.findings) addSigns(drawing, findings);
    return drawing;
}

}  // namespace kerfwall

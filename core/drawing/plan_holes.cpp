// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/plan_parts.h"

namespace kerfwall {
namespace {

constexpr double kCrossBeyond = 2;  // mm on paper a centre line runs past its hole

void addClampHole(Drawing& drawing, const Panel& panel, const ClampHole& hole, const std::string& id,
                  double scale) {
    const Run edge = edgeRun(panel, hole.edge);
    const Point in = leftOf(edge.along);
    const Point at = edge.start + hole.at * edge.along;
    const Point half = (hole.diameter / 2) * edge.along;
    const Point deep = hole.depth * in;
    drawing.marks.emplace_back(Stroke{Ink::Hidden, at - half, at - half + deep, id});
    drawing.marks.emplace_back(Stroke{Ink::Hidden, at - half + deep, at + half + deep, id});
    drawing.marks.emplace_back(Stroke{Ink::Hidden, at + half + deep, at + half, id});
    const Point beyond = kCrossBeyond * scale * in;
    drawing.marks.emplace_back(Stroke{Ink::Centre, at - beyond, at + deep + beyond, id});
}

}  // namespace

void addCross(Drawing& drawing, Point centre, double reach, const std::string& id) {
    drawing.marks.emplace_back(Stroke{Ink::Centre, centre - Point{reach, 0}, centre + Point{reach, 0}, id});
    drawing.marks.emplace_back(Stroke{Ink::Centre, centre - Point{0, reach}, centre + Point{0, reach}, id});
}

void addReliefHoles(Drawing& drawing, const Solved& solved, const PlanLayers& layers) {
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const Corner& corner : cutout.corners) {
            if (!corner.drill) continue;
            const double radius = corner.drill->diameter / 2;
            drawing.marks.emplace_back(Circle{Ink::ReliefHole, corner.drill->centre, radius, cutout.id});
            addCross(drawing, corner.drill->centre, radius + kCrossBeyond * layers.markScale, cutout.id);
        }
    }
}

void addClampHoles(Drawing& drawing, const Project& project, const PlanLayers& layers) {
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) {
        const ClampHole& hole = project.clampHoles[i];
        addClampHole(drawing, project.panel, hole, hole.id.empty() ? std::to_string(i + 1) : hole.id,
                     layers.markScale);
    }
}

}  // namespace kerfwall

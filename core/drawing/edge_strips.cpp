// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/edge_strips.h"

#include <algorithm>
#include <cmath>

#include "core/drawing/plan_parts.h"
#include "core/drawing/sheets.h"
#include "core/shop/panel_edges.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kBeside = 1.2;       // from a mark to its line's name
constexpr double kNameHeight = 3;
constexpr double kCrossBeyond = 2;
constexpr double kRoomForWords = 14;  // on a page, over each piece and for the bar below all
constexpr double kSame = 1e-9;

/// Where a line's stroke over a flap of that depth ends, along the edge.
double runOver(const Run& edge, Point heading, double depth) {
    const double in = dot(leftOf(edge.along), heading);
    return std::abs(in) < 1e-6 ? 0 : depth * dot(edge.along, heading) / in;
}

void addLine(Drawing& drawing, const Run& edge, const SolvedLine& line, const LineMark& mark, double thickness) {
    const double at = mark.mark.at;
    const double fold = kStripFlap + thickness;
    drawing.marks.emplace_back(Stroke{Ink::EdgeTick, {at, kStripFlap}, {at, fold}, line.id});
    const double over = at + runOver(edge, line.to - line.from, kStripFlap);
    drawing.marks.emplace_back(Stroke{Ink::LayoutLine, {at, fold}, {over, fold + kStripFlap}, line.id});
    const Point flag{at, kStripFlap + thickness / 2};
    if (mark.wasteToStart) drawing.marks.emplace_back(Stroke{Ink::WasteTick, flag, flag - Point{kWasteTick, 0}, line.id});
    if (mark.wasteToEnd) drawing.marks.emplace_back(Stroke{Ink::WasteTick, flag, flag + Point{kWasteTick, 0}, line.id});
    // On the kept side, on the back's flap.
    const bool right = mark.wasteToStart && !mark.wasteToEnd;
    drawing.marks.emplace_back(Stroke{Ink::EdgeTick, {at, kStripFlap}, {at, kStripFlap / 2}, line.id});
    drawing.marks.emplace_back(Label{Ink::Text, {at + (right ? kBeside : -kBeside), kStripFlap / 2}, line.id, kNameHeight,
                                     right ? Anchor::Left : Anchor::Right, 0, line.id});
}

/// Where the drill goes in, with its centre lines.
void addHole(Drawing& drawing, const Panel& panel, const ClampHole& hole) {
    const Point centre{hole.at, kStripFlap + panel.thickness - heightOf(panel, hole)};
    drawing.marks.emplace_back(Circle{Ink::ReliefHole, centre, hole.diameter / 2, "clamp hole"});
    addCross(drawing, centre, hole.diameter / 2 + kCrossBeyond, "clamp hole");
}

StripPages laidOut(const Project& project, double width, double height) {
    const double margin = std::max(project.printing.margin, kLeastMargin);
    const double room = (width - 2 * margin) / project.printing.scaleX;
    const double overlap = std::min(project.printing.overlap, room / 2);
    const double high = (2 * kStripFlap + project.panel.thickness) * project.printing.scaleY;
    StripPages pages{width, height, 1, {}};
    double top = height - margin;
    for (const Edge edge : kEdges) {
        const double length = edgeRun(project.panel, edge).length;
        for (double from = 0; from == 0 || from + overlap < length - kSame; from += room - overlap) {
            if (top - high - kRoomForWords < margin + kRoomForWords && top < height - margin) {
                ++pages.pages;
                top = height - margin;
            }
            top -= high + kRoomForWords;
            pages.pieces.push_back({edge, pages.pages - 1, from, std::min(length, from + room), {margin, top}});
        }
    }
    return pages;
}

}  // namespace

Drawing edgeStrip(const Project& project, const Solved& solved, Edge edge) {
    const Run run = edgeRun(project.panel, edge);
    const double thickness = project.panel.thickness;
    const double high = 2 * kStripFlap + thickness;
    Drawing drawing;
    drawing.bounds = {{0, 0}, {run.length, high}};
    drawing.marks.emplace_back(Area{Ink::PanelEdge, {rectangleLoop({0, 0}, {run.length, high})}, "strip"});
    for (const double fold : {kStripFlap, kStripFlap + thickness}) {
        drawing.marks.emplace_back(Stroke{Ink::Hidden, {0, fold}, {run.length, fold}, "fold"});
    }
    for (const SolvedLine& line : solved.lines) {
        for (const LineMark& mark : line.marks) {
            if (mark.mark.edge == edge) addLine(drawing, run, line, mark, thickness);
        }
    }
    for (const ClampHole& hole : project.clampHoles) {
        if (hole.edge == edge) addHole(drawing, project.panel, hole);
    }
    return drawing;
}

StripPages stripPages(const Project& project, double width, double height) {
    const StripPages upright = laidOut(project, std::min(width, height), std::max(width, height));
    const StripPages lying = laidOut(project, std::max(width, height), std::min(width, height));
    const auto cost = [](const StripPages& pages) { return std::pair(pages.pages, pages.pieces.size()); };
    return cost(lying) < cost(upright) ? lying : upright;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/pattern_drawing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/drawing/hatch.h"
#include "core/drawing/mirrored.h"
#include "core/drawing/plan_parts.h"
#include "core/shop/bore.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kHatchStep = 4;
constexpr double kCentreBeyond = 8;  // past the cutout
constexpr double kCrossBeyond = 2;   // past a bore
constexpr double kTangentReach = 4;  // to either side of the line
constexpr double kChord = std::numbers::pi / 36;

bool has(const Project& project, PatternLayer layer) {
    return std::ranges::find(project.printing.leaveOut, layer) == project.printing.leaveOut.end();
}

void addWaste(Drawing& drawing, const Solved& solved) {
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const auto& [from, to] : hatchOf(cutout.opening.loops, kHatchStep)) {
            drawing.marks.emplace_back(Stroke{Ink::Waste, from, to, cutout.id});
        }
    }
}

/// Level and upright through the middle of what each cutout takes in, to lay the template on lines drawn on the work.
void addCentres(Drawing& drawing, const Panel& panel, const Solved& solved) {
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (cutout.drawn.loops.empty()) continue;
        const Box box = cutout.drawn.bounds;
        const Point middle = 0.5 * (box.low + box.high);
        const Point low{std::max(0.0, box.low.x - kCentreBeyond), std::max(0.0, box.low.y - kCentreBeyond)};
        const Point high{std::min(panel.width, box.high.x + kCentreBeyond), std::min(panel.height, box.high.y + kCentreBeyond)};
        drawing.marks.emplace_back(Stroke{Ink::Centre, {low.x, middle.y}, {high.x, middle.y}, cutout.id});
        drawing.marks.emplace_back(Stroke{Ink::Centre, {middle.x, low.y}, {middle.x, high.y}, cutout.id});
    }
}

void addBores(Drawing& drawing, const Solved& solved) {
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const Corner& corner : cutout.corners) {
            if (!isBored(corner, solved)) continue;
            const Point centre = centreOf(corner, *corner.boreRadius);
            drawing.marks.emplace_back(Circle{Ink::ReliefHole, centre, *corner.boreRadius, cutout.id});
            addCross(drawing, centre, *corner.boreRadius + kCrossBeyond, cutout.id);
        }
    }
}

void addTangent(Drawing& drawing, Point corner, Point tangent, const std::string& id) {
    if (distance(corner, tangent) == 0) return;
    const Point across = kTangentReach * leftOf(unit(tangent - corner));
    drawing.marks.emplace_back(Stroke{Ink::EdgeTick, tangent - across, tangent + across, id});
}

void addTangents(Drawing& drawing, const Solved& solved) {
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const Corner& corner : cutout.corners) {
            if (!isBored(corner, solved)) continue;
            addTangent(drawing, corner.point, corner.firstTangent, corner.first);
            addTangent(drawing, corner.point, corner.secondTangent, corner.second);
        }
    }
}

PlanLayers planLayersOf(const Project& project) {
    PlanLayers layers;
    layers.fills = false;
    layers.idsInside = true;
    layers.workpiece = false;
    layers.kerfs = has(project, PatternLayer::Kerfs);
    layers.runOut = has(project, PatternLayer::RunOut);
    return layers;
}

/// A pattern is sawn to on the face it is glued on: there no layout line is hidden, whichever face it is drawn on.
void seeFromBack(Drawing& drawing, const Project& project) {
    std::erase_if(drawing.marks, [](const Mark& mark) {
        const auto* label = std::get_if<Label>(&mark);
        return label && label->text == "on the back";
    });
    for (Mark& mark : drawing.marks) {
        auto* stroke = std::get_if<Stroke>(&mark);
        if (!stroke || stroke->ink != Ink::BackLine) continue;
        const LayoutLine* line = findLine(project, stroke->id);
        stroke->ink = line && !line->cut ? Ink::FootLine : Ink::LayoutLine;
    }
}

void growTo(Box& box, Point place) {
    box.low = {std::min(box.low.x, place.x), std::min(box.low.y, place.y)};
    box.high = {std::max(box.high.x, place.x), std::max(box.high.y, place.y)};
}

struct Bounds {
    Box operator()(const Area& mark) const { return makeOutline(mark.loops).bounds; }
    Box operator()(const Stroke& mark) const {
        Box box{mark.from, mark.from};
        growTo(box, mark.to);
        return box;
    }
    Box operator()(const Circle& mark) const {
        const Point reach{mark.radius, mark.radius};
        return {mark.centre - reach, mark.centre + reach};
    }
    Box operator()(const Dimension& mark) const {
        Box box{mark.from, mark.from};
        growTo(box, mark.to);
        const Point reach{std::abs(mark.offset), std::abs(mark.offset)};
        return {box.low - reach, box.high + reach};
    }
    Box operator()(const Label& mark) const {
        const double reach = mark.height * static_cast<double>(mark.text.size() + 1);  // no letter is wider than it is high
        return {mark.at - Point{reach, reach}, mark.at + Point{reach, reach}};
    }
};

struct Stretches {
    std::vector<Stretch>& found;

    void operator()(const Stroke& mark) const {
        if (mark.ink != Ink::Waste) found.emplace_back(mark.from, mark.to);
    }
    void operator()(const Area& mark) const {
        for (const OutlineLoop& loop : mark.loops) addLoop(loop);
    }
    void operator()(const Circle& mark) const { addLoop(circleLoop(mark.centre, mark.radius)); }
    void operator()(const Dimension& mark) const { found.emplace_back(mark.from, mark.to); }
    void operator()(const Label&) const {}

    void addLoop(const OutlineLoop& loop) const {
        for (const OutlinePiece& piece : loop) {
            if (piece.isArc) {
                addArc(piece);
            } else {
                found.emplace_back(piece.from, piece.to);
            }
        }
    }
    void addArc(const OutlinePiece& arc) const {
        const double sweep = sweepOf(arc) * (arc.turn == Turn::Left ? 1 : -1);
        const int parts = std::max(1, static_cast<int>(std::ceil(std::abs(sweep) / kChord)));
        const double start = std::atan2(arc.from.y - arc.centre.y, arc.from.x - arc.centre.x);
        Point last = arc.from;
        for (int i = 1; i <= parts; ++i) {
            const double at = start + sweep * i / parts;
            const Point next = arc.centre + arc.radius * Point{std::cos(at), std::sin(at)};
            found.emplace_back(last, next);
            last = next;
        }
    }
};

}  // namespace

Drawing patternDrawing(const Project& project, const Solved& solved) {
    const PlanLayers layers = planLayersOf(project);
    Drawing drawing;
    const Panel& panel = project.panel;
    drawing.bounds = {{0, 0}, {panel.width, panel.height}};
    if (has(project, PatternLayer::Waste)) addWaste(drawing, solved);
    addKerfs(drawing, project, solved, layers);
    if (!layers.kerfs) std::erase_if(drawing.marks, [](const Mark& mark) {
        const auto* stroke = std::get_if<Stroke>(&mark);
        return stroke && stroke->ink == Ink::KerfBand;
    });
    drawing.marks.emplace_back(Area{Ink::PanelEdge, {rectangleLoop({0, 0}, {panel.width, panel.height})}, "panel"});
    if (has(project, PatternLayer::Reference)) addReferenceEdge(drawing, project, solved, layers);
    if (has(project, PatternLayer::Centres)) addCentres(drawing, panel, solved);
    addLines(drawing, project, solved, layers);
    if (has(project, PatternLayer::Work)) addWork(drawing, project, solved, layers);
    if (has(project, PatternLayer::Template)) addOpenings(drawing, solved);
    if (has(project, PatternLayer::Holes)) {
        addReliefHoles(drawing, solved, layers);
        addBores(drawing, solved);
    }
    if (has(project, PatternLayer::Tangents)) addTangents(drawing, solved);
    if (has(project, PatternLayer::ClampHoles)) addClampHoles(drawing, project, layers);
    if (has(project, PatternLayer::Fences)) addFences(drawing, project, solved, layers);
    if (has(project, PatternLayer::EdgeMarks)) addEdgeMarks(drawing, project, solved, layers);
    if (!has(project, PatternLayer::Names)) {
        std::erase_if(drawing.marks, [](const Mark& mark) { return std::holds_alternative<Label>(mark); });
    }
    if (project.printing.face != Face::Back) return drawing;
    seeFromBack(drawing, project);
    return mirrored(drawing, panel.width);
}

std::vector<Stretch> stretchesOf(const Drawing& drawing) {
    std::vector<Stretch> found;
    const Stretches gather{found};
    for (const Mark& mark : drawing.marks) std::visit(gather, mark);
    return found;
}

Box boundsOf(const Mark& mark) { return std::visit(Bounds{}, mark); }

Sheets patternSheets(const Project& project, const Solved& solved, const Paper& paper) {
    return sheetsFor(project.panel, project.printing, paper, stretchesOf(patternDrawing(project, solved)));
}

}  // namespace kerfwall

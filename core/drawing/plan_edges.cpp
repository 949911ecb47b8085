// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/drawing/id_label.h"
#include "core/drawing/plan_parts.h"
#include "core/geometry/angle.h"
#include "core/geometry/heading_hold.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kIdInside = 6;  // from the edge along the line, where ids stand inside
constexpr double kIdBeside = 3.4;
constexpr double kGroundAway = 1.6;
constexpr double kGroundStep = 4;
constexpr double kGroundLean = 2.2;
constexpr double kSquareMark = 5;
constexpr double kNameHeight = 3;
constexpr double kNameLength = 34;  // of the reference edge's name, with the room lines' names beside it take
constexpr double kNameAway = 4.8;  // from the edge to the reference edge's name
constexpr double kNameInside = 1.5;
constexpr double kBackWordsShare = 0.15;  // of a line's length, from where it comes in

Point outwards(const Run& edge) { return -1.0 * leftOf(edge.along); }

/// Outside the panel; on a pattern that may end at its edges only towards which side the waste lies, just inside on the line.
void addTick(Drawing& drawing, const Panel& panel, const SolvedLine& line, const LineMark& mark, const PlanLayers& layers) {
    const Run edge = edgeRun(panel, mark.mark.edge);
    const double scale = layers.markScale;
    const Point at = edge.start + mark.mark.at * edge.along;
    const Point out = outwards(edge);
    Point flag = at + 0.6 * kEdgeTick * scale * out;
    if (layers.idsInside) {
        flag = at + 0.6 * kEdgeTick * scale * unit(distance(at, line.from) < distance(at, line.to) ? line.to - line.from : line.from - line.to);
    } else {
        drawing.marks.emplace_back(Stroke{Ink::EdgeTick, at, at + kEdgeTick * scale * out, line.id});
    }
    if (mark.wasteToStart) {
        drawing.marks.emplace_back(
            Stroke{Ink::WasteTick, flag, flag - kWasteTick * scale * edge.along, line.id});
    }
    if (mark.wasteToEnd) {
        drawing.marks.emplace_back(
            Stroke{Ink::WasteTick, flag, flag + kWasteTick * scale * edge.along, line.id});
    }
}

/// Along the line from where it meets the edge, and beside it, where the wood is kept.
IdPlace insidePlace(const Panel& panel, const SolvedLine& line, Point at, double scale) {
    const Point along = unit(line.to - line.from);
    const Point inwards = distance(at, line.from) < distance(at, line.to) ? along : -1.0 * along;
    const bool wasteOnLeft = !line.kerfs.empty() && line.kerfs.front().side == Side::Left;
    const Point kept = (wasteOnLeft ? -1.0 : 1.0) * leftOf(along);
    const Point place = at + kIdInside * scale * inwards + kIdBeside * scale * kept;
    const double room = std::min(kIdBeside * scale, std::min(panel.width, panel.height) / 4);
    return {{std::clamp(place.x, room, panel.width - room), std::clamp(place.y, room, panel.height - room)}, inwards, 0, 0, scale};
}

/// Beside a line on the back, where it comes in, in words.
void addBackWords(Drawing& drawing, const SolvedLine& line, double scale) {
    const Point along = unit(line.to - line.from);
    const double turn = foldedAngle(degrees(std::atan2(along.y, along.x)));
    const Point beside = kNameInside * scale * (along.x < 0 || (along.x == 0 && along.y < 0) ? -1.0 : 1.0) * leftOf(along);
    drawing.marks.emplace_back(Label{Ink::FaintText, line.from + kBackWordsShare * (line.to - line.from) + beside, "on the back",
                                     kNameHeight, Anchor::Middle, turn, line.id});
}

bool isOnBack(const Project& project, const SolvedLine& line) {
    const LayoutLine* said = findLine(project, line.id);
    return said && said->drawnOn == Face::Back;
}

/// The id beside its mark: outside the panel, or just inside it on the side that is kept.
void addId(Drawing& drawing, const Project& project, const SolvedLine& line, const LineMark& mark,
           const PlanLayers& layers) {
    const Panel& panel = project.panel;
    const Run edge = edgeRun(panel, mark.mark.edge);
    const Point at = edge.start + mark.mark.at * edge.along;
    const double scale = layers.markScale;
    const IdPlace outside{at, outwards(edge), kIdAway, kLongIdAway, scale};
    drawing.marks.emplace_back(idLabel(line.id, layers.idsInside ? insidePlace(panel, line, at, scale) : outside));
}

void addSquareMark(Drawing& drawing, Point corner, Point first, Point second, double size) {
    const Point a = corner + size * first;
    const Point c = corner + size * second;
    const Point b = a + size * second;
    drawing.marks.emplace_back(Stroke{Ink::ReferenceEdge, a, b, "square"});
    drawing.marks.emplace_back(Stroke{Ink::ReferenceEdge, b, c, "square"});
}

struct ClearStretch {
    double middle = 0;
    double length = 0;
};

/// The longest stretch of an edge that no line meets.
ClearStretch clearStretch(const Solved& solved, Edge edge, double length) {
    std::vector<double> met{0, length};
    for (const SolvedLine& line : solved.lines) {
        for (const LineMark& mark : line.marks) {
            if (mark.mark.edge == edge) met.push_back(mark.mark.at);
        }
    }
    std::ranges::sort(met);
    std::size_t widest = 1;
    for (std::size_t i = 2; i < met.size(); ++i) {
        if (met[i] - met[i - 1] > met[widest] - met[widest - 1] + 1e-9) widest = i;
    }
    return {(met[widest] + met[widest - 1]) / 2, met[widest] - met[widest - 1]};
}

/// Along the edge, clear of the lines: under the ground line, or just inside where the pattern may end
/// at the edge.
void addReferenceName(Drawing& drawing, const Panel& panel, const Solved& solved, const PlanLayers& layers) {
    const Run edge = edgeRun(panel, panel.referenceEdge);
    const double scale = layers.markScale;
    // Read from below or from the right, whichever way the edge runs: the letters' foot lies outwards on
    // the bottom and the right edge, and inwards on the others.
    const bool footOutwards = edge.along.x > 0 || edge.along.y > 0;
    const ClearStretch clear = clearStretch(solved, panel.referenceEdge, edge.length);
    // Where lines stand close their names do: outside it goes beyond them.
    const bool isTight = clear.length < kNameLength * scale;
    const double nearest = layers.idsInside ? -kNameAway : isTight ? kIdAway + kIdHeight / 2 : kNameAway;
    const double letters = footOutwards == layers.idsInside ? 0 : kNameHeight * 0.75;
    const double away = nearest + (layers.idsInside ? -letters : letters);
    const Point at = edge.start + clear.middle * edge.along +
                     away * scale * outwards(edge);
    drawing.marks.emplace_back(Label{Ink::FaintText, at, "reference edge", kNameHeight, Anchor::Middle,
                                     edge.along.y == 0 ? 0.0 : 90.0, "reference"});
}

/// A line on the back cannot be seen from the layout face, whether it is cut or a mark.
Ink lineInk(const Project& project, const SolvedLine& line) {
    if (isOnBack(project, line)) return Ink::BackLine;
    return line.cut ? Ink::LayoutLine : Ink::FootLine;
}

}  // namespace

void addLines(Drawing& drawing, const Project& project, const Solved& solved, const PlanLayers& layers) {
    for (const SolvedLine& line : solved.lines) {
        drawing.marks.emplace_back(Stroke{lineInk(project, line), line.from, line.to, line.id});
        if (isOnBack(project, line)) addBackWords(drawing, line, layers.markScale);
    }
    for (const SolvedLine& line : solved.lines) {
        Point last{NAN, NAN};
        for (const LineMark& mark : line.marks) {
            const Run edge = edgeRun(project.panel, mark.mark.edge);
            const Point at = edge.start + mark.mark.at * edge.along;
            if (distance(at, last) < 1e-6) continue;  // a panel corner carries two marks and one id
            last = at;
            addId(drawing, project, line, mark, layers);
        }
    }
}

void addStrays(Drawing& drawing, const Solved& solved, const PlanLayers& layers) {
    for (const StrayLine& line : solved.strays) {
        drawing.marks.emplace_back(Stroke{Ink::StrayLine, line.from, line.to, line.id});
        const Point beside = kIdBeside * layers.markScale * leftOf(unit(line.to - line.from));
        drawing.marks.emplace_back(Label{Ink::FindingStop, 0.5 * (line.from + line.to) + beside, line.id, kIdHeight,
                                         Anchor::Middle, 0, line.id});
    }
}

void addEdgeMarks(Drawing& drawing, const Project& project, const Solved& solved, const PlanLayers& layers) {
    for (const SolvedLine& line : solved.lines) {
        for (const LineMark& mark : line.marks) addTick(drawing, project.panel, line, mark, layers);
    }
}

void addReferenceEdge(Drawing& drawing, const Project& project, const Solved& solved,
                      const PlanLayers& layers) {
    const Panel& panel = project.panel;
    const Run edge = edgeRun(panel, panel.referenceEdge);
    const Point out = outwards(edge);
    const double scale = layers.markScale;
    // A pattern may end at the edge: there the edge itself is the ground line, hatched on the panel's side.
    const Point away = layers.idsInside ? -1.0 * out : out;
    const Point base = edge.start + (layers.idsInside ? 0.0 : kGroundAway) * scale * out;
    if (!layers.idsInside) {
        drawing.marks.emplace_back(Stroke{Ink::ReferenceEdge, base, base + edge.length * edge.along, "reference"});
    }
    const double step = std::max(kGroundStep * scale, edge.length / 400);
    for (double at = step / 2; at < edge.length; at += step) {
        const Point top = base + at * edge.along;
        const Point foot = top + kGroundLean * scale * (away - edge.along);
        drawing.marks.emplace_back(Stroke{Ink::ReferenceEdge, top, foot, "reference"});
    }
    addReferenceName(drawing, panel, solved, layers);
    const SquareCorner square = panel.squareCorner;
    const double size = std::min(kSquareMark * scale, std::min(panel.width, panel.height) / 4);
    const Point in = -1.0 * out;
    const Point end = edge.start + edge.length * edge.along;
    const bool all = square == SquareCorner::All;
    if (all || square == SquareCorner::Start || square == SquareCorner::Both) {
        addSquareMark(drawing, edge.start, edge.along, in, size);
    }
    if (all || square == SquareCorner::End || square == SquareCorner::Both) {
        addSquareMark(drawing, end, -1.0 * edge.along, in, size);
    }
    if (!all) return;
    const bool level = panel.referenceEdge == Edge::Bottom || panel.referenceEdge == Edge::Top;
    const Point up = (level ? panel.height : panel.width) * in;
    addSquareMark(drawing, edge.start + up, edge.along, out, size);
    addSquareMark(drawing, end + up, -1.0 * edge.along, out, size);
}

}  // namespace kerfwall

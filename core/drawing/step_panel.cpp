// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/drawing/plan_parts.h"
#include "core/drawing/step_parts.h"
#include "core/geometry/angle.h"
#include "core/geometry/edge_name.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/fence_place.h"
#include "core/geometry/inset.h"
#include "core/geometry/kerf_band.h"
#include "core/shop/bore.h"
#include "core/shop/rough_cut.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kNameHeight = 2.8;
constexpr double kNameInside = 3.2;
constexpr double kPastMouth = 0.4;
const std::string kReference = ", the reference";

template <typename Thing>
bool holds(const std::vector<Thing>& all, const Thing& one) {
    return std::ranges::find(all, one) != all.end();
}

class PanelSketch {
  public:
    PanelSketch(StepSheet& sheet, const PanelAfter& after) : m_sheet(sheet), m_after(after) {}

    void draw() {
        const Panel& panel = m_sheet.project.panel;
        const OutlineLoop border = rectangleLoop({0, 0}, {panel.width, panel.height});
        area(Ink::PanelFill, {border}, "panel");
        addLines();
        addKerfs(m_after.before, false);
        area(Ink::PanelEdge, {border}, "panel");
        addEdgeNames();
        addOpenings();
        addKerfs(m_after.here, true);
        addFixtures();
        addCleaned();
        addStepMarks(m_sheet, m_after);
    }

  private:
    void area(Ink ink, const std::vector<OutlineLoop>& loops, const std::string& id) {
        m_sheet.drawing.marks.emplace_back(Area{ink, laid(loops, m_sheet.lying), id});
    }
    void stroke(Ink ink, Point from, Point to, const std::string& id) {
        m_sheet.drawing.marks.emplace_back(Stroke{ink, m_sheet.lying.put(from), m_sheet.lying.put(to), id});
    }
    [[nodiscard]] bool isLayoutUp() const { return m_sheet.step.faceUp; }

    /// Layout lines can be seen on the layout face alone.
    void addLines() {
        if (!isLayoutUp()) return;
        for (const SolvedLine& line : m_sheet.solved.lines) {
            if (!holds(m_after.before.lines, line.id) && !holds(m_after.here.lines, line.id)) continue;
            stroke(line.cut ? Ink::LayoutLine : Ink::FootLine, line.from, line.to, line.id);
        }
    }

    /// Cut from below, a kerf lies on the face that is down.
    void addKerfs(const WorkDone& done, bool isHere) {
        for (const KerfPlace& place : done.kerfs) {
            const SolvedLine& line = m_sheet.solved.lines[place.line];
            const Kerf& kerf = line.kerfs[place.kerf];
            const auto band = [&](double from, double to) {
                const std::vector<Point> corners = kerfBand(m_sheet.project.panel, line, kerf, from, to);
                std::vector<OutlineLoop> loops;
                if (corners.size() > 2) loops.push_back(polygonLoop(corners));
                return loops;
            };
            if (kerf.stopped) {
                area(Ink::RunOut, band(kerf.surfaceFrom, kerf.surfaceTo), line.id);
            }
            const auto full = band(kerf.fullFrom, kerf.fullTo);
            if (isHere) area(Ink::Here, full, line.id);
            else if (isLayoutUp()) area(Ink::KerfBand, full, line.id);
            area(isHere ? Ink::HereEdge : isLayoutUp() ? Ink::LayoutLine : Ink::Hidden, full, line.id);
        }
    }

    /// What is open through the whole thickness is seen from either face. A trimmed opening is the template's; a hole
    /// in it has gone with the waste.
    void addOpenings() {
        std::vector<std::vector<OutlineLoop>> open;
        for (std::size_t i = 0; i < m_sheet.solved.cutouts.size(); ++i) {
            if (isTrimmed(i)) {
                addTrimmed(i);
            } else if (holds(m_after.before.sawnOut, i) || holds(m_after.here.sawnOut, i)) {
                open.push_back(roughOutline(i).loops);
            }
        }
        for (const WorkDone* done : {&m_after.before, &m_after.here}) {
            for (const ReliefHole& hole : done->holes) {
                if (!isGone(hole.centre)) open.push_back({circleLoop(hole.centre, hole.diameter / 2)});
            }
        }
        // All borders first, then all openings: where two meet nothing is left between them.
        for (const auto& loops : open) area(Ink::PanelEdge, loops, "open");
        for (const auto& loops : open) area(Ink::Opened, loops, "open");
        for (const auto& loops : open) addMouths(loops);
        for (const std::size_t cutout : m_after.here.sawnOut) {
            const std::vector<OutlineLoop> loops = roughOutline(cutout).loops;
            area(Ink::Here, loops, m_sheet.solved.cutouts[cutout].id);
            area(Ink::HereEdge, loops, m_sheet.solved.cutouts[cutout].id);
            addMouths(loops);
        }
        for (const ReliefHole& hole : m_after.here.holes) addHoleHere(hole);
    }

    void addTrimmed(std::size_t index) {
        const SolvedCutout& cutout = m_sheet.solved.cutouts[index];
        area(Ink::Opened, cutout.opening.loops, cutout.id);
        if (holds(m_after.here.trimmed, index)) {
            std::vector<OutlineLoop> rest = cutout.opening.loops;
            const Outline rough = roughOutline(index);
            rest.insert(rest.end(), rough.loops.begin(), rough.loops.end());
            area(Ink::Here, rest, cutout.id);
            area(Ink::HereEdge, rough.loops, cutout.id);
        }
        area(Ink::Template, cutout.opening.loops, cutout.id);
        addMouths(cutout.opening.loops);
    }

    /// Where an opening runs out over the panel's edge there is no edge left.
    void addMouths(const std::vector<OutlineLoop>& loops) {
        for (const OutlineLoop& loop : loops) {
            for (const OutlinePiece& piece : loop) {
                const auto edge = std::ranges::find(kEdges, piece.on, [](Edge is) { return std::string(edgeName(is)); });
                if (edge == kEdges.end()) continue;
                const Point out = -kPastMouth * m_sheet.scale * leftOf(edgeHeading(*edge));
                area(Ink::Opened, {polygonLoop({piece.from + out, piece.to + out, piece.to - out, piece.from - out})}, "mouth");
            }
        }
    }

    void addHoleHere(const ReliefHole& hole) {
        area(Ink::Here, {circleLoop(hole.centre, hole.diameter / 2)}, "hole");
        area(Ink::HereEdge, {circleLoop(hole.centre, hole.diameter / 2)}, "hole");
        const double reach = hole.diameter / 2 + 2 * m_sheet.scale;
        stroke(Ink::Centre, hole.centre - Point{reach, 0}, hole.centre + Point{reach, 0}, "hole");
        stroke(Ink::Centre, hole.centre - Point{0, reach}, hole.centre + Point{0, reach}, "hole");
    }

    void addFixtures() {
        for (const bool isHere : {false, true}) {
            const WorkDone& done = isHere ? m_after.here : m_after.before;
            for (const std::size_t index : done.clampHoles) addClampHole(m_sheet.project.clampHoles.at(index), isHere);
            for (const std::size_t index : done.grooves) addGroove(m_sheet.project.fences.at(index), isHere);
            for (const std::size_t index : done.fences) addFence(m_sheet.project.fences.at(index), isHere);
        }
    }

    void addClampHole(const ClampHole& hole, bool isHere) {
        const Run edge = edgeRun(m_sheet.project.panel, hole.edge);
        const Point at = edge.start + hole.at * edge.along;
        const Point half = (hole.diameter / 2) * edge.along;
        const Point deep = hole.depth * leftOf(edge.along);
        const std::vector<OutlineLoop> loops{polygonLoop({at - half, at + half, at + half + deep, at - half + deep})};
        if (isHere) area(Ink::Here, loops, "clamp hole");
        area(isHere ? Ink::HereEdge : Ink::Hidden, loops, "clamp hole");
        const Point past = 2 * m_sheet.scale * leftOf(edge.along);
        stroke(Ink::Centre, at - past, at + deep + past, "clamp hole");
    }

    void addFence(const Fence& fence, bool isHere) {
        const std::vector<Point> body = fenceBody(m_sheet.project, m_sheet.solved, fence);
        if (body.empty()) return;
        const bool isSeen = (fence.face != Face::Back) == isLayoutUp();
        if (isHere) area(Ink::Here, {polygonLoop(body)}, "fixed fence");
        area(isHere ? Ink::HereEdge : isSeen ? Ink::FenceBody : Ink::Hidden, {polygonLoop(body)}, "fixed fence");
    }

    void addGroove(const Fence& fence, bool isHere) {
        const std::vector<Point> body = fenceBody(m_sheet.project, m_sheet.solved, fence);
        if (body.empty()) return;
        const bool isSeen = (fence.face != Face::Back) == isLayoutUp();
        if (isHere || isSeen) area(isHere ? Ink::Here : Ink::KerfBand, {polygonLoop(body)}, "groove");
        area(isHere ? Ink::HereEdge : isSeen ? Ink::LayoutLine : Ink::Hidden, {polygonLoop(body)}, "groove");
    }

    /// Where a bored corner is cleaned by hand: from tangent point to tangent point.
    void addCleaned() {
        for (const std::size_t index : m_after.here.cleaned) {
            const SolvedCutout& cutout = m_sheet.solved.cutouts[index];
            for (const Corner& corner : cutout.corners) {
                if (!isBored(corner, m_sheet.solved)) continue;
                for (const Point at : {corner.firstTangent, corner.secondTangent}) {
                    area(Ink::HereEdge, {circleLoop(at, 1.6 * m_sheet.scale)}, cutout.id);
                }
            }
        }
    }

    /// Just inside each edge, in the middle of its longest stretch that no line meets.
    void addEdgeNames() {
        const Panel& panel = m_sheet.project.panel;
        for (const Edge edge : kEdges) {
            const Run run = edgeRun(panel, edge);
            const auto [from, to] = clearStretch(edge, run.length);
            const Point middle = run.start + (from + to) / 2 * run.along;
            const Point at = m_sheet.lying.put(middle + kNameInside * m_sheet.scale * leftOf(run.along));
            std::string name = std::string(edgeName(edge)) + " edge";
            if (edge == panel.referenceEdge && fits(name + kReference, to - from)) name += kReference;
            if (!fits(name, to - from)) continue;
            const Point along = m_sheet.lying.put(run.along);
            const bool back = along.x < -1e-9 || (along.x < 1e-9 && along.y < 0);
            const Point reads = back ? -1.0 * along : along;
            const double turn = degrees(std::atan2(reads.y, reads.x));
            const Point drop = -0.36 * kNameHeight * m_sheet.scale * leftOf(reads);
            m_sheet.drawing.marks.emplace_back(
                Label{Ink::FaintText, at + drop, name, kNameHeight, Anchor::Middle, turn, "edge " + std::string(edgeName(edge))});
        }
    }
    /// Letters are about six tenths of their height wide.
    [[nodiscard]] bool fits(const std::string& text, double room) const {
        return 0.62 * kNameHeight * m_sheet.scale * static_cast<double>(text.size()) < room;
    }
    [[nodiscard]] std::pair<double, double> clearStretch(Edge edge, double length) const {
        std::vector<double> met{0, length};
        for (const SolvedLine& line : m_sheet.solved.lines) {
            for (const LineMark& mark : line.marks) {
                if (mark.mark.edge == edge) met.push_back(mark.mark.at);
            }
        }
        std::ranges::sort(met);
        std::size_t widest = 1;
        for (std::size_t i = 2; i < met.size(); ++i) {
            if (met[i] - met[i - 1] > met[widest] - met[widest - 1] + 1e-9) widest = i;
        }
        return {met[widest - 1], met[widest]};
    }

    [[nodiscard]] bool isTrimmed(std::size_t cutout) const {
        return holds(m_after.before.trimmed, cutout) || holds(m_after.here.trimmed, cutout);
    }
    [[nodiscard]] bool isGone(Point hole) const {
        for (std::size_t i = 0; i < m_sheet.solved.cutouts.size(); ++i) {
            if (isTrimmed(i) && isInside(m_sheet.solved.cutouts[i].opening, hole)) return true;
        }
        return false;
    }
    [[nodiscard]] Outline roughOutline(std::size_t index) const {
        const SolvedCutout& cutout = m_sheet.solved.cutouts[index];
        const double left = roughCutOf(m_sheet.solved, cutout).mostLeft;
        return left > 0 ? insetOf(cutout.drawn, left, m_sheet.project.panel) : cutout.drawn;
    }

    StepSheet& m_sheet;
    const PanelAfter& m_after;
};

}  // namespace

void addPanelAfter(StepSheet& sheet, const PanelAfter& after) { PanelSketch(sheet, after).draw(); }

}  // namespace kerfwall

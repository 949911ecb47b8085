// SPDX-License-Identifier: GPL-3.0-or-later
// The edge marks on a step's picture, with their lines' names and, where they are made, what to measure.
#include <algorithm>
#include <cmath>

#include "core/drawing/drawn_size.h"
#include "core/drawing/id_label.h"
#include "core/drawing/plan_parts.h"
#include "core/drawing/running_sizes.h"
#include "core/drawing/step_parts.h"
#include "core/geometry/edge_place.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kMeasureAway = 11;
constexpr double kOverBlade = 6;
constexpr double kNameStep = 1.15 * kIdHeight;  // from name to name

template <typename Thing>
bool holds(const std::vector<Thing>& all, const Thing& one) {
    return std::ranges::find(all, one) != all.end();
}

struct ShownMark {
    const SolvedLine* line = nullptr;
    const LineMark* mark = nullptr;
    bool inView = false;
    double nameAt = 0;  ///< along the edge, where its name has room
};

class MarksSketch {
  public:
    MarksSketch(StepSheet& sheet, const PanelAfter& after) : m_sheet(sheet), m_after(after) {}

    void draw() {
        for (const Edge edge : kEdges) {
            std::vector<ShownMark> shown = shownOn(edge);
            std::ranges::sort(shown, {}, [](const ShownMark& is) { return is.mark->mark.at; });
            std::vector<double> wanted;
            for (const ShownMark& is : shown) wanted.push_back(is.mark->mark.at);
            const std::vector<double> apart = movedApart(wanted, kNameStep * m_sheet.scale);
            for (std::size_t i = 0; i < shown.size(); ++i) shown[i].nameAt = apart[i];
            for (const ShownMark& is : shown) add(is);
        }
    }

  private:
    [[nodiscard]] std::vector<ShownMark> shownOn(Edge edge) const {
        const WorkStep& step = m_sheet.step;
        const bool isCovered = edge == step.against || edge == step.stopEdge;
        std::vector<ShownMark> shown;
        for (const SolvedLine& line : m_sheet.solved.lines) {
            for (const LineMark& mark : line.marks) {
                if (mark.mark.edge != edge) continue;
                const bool isMade = holds(m_after.before.marks, mark.mark) || holds(m_after.here.marks, mark.mark);
                const bool inView = holds(step.see, mark.mark) && (holds(step.lines, line.id) || step.lines.empty());
                const bool isShown = isMade && step.task != Task::Kerf && !isCovered && bounds(line.id);
                if (inView || isShown) shown.push_back({&line, &mark, inView, 0});
            }
        }
        return shown;
    }

    /// A step about one cutout shows the marks of its lines.
    [[nodiscard]] bool bounds(const LineId& line) const {
        if (m_sheet.step.cutout.empty()) return true;
        const auto cutout = std::ranges::find(m_sheet.solved.cutouts, m_sheet.step.cutout, &SolvedCutout::id);
        return cutout == m_sheet.solved.cutouts.end() || holdsLine(cutout->walls, line);
    }
    static bool holdsLine(const std::vector<Wall>& walls, const LineId& line) {
        return std::ranges::find(walls, line, &Wall::line) != walls.end();
    }

    void stroke(Ink ink, Point from, Point to, const std::string& id) {
        m_sheet.drawing.marks.emplace_back(Stroke{ink, m_sheet.lying.put(from), m_sheet.lying.put(to), id});
    }

    void add(const ShownMark& is) {
        const LineMark& mark = *is.mark;
        const LineId& id = is.line->id;
        const Run edge = edgeRun(m_sheet.project.panel, mark.mark.edge);
        const Point at = edge.start + mark.mark.at * edge.along;
        const Point name = edge.start + is.nameAt * edge.along;
        const Point out = -m_sheet.scale * leftOf(edge.along);
        const Ink ink = is.inView ? Ink::HereEdge : Ink::EdgeTick;
        stroke(ink, at, at + kEdgeTick * out, id);
        const Point flag = at + 0.6 * kEdgeTick * out;
        const Point side = kWasteTick * m_sheet.scale * edge.along;
        if (mark.wasteToStart) stroke(ink, flag, flag - side, id);
        if (mark.wasteToEnd) stroke(ink, flag, flag + side, id);
        if (!m_after.here.marks.empty() && is.inView) addMeasure(mark.mark, name + idLength(pictureId(id)) * out, out);
        // Long names are for where the marks are used: elsewhere they would take the picture's room.
        if (is.inView || !isLongId(id)) addName(id, m_sheet.lying.put(name), unit(m_sheet.lying.put(out)));
    }

    void addName(const LineId& id, Point at, Point way) {
        Label label = idLabel(pictureId(id), {at, way, kIdAway, kLongIdAway, m_sheet.scale});
        label.id = id;
        if (m_sheet.step.task == Task::Kerf && isLongId(id)) {  // along the way stands the blade: level, over it where it lies level
            const double up = std::abs(way.x) > std::abs(way.y) ? kOverBlade : -kIdHeight / 3;
            label.at = at + kIdAway * m_sheet.scale * way + Point{0, up * m_sheet.scale};
            label.anchor = Anchor::Middle;
            label.turn = 0;
        }
        m_sheet.drawing.marks.emplace_back(label);
    }

    /// Where a mark is made, how far it stands from the edge it is measured from: beyond its name, along the way out.
    void addMeasure(const EdgeMark& mark, Point at, Point out) {
        const std::string number = drawnSetting(measuredAlong(m_sheet.project.panel, mark), m_sheet.project.units);
        m_sheet.drawing.marks.emplace_back(
            outsideNumber(m_sheet, m_sheet.lying.put(at + kMeasureAway * out), m_sheet.lying.put(out), number, "measure"));
    }

    StepSheet& m_sheet;
    const PanelAfter& m_after;
};

}  // namespace

void addStepMarks(StepSheet& sheet, const PanelAfter& after) { MarksSketch(sheet, after).draw(); }

}  // namespace kerfwall

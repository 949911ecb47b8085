// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/drawing/drawn_size.h"
#include "core/drawing/plan_parts.h"
#include "core/drawing/running_sizes.h"
#include "core/drawing/step_parts.h"
#include "core/geometry/edge_place.h"
#include "core/shop/heading.h"
#include "core/shop/step_text.h"

namespace kerfwall {
namespace {

constexpr double kSameSize = 0.005;      // mm: sizes that read the same
constexpr std::size_t kMostSizes = 6;    // from one edge; more would not be read
constexpr double kRowStep = 8;           // mm on paper
constexpr double kClampSizeInside = 9;   // mm on paper

/// Distances of the holes from one edge, each drawn once, by turns at the first and the last hole that has it.
class SizesFrom {
  public:
    SizesFrom(StepSheet& sheet, Edge from, Edge other) : m_sheet(sheet), m_from(from), m_other(other) {}

    void draw() {
        std::vector<ReliefHole> holes = m_sheet.step.bores;
        std::ranges::sort(holes, {}, [&](const ReliefHole& hole) { return off(m_from, hole); });
        std::size_t drawn = 0;
        for (std::size_t first = 0; first < holes.size() && drawn < kMostSizes; ++drawn) {
            std::size_t end = first;
            while (end < holes.size() && off(m_from, holes[end]) - off(m_from, holes[first]) < kSameSize) ++end;
            const auto same = std::ranges::subrange(holes.begin() + static_cast<std::ptrdiff_t>(first),
                                                    holes.begin() + static_cast<std::ptrdiff_t>(end));
            const auto byOther = [&](const ReliefHole& hole) { return off(m_other, hole); };
            const bool byFirst = drawn % 2 == 0;
            // Holes of one row would have their sizes over one another.
            const double aside = isOneRow(holes) ? kRowStep * static_cast<double>(drawn) * m_sheet.scale : 0;
            add(byFirst ? *std::ranges::min_element(same, {}, byOther) : *std::ranges::max_element(same, {}, byOther), aside);
            first = end;
        }
    }

  private:
    [[nodiscard]] double off(Edge edge, const ReliefHole& hole) const {
        return distanceFromEdge(m_sheet.project.panel, edge, hole.centre);
    }
    [[nodiscard]] std::string name() const {
        return m_sheet.step.against == m_from ? "fence" : m_sheet.step.stopEdge == m_from ? "stop" : "hole";
    }
    [[nodiscard]] bool isOneRow(const std::vector<ReliefHole>& holes) const {
        const auto [low, high] = std::ranges::minmax(holes, {}, [&](const ReliefHole& hole) { return off(m_other, hole); });
        return off(m_other, high) - off(m_other, low) < kSameSize;
    }
    void add(const ReliefHole& hole, double aside) {
        const double size = off(m_from, hole);
        const Point foot = hole.centre - size * leftOf(edgeHeading(m_from));
        m_sheet.drawing.marks.emplace_back(Dimension{m_sheet.lying.put(foot), m_sheet.lying.put(hole.centre), aside,
                                                     drawnSetting(size, m_sheet.project.units), name(), {}});
    }

    StepSheet& m_sheet;
    Edge m_from;
    Edge m_other;
};

/// Along its edge, a step further in for each hole.
void addClampSizes(StepSheet& sheet) {
    const Panel& panel = sheet.project.panel;
    double inside = kClampSizeInside;
    for (const std::size_t index : sheet.step.clampHoles) {
        const ClampHole& hole = sheet.project.clampHoles.at(index);
        const Run run = edgeRun(panel, hole.edge);
        const double size = measuredAlong(panel, {hole.edge, hole.at});
        const double start = std::abs(size - hole.at) < kSameSize ? 0 : run.length;
        const Point in = inside * sheet.scale * leftOf(run.along);
        sheet.drawing.marks.emplace_back(Dimension{sheet.lying.put(run.start + start * run.along + in),
                                                   sheet.lying.put(run.start + hole.at * run.along + in), 0,
                                                   drawnSetting(size, sheet.project.units), "clamp hole", {}});
        inside += kClampSizeInside / 2;
    }
}

}  // namespace

double measuredAlong(const Panel& panel, const EdgeMark& mark) {
    return distanceFromEdge(panel, measuredFrom(panel, mark.edge), markPlace(panel, mark));
}

void addHoleSizes(StepSheet& sheet) {
    const Edge end = measuredEnd(sheet.project.panel);
    const Edge reference = sheet.project.panel.referenceEdge;
    if (sheet.step.against) {  // a setting of the press
        SizesFrom(sheet, end, reference).draw();
        SizesFrom(sheet, reference, end).draw();
    } else {  // laid out on the panel
        std::vector<Point> centres;
        for (const ReliefHole& hole : sheet.step.bores) centres.push_back(hole.centre);
        addRunningSizes(sheet, end, reference, centres);
        addRunningSizes(sheet, reference, oppositeOf(end), centres);
    }
    addClampSizes(sheet);
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/end_hold.h"

#include <algorithm>

#include "core/geometry/clip.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/whole_step.h"

namespace kerfwall {
namespace {

constexpr double kEdgeShare = 2;        // of the reach: lines begin on edges
constexpr double kBareEdgeShare = 0.5;  // ... without snapping too, as the hand can point
constexpr double kMarkShare = 0.5;  // of the reach: whole steps between marks must stay within the hand's power

/// The nearest of the places that were offered, within reach.
class Nearest {
public:
    Nearest(Point place, double reach) : m_place(place), m_nearest(reach) {}
    void offer(const Hold& hold) {
        const double away = distance(hold.at, m_place);
        if (away >= m_nearest) return;
        m_nearest = away;
        m_best = hold;
    }
    const std::optional<Hold>& best() const { return m_best; }

private:
    Point m_place;
    double m_nearest;
    std::optional<Hold> m_best;
};

Hold holdOf(HoldOn on, Point at, const LineId& first = {}, const LineId& second = {}) {
    Hold hold;
    hold.on = on;
    hold.at = at;
    hold.first = first;
    hold.second = second;
    return hold;
}

std::optional<Hold> crossingNear(const Solved& solved, Point place, double reach) {
    Nearest nearest(place, reach);
    for (std::size_t i = 0; i < solved.lines.size(); ++i) {
        for (std::size_t j = i + 1; j < solved.lines.size(); ++j) {
            const SolvedLine &first = solved.lines[i], &second = solved.lines[j];
            if (const auto meet = crossingPlace(first, second)) {
                nearest.offer(holdOf(HoldOn::Crossing, *meet, first.id, second.id));
            }
        }
    }
    return nearest.best();
}

std::optional<Hold> laidPointNear(const Project& project, Point place, double reach) {
    Nearest nearest(place, reach);
    for (const LayoutLine& line : project.lines) {
        if (const auto* points = std::get_if<ByPoints>(&line.place)) {
            nearest.offer(holdOf(HoldOn::LaidPoint, points->p, line.id));
            nearest.offer(holdOf(HoldOn::LaidPoint, points->q, line.id));
        } else if (const auto* angle = std::get_if<ByAngle>(&line.place)) {
            if (const auto* through = std::get_if<Point>(&angle->through)) {
                nearest.offer(holdOf(HoldOn::LaidPoint, *through, line.id));
            }
        }
    }
    return nearest.best();
}

std::optional<Hold> markNear(const Panel& panel, const Solved& solved, const EdgeMark& raw, double reach) {
    Nearest nearest(markPlace(panel, raw), reach);
    for (const SolvedLine& line : solved.lines) {
        for (const LineMark& mark : line.marks) {
            if (mark.mark.edge == raw.edge) nearest.offer(holdOf(HoldOn::LineEnd, markPlace(panel, mark.mark), line.id));
        }
    }
    const double whole = edgeLength(panel, raw.edge);
    nearest.offer(holdOf(HoldOn::PanelCorner, markPlace(panel, {raw.edge, 0})));
    nearest.offer(holdOf(HoldOn::PanelCorner, markPlace(panel, {raw.edge, whole})));
    Hold middle = holdOf(HoldOn::EdgeMiddle, markPlace(panel, {raw.edge, whole / 2}));
    middle.base = raw.edge;
    nearest.offer(middle);
    return nearest.best();
}

/// On whole steps from the reference edge and the edge square to it, so that the numbers are those the maker sets off.
Point onSteps(const Panel& panel, Point place, double step) {
    const Edge square = squareEdge(panel);
    const bool fromTop = panel.referenceEdge == Edge::Top || square == Edge::Top;
    const bool fromRight = panel.referenceEdge == Edge::Right || square == Edge::Right;
    const auto along = [&](double value, double size, bool fromEnd) {
        if (value <= 0 || value >= size) return std::clamp(value, 0.0, size);
        return std::clamp(fromEnd ? size - stepped(size - value, step) : stepped(value, step), 0.0, size);
    };
    return {along(place.x, panel.width, fromRight), along(place.y, panel.height, fromTop)};
}

HeldEnd onEdge(const Project& project, const Solved& solved, const Catching& catching, Point place) {
    const EdgeMark raw = nearestMark(project.panel, place);
    HeldEnd end;
    end.edge = raw.edge;
    if (catching.snap) end.hold = markNear(project.panel, solved, raw, catching.reach * kMarkShare);
    end.place = end.hold ? end.hold->at : onSteps(project.panel, markPlace(project.panel, raw), catching.step);
    return end;
}

}  // namespace

HeldEnd holdEnd(const Project& project, const Solved& solved, const Catching& catching, Point place) {
    const Panel& panel = project.panel;
    const double fromEdge = distance(markPlace(panel, nearestMark(panel, place)), place);
    if (!liesOnPanel(panel, place)) return onEdge(project, solved, catching, place);
    HeldEnd end;
    if (catching.snap) {
        end.hold = crossingNear(solved, place, catching.reach);
        if (!end.hold && fromEdge > catching.reach) end.hold = laidPointNear(project, place, catching.reach);
    }
    if (!end.hold && fromEdge <= catching.reach * (catching.snap ? kEdgeShare : kBareEdgeShare)) return onEdge(project, solved, catching, place);
    end.place = end.hold ? end.hold->at : onSteps(panel, place, catching.step);
    return end;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/placing.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/geometry/clip.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/fence_place.h"
#include "core/geometry/moving.h"
#include "core/geometry/solve.h"

namespace kerfwall {
namespace {

constexpr double kOnOneLine = 1e-5;  // mm: well over what tidied() moves a line that leaves the panel far from where it is held
constexpr double kParallel = 1e-9;    // sine under which a line runs along another

class Placing {
public:
    Placing(const Panel& panel, const Solved& solved, const LineRun& run, const Motion& motion, const Renamed& renamed)
        : m_panel(panel), m_solved(solved), m_run(run), m_motion(motion), m_renamed(renamed) {}

    Place operator()(ByOffset place) const;
    Place operator()(ByAngle place) const;
    Place operator()(ByPoints place) const;
    Place operator()(const ByMarks& place) const;
    Place operator()(ByMirror place) const;

private:
    Point from() const { return moved(m_motion, m_run.first); }
    Point to() const { return moved(m_motion, m_run.second); }
    Point heading() const { return unit(to() - from()); }
    std::optional<LineId> alongWith(const Base& base) const;
    Place turned(const Base& base, Point through) const;
    double mirroredAngle(Edge edge, double angle) const;

    const Panel& m_panel;
    const Solved& m_solved;
    const LineRun& m_run;
    const Motion& m_motion;
    const Renamed& m_renamed;
};

std::optional<LineId> Placing::alongWith(const Base& base) const {
    const auto* line = std::get_if<LineId>(&base);
    return line ? m_renamed(*line) : std::nullopt;
}

/// From a base that stays: parallel to it by a distance, else by an angle.
Place Placing::turned(const Base& base, Point through) const {
    const auto straight = straightOf(m_panel, m_solved, base);
    if (!straight) return laidFromEdges(m_panel, from(), to());
    if (std::abs(cross(straight->along, heading())) < kParallel) {
        return ByOffset{base, tidied(dot(from() - straight->start, leftOf(straight->along)))};
    }
    const Place anew = laidFromEdges(m_panel, from(), to());
    if (std::holds_alternative<Edge>(base) && std::holds_alternative<ByOffset>(anew)) return anew;
    // Of the line's two headings the one within a right angle of its base: what is laid from it keeps its side.
    const Point onwards = dot(straight->along, heading()) < 0 ? -1.0 * heading() : heading();
    const double angle = degrees(std::atan2(cross(straight->along, onwards), dot(straight->along, onwards)));
    return ByAngle{base, tidiedAngle(angle), tidied(through)};
}

/// The angle from an edge after a mirroring, of the line's two headings the one within a right angle of the edge.
double Placing::mirroredAngle(Edge edge, double angle) const {
    const double ofEdge = 90.0 * static_cast<int>(edge);  // they run anticlockwise round the panel, the bottom one along +x
    const double after = tidiedAngle(m_motion.turn - 2 * ofEdge - angle);
    return std::abs(after) <= 90 ? after : tidiedAngle(after + 180);
}

Place Placing::operator()(ByOffset place) const {
    if (const auto base = alongWith(place.from)) return ByOffset{*base, place.distance};
    if (!isShift(m_motion)) return turned(place.from, from());
    place.distance = tidied(place.distance + dot(m_motion.shift, leftOf(unit(m_run.second - m_run.first))));
    return place;
}

Place Placing::operator()(ByAngle place) const {
    const auto base = alongWith(place.from);
    if (const auto* crossing = std::get_if<CrossingOf>(&place.through)) {
        const auto first = m_renamed(crossing->first), second = m_renamed(crossing->second);
        if (first && second) place.through = CrossingOf{*first, *second};
        else place.through = tidied(from());
    } else {
        place.through = tidied(moved(m_motion, std::get<Point>(place.through)));
    }
    if (base) {
        place.from = *base;
        if (m_motion.mirrors) place.angle = -place.angle;
    } else if (m_motion.mirrors) {
        const auto* through = std::get_if<Point>(&place.through);
        const auto* edge = std::get_if<Edge>(&place.from);
        if (!edge || !through) return turned(place.from, through ? *through : from());
        place.angle = mirroredAngle(*edge, place.angle);
    } else if (m_motion.turn != 0) {
        place.angle = tidiedAngle(place.angle + m_motion.turn);
    }
    return place;
}

Place Placing::operator()(ByPoints place) const {
    place.p = tidied(moved(m_motion, place.p));
    place.q = tidied(moved(m_motion, place.q));
    return place;
}

Place Placing::operator()(const ByMarks& place) const {
    const auto clipped = clipToPanel(m_panel, from(), heading());
    if (!clipped) return place;
    const auto mark = [&](Point end) {
        const EdgeMark nearest = nearestMark(m_panel, end);
        return EdgeMark{nearest.edge, tidied(nearest.at)};
    };
    const ByMarks marks{mark(clipped->first), mark(clipped->second)};
    return marks.a.edge == marks.b.edge ? laidFromEdges(m_panel, from(), to()) : Place(marks);
}

Place Placing::operator()(ByMirror place) const {
    const auto of = m_renamed(place.of);
    if (!of) return laidFromEdges(m_panel, from(), to());
    place.of = *of;
    if (const auto* about = std::get_if<LineId>(&place.about)) {
        if (const auto axis = m_renamed(*about)) place.about = *axis;
    }
    return place;
}

/// The lines a place names.
std::set<LineId> laidFrom(const Place& place) {
    std::set<LineId> ids;
    const auto addBase = [&](const Base& base) {
        if (const auto* id = std::get_if<LineId>(&base)) ids.insert(*id);
    };
    if (const auto* offset = std::get_if<ByOffset>(&place)) addBase(offset->from);
    if (const auto* angle = std::get_if<ByAngle>(&place)) {
        addBase(angle->from);
        if (const auto* crossing = std::get_if<CrossingOf>(&angle->through)) ids.insert({crossing->first, crossing->second});
    }
    if (const auto* mirror = std::get_if<ByMirror>(&place)) {
        ids.insert(mirror->of);
        if (const auto* about = std::get_if<LineId>(&mirror->about)) ids.insert(*about);
    }
    return ids;
}

bool isMissed(const Solved& solved, const LineId& id, const LineRun& run) {
    const SolvedLine* line = findLine(solved, id);
    return !line || !areOnOneLine({line->from, line->to}, run);
}

/// Turns an offset to the other side of what it was laid from, once; else lays the line anew.
void mend(LayoutLine& line, const Panel& panel, const LineRun& run, std::set<LineId>& turned) {
    auto* offset = std::get_if<ByOffset>(&line.place);
    if (offset && std::holds_alternative<LineId>(offset->from) && turned.insert(line.id).second) {
        offset->distance = -offset->distance;
        return;
    }
    line.place = laidFromEdges(panel, run.first, run.second);
}

}  // namespace

Place placeAfter(const Panel& panel, const Solved& solved, const Place& place, const LineRun& run, const Motion& motion,
                 const Renamed& renamed) {
    return std::visit(Placing(panel, solved, run, motion, renamed), place);
}

bool areOnOneLine(const LineRun& first, const LineRun& second) {
    const auto away = [](const LineRun& line, Point place) {
        return std::abs(cross(unit(line.second - line.first), place - line.first));
    };
    return away(first, second.first) < kOnOneLine && away(first, second.second) < kOnOneLine;
}

Solved linesAlone(Project project) {
    project.cutouts.clear();
    return solve(project);
}

Project settle(Project project, const std::map<LineId, LineRun>& runs) {
    std::set<LineId> turned;
    // Each round lays at least one line anew; from the edges it stays.
    for (std::size_t round = 0; round < 2 * runs.size() + 1; ++round) {
        const Solved solved = linesAlone(project);
        std::set<LineId> missed;
        for (const auto& [id, run] : runs) {
            const bool onPanel = clipToPanel(project.panel, run.first, run.second - run.first).has_value();
            if (onPanel && isMissed(solved, id, run)) missed.insert(id);
        }
        if (missed.empty()) break;
        for (LayoutLine& line : project.lines) {
            if (!missed.contains(line.id)) continue;
            const bool waits = std::ranges::any_of(laidFrom(line.place), [&](const LineId& id) { return missed.contains(id); });
            if (!waits) mend(line, project.panel, runs.at(line.id), turned);
        }
    }
    return project;
}

}  // namespace kerfwall

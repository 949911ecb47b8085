// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/laying.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/geometry/clip.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/whole_step.h"

namespace kerfwall {
namespace {

constexpr double kSameLine = 1e-6;      // mm; ends nearer than this are one line to any saw
constexpr double kSameHeading = 1e-12;  // sine between directions that are one
constexpr double kWholeDegreeShare = 0.5;   // of the reach: parallel and square hold on further than
constexpr double kHalfDegreeShare = 0.25;   // whole degrees, whole degrees further than half ones


Point turned(Point heading, double angle) {
    // Exact at the quarter turns: a line square to an edge must be square.
    if (angle == 0) return heading;
    if (angle == 90) return leftOf(heading);
    if (angle == -90) return -1.0 * leftOf(heading);
    const double c = std::cos(radians(angle)), s = std::sin(radians(angle));
    return {c * heading.x - s * heading.y, s * heading.x + c * heading.y};
}

/// A line has no front: its angle is counted from over -90 to 90.
double folded(double angle) {
    while (angle > 90) angle -= 180;
    while (angle <= -90) angle += 180;
    return angle;
}

double angleFrom(Point base, Point heading) {
    return folded(degrees(std::atan2(cross(base, heading), dot(base, heading))));
}

/// An end of the drag and what it holds on to.
struct Held {
    Point place;
    std::optional<Edge> edge;
    std::optional<CrossingOf> crossing;
    bool onPlace = false;  // a crossing, a corner or a mark already laid: it must not be moved off it
};

class Laying {
public:
    Laying(const Project& project, const Solved& solved, const LayingWish& wish)
        : m_panel(project.panel), m_solved(solved), m_wish(wish),
          m_step(wish.snap ? wish.step : kLooseStep), m_square(squareEdge(project.panel)) {}

    std::expected<LaidLine, NoLine> line();

private:
    Held hold(Point place) const;
    std::optional<Held> holdCrossing(Point place) const;
    Held holdEdge(Point place) const;
    Point steppedPlace(Point place) const;
    Edge distanceEdge(const Held& start, Point heading) const;
    Edge angleEdge(Point heading) const;
    std::expected<LaidLine, NoLine> finish(Held start, const Held& end, Point heading);
    std::optional<double> heldAngle(const Held& start, const Held& end, Edge from) const;
    const SolvedLine* parallelLine(const Held& start, const Held& end) const;
    void moveToTyped(Held& start, Edge from) const;
    Place placeOf(const Held& start, const Held& end, LaidLine& laid, bool heldDirection) const;
    LaidEnd endAt(Point place) const;
    bool isTaken(const LaidLine& laid) const;

    const Panel& m_panel;
    const Solved& m_solved;
    const LayingWish& m_wish;
    double m_step;
    Edge m_square;
    LineId m_parallelTo;  // a line whose direction is held on to
};

std::optional<Held> Laying::holdCrossing(Point place) const {
    std::optional<Held> best;
    double nearest = m_wish.reach;
    for (std::size_t i = 0; i < m_solved.lines.size(); ++i) {
        for (std::size_t j = i + 1; j < m_solved.lines.size(); ++j) {
            const auto meet = crossingPlace(m_solved.lines[i], m_solved.lines[j]);
            if (!meet || distance(*meet, place) >= nearest) continue;
            nearest = distance(*meet, place);
            best = Held{*meet, {}, CrossingOf{m_solved.lines[i].id, m_solved.lines[j].id}, true};
        }
    }
    return best;
}

/// On an edge: on a mark already laid, a corner, the middle, else whole steps from the edge that is square
/// to it, so that the numbers are those the maker sets off.
Held Laying::holdEdge(Point place) const {
    const EdgeMark raw = nearestMark(m_panel, place);
    const Point foot = markPlace(m_panel, raw);
    Held held{foot, raw.edge, {}, false};
    double nearest = m_wish.reach * kWholeDegreeShare;
    const auto offer = [&](Point candidate) {
        if (!m_wish.snap || distance(candidate, foot) >= nearest) return;
        nearest = distance(candidate, foot);
        held.place = candidate;
        held.onPlace = true;
    };
    for (const SolvedLine& line : m_solved.lines) {
        for (const LineMark& mark : line.marks) {
            if (mark.mark.edge == raw.edge) offer(markPlace(m_panel, mark.mark));
        }
    }
    offer(markPlace(m_panel, {raw.edge, 0}));
    offer(markPlace(m_panel, {raw.edge, edgeLength(m_panel, raw.edge)}));
    if (held.onPlace) return held;
    held.place = steppedPlace(foot);
    return held;
}

Point Laying::steppedPlace(Point place) const {
    const bool fromTop = m_panel.referenceEdge == Edge::Top || m_square == Edge::Top;
    const bool fromRight = m_panel.referenceEdge == Edge::Right || m_square == Edge::Right;
    const auto along = [&](double value, double size, bool fromEnd) {
        if (value <= 0 || value >= size) return std::clamp(value, 0.0, size);
        const double whole = fromEnd ? size - stepped(size - value, m_step) : stepped(value, m_step);
        return std::clamp(whole, 0.0, size);
    };
    return {along(place.x, m_panel.width, fromRight), along(place.y, m_panel.height, fromTop)};
}

Held Laying::hold(Point place) const {
    const bool inside = liesOnPanel(m_panel, place);
    if (inside && m_wish.snap) {
        if (const auto crossing = holdCrossing(place)) return *crossing;
    }
    const double fromEdge = distance(markPlace(m_panel, nearestMark(m_panel, place)), place);
    if (!inside || fromEdge <= (m_wish.snap ? 2 * m_wish.reach : 0)) return holdEdge(place);
    return Held{steppedPlace(place), {}, {}, false};
}

/// What the distance counts from: where the line begins on an edge, along that edge, from the reference edge
/// or the edge square to it; inside the panel, from the edge the line runs along.
Edge Laying::distanceEdge(const Held& start, Point heading) const {
    if (start.edge) {
        const bool runsAlongReference = dot(edgeHeading(*start.edge), edgeHeading(m_panel.referenceEdge)) != 0;
        return runsAlongReference ? m_square : m_panel.referenceEdge;
    }
    return angleEdge(heading);
}

Edge Laying::angleEdge(Point heading) const {
    const double angle = angleFrom(edgeHeading(m_panel.referenceEdge), heading);
    return std::abs(angle) <= 45 ? m_panel.referenceEdge : m_square;
}

/// The angle from `from` on which the drag's direction holds on, none where it runs free.
std::optional<double> Laying::heldAngle(const Held& start, const Held& end, Edge from) const {
    const Point run = end.place - start.place;
    const double raw = angleFrom(edgeHeading(from), run);
    const auto strays = [&](double angle) { return length(run) * std::abs(std::sin(radians(raw - angle))); };
    if (std::abs(raw) < 1e-9) return 0.0;
    if (!m_wish.snap || end.onPlace) return std::nullopt;
    if (strays(0) <= m_wish.reach) return 0.0;
    if (strays(90) <= m_wish.reach) return 90.0;
    if (strays(std::round(raw)) <= m_wish.reach * kWholeDegreeShare) return folded(std::round(raw));
    const double half = std::round(raw * 2) / 2;
    if (strays(half) <= m_wish.reach * kHalfDegreeShare) return folded(half);
    return std::nullopt;
}

const SolvedLine* Laying::parallelLine(const Held& start, const Held& end) const {
    if (!m_wish.snap || end.onPlace) return nullptr;
    const Point run = end.place - start.place;
    for (const SolvedLine& line : m_solved.lines) {
        const Point heading = unit(line.to - line.from);
        const bool square = std::abs(heading.x) < kSameHeading || std::abs(heading.y) < kSameHeading;
        if (!square && std::abs(cross(heading, run)) <= m_wish.reach * kWholeDegreeShare) return &line;
    }
    return nullptr;
}

void Laying::moveToTyped(Held& start, Edge from) const {
    if (!m_wish.distance) return;
    const double shift = *m_wish.distance - distanceFromEdge(m_panel, from, start.place);
    start.place = start.place + shift * leftOf(edgeHeading(from));
    start.crossing.reset();
}

std::expected<LaidLine, NoLine> Laying::line() {
    Held start = hold(m_wish.start);
    const Held end = hold(m_wish.end);
    if (distance(start.place, end.place) < std::max(m_step, 0.1)) return std::unexpected(NoLine::TooShort);
    // Along one edge there is no line to lay, unless what was typed leads away from it.
    const bool alongEdge = start.edge && end.edge == start.edge;
    if (alongEdge && !m_wish.angle && !m_wish.distance) return std::unexpected(NoLine::TooShort);
    return finish(start, end, end.place - start.place);
}

std::expected<LaidLine, NoLine> Laying::finish(Held start, const Held& end, Point run) {
    LaidLine laid;
    laid.angleFrom = angleEdge(run);
    const Edge from = distanceEdge(start, run);
    laid.distanceFrom = from;
    const Point base = edgeHeading(laid.angleFrom);
    std::optional<double> held = m_wish.angle ? m_wish.angle : heldAngle(start, end, laid.angleFrom);
    Point heading = unit(run);
    if (!m_wish.angle && (!held || std::abs(*held) < 90) && (!held || *held != 0)) {
        if (const SolvedLine* line = parallelLine(start, end)) {
            m_parallelTo = line->id;
            heading = unit(line->to - line->from);
            held.reset();
        }
    }
    if (held) heading = turned(base, *held);
    if (dot(heading, run) < 0) heading = -1.0 * heading;
    moveToTyped(start, from);
    laid.angle = held ? folded(*held) : angleFrom(base, heading);
    laid.distance = distanceFromEdge(m_panel, from, start.place);
    // A typed distance moves a free line in parallel; without one it runs through both its ends.
    const bool direct = held || !m_parallelTo.empty() || m_wish.distance;
    const auto ends = clipToPanel(m_panel, start.place, direct ? heading : end.place - start.place);
    if (!ends) return std::unexpected(NoLine::OffThePanel);
    laid.from = endAt(ends->first);
    laid.to = endAt(ends->second);
    laid.place = placeOf(start, end, laid, held.has_value());
    if (isTaken(laid)) return std::unexpected(NoLine::OnALine);
    return laid;
}

Place Laying::placeOf(const Held& start, const Held& end, LaidLine& laid, bool heldDirection) const {
    if (heldDirection && laid.angle == 0) {
        laid.distanceFrom = laid.angleFrom;
        laid.distance = distanceFromEdge(m_panel, laid.angleFrom, start.place);
        return ByOffset{laid.angleFrom, laid.distance};
    }
    if (!m_parallelTo.empty()) {
        const SolvedLine* line = findLine(m_solved, m_parallelTo);
        const double off = dot(start.place - line->from, leftOf(unit(line->to - line->from)));
        return ByOffset{m_parallelTo, m_wish.snap ? stepped(off, m_step / 10) : off};
    }
    if (heldDirection) {
        if (start.crossing) return ByAngle{laid.angleFrom, laid.angle, *start.crossing};
        return ByAngle{laid.angleFrom, laid.angle, start.place};
    }
    if (m_wish.distance || !start.edge || !end.edge) {
        return ByPoints{start.place, m_wish.distance ? start.place + (end.place - start.place) : end.place};
    }
    return ByMarks{markOnEdge(m_panel, *start.edge, start.place), markOnEdge(m_panel, *end.edge, end.place)};
}

LaidEnd Laying::endAt(Point place) const {
    const Edge edge = nearestMark(m_panel, place).edge;
    const bool alongReference = dot(edgeHeading(edge), edgeHeading(m_panel.referenceEdge)) != 0;
    return {place, edge, distanceFromEdge(m_panel, alongReference ? m_square : m_panel.referenceEdge, place)};
}

bool Laying::isTaken(const LaidLine& laid) const {
    return std::ranges::any_of(m_solved.lines, [&](const SolvedLine& line) {
        const bool same = distance(line.from, laid.from.place) < kSameLine && distance(line.to, laid.to.place) < kSameLine;
        const bool back = distance(line.from, laid.to.place) < kSameLine && distance(line.to, laid.from.place) < kSameLine;
        return same || back;
    });
}

}  // namespace

std::expected<LaidLine, NoLine> layLine(const Project& project, const Solved& solved, const LayingWish& wish) {
    assert(wish.reach > 0 && wish.step > 0);
    return Laying(project, solved, wish).line();
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/laying.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/geometry/clip.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/end_hold.h"
#include "core/geometry/heading_hold.h"
#include "core/geometry/mirror_image.h"
#include "core/geometry/passing.h"
#include "core/geometry/tangent.h"
#include "core/geometry/whole_step.h"

namespace kerfwall {
namespace {

constexpr double kSameLine = 1e-6;      // mm; ends nearer than this are one line to any saw
constexpr double kStraight = 1e-9;      // mm; a run that strays by less is along the edge, snapping or not
constexpr double kShortestRun = 0.1;    // mm between the ends of a drag
constexpr double kMirrorShare = 0.25;   // of the reach: an image must not hide the whole steps beside it
constexpr double kPassingShare = 0.5;   // of the reach, at which a held direction is drawn aside

class Laying {
public:
    Laying(const Project& project, const Solved& solved, const LayingWish& wish)
        : m_project(project), m_panel(project.panel), m_solved(solved), m_wish(wish),
          m_catching{wish.reach, wish.snap ? wish.step : kLooseStep, wish.snap} {}

    std::expected<LaidLine, NoLine> line();

private:
    bool isFree() const { return m_wish.snap && !m_wish.distance && !m_wish.angle; }
    /// The end that stays where it is while the direction is chosen.
    bool keepsEnd() const { return m_end.hold && !m_start.hold && !m_wish.angle && !m_wish.distance; }
    const HeldEnd& kept() const { return keepsEnd() ? m_end : m_start; }
    const HeldEnd& loose() const { return keepsEnd() ? m_start : m_end; }
    std::expected<LaidLine, NoLine> mirrored(const NearImage& image);
    std::expected<LaidLine, NoLine> tangent(const NearTangent& tangent);
    std::optional<HeldHeading> heldHeading() const;
    std::expected<LaidLine, NoLine> held(const HeldHeading& heading);
    std::expected<LaidLine, NoLine> free();
    Place heldPlace(const HeldHeading& heading, Point through, const std::optional<Hold>& crossing, bool isExact) const;
    Edge distanceEdge(Point heading) const;
    LaidEnd endAt(Point place) const;
    std::expected<LaidLine, NoLine> finish(LaidLine laid, Point through, Point heading);
    bool isTaken(const LaidLine& laid) const;

    const Project& m_project;
    const Panel& m_panel;
    const Solved& m_solved;
    const LayingWish& m_wish;
    Catching m_catching;
    HeldEnd m_start;
    HeldEnd m_end;
};

/// What the distance counts from: where the line begins on an edge, along that edge, from the reference edge
/// or the edge square to it; inside the panel, from the edge the line runs along.
Edge Laying::distanceEdge(Point heading) const {
    if (!m_start.edge) return edgeAlong(m_panel, heading);
    const bool runsAlongReference = dot(edgeHeading(*m_start.edge), edgeHeading(m_panel.referenceEdge)) != 0;
    return runsAlongReference ? squareEdge(m_panel) : m_panel.referenceEdge;
}

LaidEnd Laying::endAt(Point place) const {
    const Edge edge = nearestMark(m_panel, place).edge;
    const bool alongReference = dot(edgeHeading(edge), edgeHeading(m_panel.referenceEdge)) != 0;
    return {place, edge, distanceFromEdge(m_panel, alongReference ? squareEdge(m_panel) : m_panel.referenceEdge, place)};
}

bool Laying::isTaken(const LaidLine& laid) const {
    return std::ranges::any_of(m_solved.lines, [&](const SolvedLine& line) {
        const bool same = distance(line.from, laid.from.place) < kSameLine && distance(line.to, laid.to.place) < kSameLine;
        const bool back = distance(line.from, laid.to.place) < kSameLine && distance(line.to, laid.from.place) < kSameLine;
        return same || back;
    });
}

/// What is the same for every way of laying: the line's ends, its angle where that does not stand yet, its distance.
std::expected<LaidLine, NoLine> Laying::finish(LaidLine laid, Point through, Point heading) {
    if (dot(heading, m_wish.end - m_wish.start) < 0) heading = -1.0 * heading;
    const auto ends = clipToPanel(m_panel, through, heading);
    if (!ends) return std::unexpected(NoLine::OffThePanel);
    laid.from = endAt(ends->first);
    laid.to = endAt(ends->second);
    if (isTaken(laid)) return std::unexpected(NoLine::OnALine);
    for (const HeldEnd* end : {&m_start, &m_end}) {
        if (end->hold && std::abs(cross(unit(heading), end->place - through)) < kSameLine) laid.holds.push_back(*end->hold);
    }
    return laid;
}

std::expected<LaidLine, NoLine> Laying::mirrored(const NearImage& image) {
    LaidLine laid;
    const Point heading = unit(image.to - image.from);
    const Edge edge = edgeAlong(m_panel, heading);
    laid.place = image.place;
    laid.angleFrom = edge;
    laid.angle = angleBetween(edgeHeading(edge), heading);
    m_start.edge = nearestMark(m_panel, m_wish.start).edge;
    Hold hold;
    hold.on = HoldOn::Mirror;
    hold.at = m_wish.end;
    hold.first = image.place.of;
    hold.about = image.place.about;
    laid.holds.push_back(hold);
    auto done = finish(laid, image.from, heading);
    if (!done) return done;
    const Edge from = laid.angle == 0 ? edge : distanceEdge(heading);
    done->distanceFrom = from;
    done->distance = distanceFromEdge(m_panel, from, done->from.place);
    return done;
}

std::expected<LaidLine, NoLine> Laying::tangent(const NearTangent& tangent) {
    LaidLine laid;
    const Point heading = unit(tangent.to - tangent.from);
    const Edge edge = edgeAlong(m_panel, heading);
    laid.angleFrom = edge;
    laid.angle = angleBetween(edgeHeading(edge), heading);
    for (const auto& [bore, at] : {std::pair{tangent.fromBore, tangent.from}, std::pair{tangent.toBore, tangent.to}}) {
        if (!bore) continue;
        Hold hold;
        hold.on = HoldOn::Bore;
        hold.at = at;
        hold.first = bore->first;
        hold.second = bore->second;
        laid.holds.push_back(hold);
    }
    auto done = finish(laid, tangent.from, heading);
    if (!done) return done;
    const Edge from = distanceEdge(heading);
    done->distanceFrom = from;
    done->distance = distanceFromEdge(m_panel, from, done->from.place);
    // From an edge the line keeps its mark there; between bores it is two points.
    const bool marked = !tangent.fromBore && m_start.edge;
    done->place = marked ? Place(ByMarks{markOnEdge(m_panel, *m_start.edge, m_start.place),
                                         markOnEdge(m_panel, done->to.edge, done->to.place)})
                         : Place(ByPoints{tangent.from, tangent.to});
    return done;
}

std::optional<HeldHeading> Laying::heldHeading() const {
    const Point keptAt = kept().place, looseAt = loose().place;
    if (m_wish.angle) {
        const Edge edge = edgeAlong(m_panel, m_end.place - m_start.place);
        return HeldHeading{edge, foldedAngle(*m_wish.angle), turnedBy(edgeHeading(edge), *m_wish.angle), std::nullopt};
    }
    const bool isBound = !m_wish.snap || (m_start.hold && m_end.hold);
    return holdSquare(m_panel, keptAt, looseAt, isBound ? kStraight : m_wish.reach);
}

Place Laying::heldPlace(const HeldHeading& heading, Point through, const std::optional<Hold>& crossing, bool isExact) const {
    if (crossing) return ByAngle{heading.base, heading.angle, CrossingOf{crossing->first, crossing->second}};
    if (heading.angle != 0) return ByAngle{heading.base, heading.angle, through};
    if (const auto* edge = std::get_if<Edge>(&heading.base)) return ByOffset{*edge, distanceFromEdge(m_panel, *edge, through)};
    const SolvedLine* line = findLine(m_solved, std::get<LineId>(heading.base));
    const double off = dot(through - line->from, leftOf(unit(line->to - line->from)));
    return ByOffset{line->id, isExact ? off : stepped(off, m_catching.step / 10)};
}

std::expected<LaidLine, NoLine> Laying::held(const HeldHeading& heading) {
    LaidLine laid;
    laid.angleFrom = heading.base;
    laid.angle = heading.angle;
    if (heading.hold) laid.holds.push_back(*heading.hold);
    Point through = kept().place;
    std::optional<Hold> crossing;
    const bool isKept = kept().hold.has_value();
    if (isKept && kept().hold->on == HoldOn::Crossing) crossing = kept().hold;
    bool isExact = isKept || m_wish.distance || !m_wish.snap;
    if (isFree() && !isKept) {
        const auto passing = passingNear(m_project, m_solved, m_wish.start, heading.heading, m_wish.margin,
                                         m_wish.reach * kPassingShare);
        if (passing) {
            through = passing->place;
            laid.holds.push_back(passing->hold);
            if (passing->hold.on == HoldOn::Crossing) crossing = passing->hold;
            isExact = true;
        }
    }
    const Edge from = distanceEdge(heading.heading);
    if (m_wish.distance) {
        through = m_start.place;
        through = through + (*m_wish.distance - distanceFromEdge(m_panel, from, through)) * leftOf(edgeHeading(from));
        crossing.reset();
    }
    laid.place = heldPlace(heading, through, crossing, isExact);
    auto done = finish(laid, through, heading.heading);
    if (!done) return done;
    const auto* offset = std::get_if<ByOffset>(&laid.place);
    const auto* edge = offset ? std::get_if<Edge>(&offset->from) : nullptr;
    done->distanceFrom = edge ? *edge : from;
    const Point begins = through == m_start.place ? through : done->from.place;
    done->distance = distanceFromEdge(m_panel, std::get<Edge>(done->distanceFrom),
                                      edge || m_wish.distance ? through : begins);
    return done;
}

/// In no held direction: through both ends, or moved in parallel to the typed distance.
std::expected<LaidLine, NoLine> Laying::free() {
    LaidLine laid;
    const Point run = m_end.place - m_start.place;
    const Edge edge = edgeAlong(m_panel, run);
    const Edge from = distanceEdge(run);
    laid.angleFrom = edge;
    laid.angle = angleBetween(edgeHeading(edge), unit(run));
    laid.distanceFrom = from;
    Point begins = m_start.place;
    if (m_wish.distance) begins = begins + (*m_wish.distance - distanceFromEdge(m_panel, from, begins)) * leftOf(edgeHeading(from));
    laid.distance = distanceFromEdge(m_panel, from, begins);
    auto done = finish(laid, begins, run);
    if (!done) return done;
    const HeldEnd* crossed = nullptr;
    for (const HeldEnd* end : {&m_end, &m_start}) {
        if (end->hold && end->hold->on == HoldOn::Crossing && !m_wish.distance) crossed = end;
    }
    if (crossed) {
        done->place = ByAngle{edge, done->angle, CrossingOf{crossed->hold->first, crossed->hold->second}};
    } else if (m_start.edge && m_end.edge && !m_wish.distance) {
        done->place = ByMarks{markOnEdge(m_panel, *m_start.edge, m_start.place), markOnEdge(m_panel, *m_end.edge, m_end.place)};
    } else if (m_start.edge && m_end.edge) {
        done->place = ByMarks{markOnEdge(m_panel, done->from.edge, done->from.place), markOnEdge(m_panel, done->to.edge, done->to.place)};
    } else {
        done->place = ByPoints{begins, begins + run};
    }
    return done;
}

std::expected<LaidLine, NoLine> Laying::line() {
    if (isFree()) {
        const auto image = mirrorNear(m_panel, m_solved, m_wish.axis, m_wish.start, m_wish.end, m_wish.reach * kMirrorShare);
        if (image && distance(m_wish.start, m_wish.end) > m_wish.reach) return mirrored(*image);
    }
    m_start = holdEnd(m_project, m_solved, m_catching, m_wish.start);
    m_end = holdEnd(m_project, m_solved, m_catching, m_wish.end);
    if (distance(m_start.place, m_end.place) < std::max(m_catching.step, kShortestRun)) return std::unexpected(NoLine::TooShort);
    // Along one edge there is no line to lay, unless what was typed leads away from it.
    const bool alongEdge = m_start.edge && m_end.edge == m_start.edge;
    if (alongEdge && !m_wish.angle && !m_wish.distance) return std::unexpected(NoLine::TooShort);
    auto heading = heldHeading();
    if (isFree()) {
        const auto touching = tangentNear(m_solved, m_wish.start, m_start.place, m_wish.end, m_end.place, m_wish.reach);
        const bool isSquare = heading && (m_start.hold || m_end.hold ||
                                          passingNear(m_project, m_solved, m_wish.start, heading->heading, m_wish.margin,
                                                      m_wish.reach * kPassingShare));
        if (touching && !isSquare) return tangent(*touching);
    }
    const bool isBound = !m_wish.snap || (m_start.hold && m_end.hold);
    if (!heading && !isBound) heading = holdSlant(m_panel, m_solved, kept().place, loose().place, m_wish.reach);
    return heading ? held(*heading) : free();
}

}  // namespace

std::expected<LaidLine, NoLine> layLine(const Project& project, const Solved& solved, const LayingWish& wish) {
    assert(wish.reach > 0 && wish.step > 0 && wish.margin >= 0);
    return Laying(project, solved, wish).line();
}

}  // namespace kerfwall

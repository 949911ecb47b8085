// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/measuring.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/geometry/clip.h"
#include "core/geometry/curve.h"
#include "core/geometry/edge_name.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/fence_place.h"
#include "core/geometry/motion.h"
#include "core/geometry/picking.h"

namespace kerfwall {
namespace {

using Kind = Measurable::Kind;

constexpr double kParallel = 1e-9;  // sine under which two straights have no angle worth a name

constexpr double kAsNear = 1e-6;    // mm; what is nearer by less is as near

/// The nearest of what has been offered.
class Nearest {
public:
    Nearest(Point place, double reach) : m_place(place), m_reach(reach) {}

    void offerPlace(MeasuredOn on, Point at, const std::string& first, const std::string& second = {}) {
        Measurable found;
        found.on = on;
        found.at = at;
        found.first = first;
        found.second = second;
        take(found, distance(at, m_place));
    }

    void offerStraight(MeasuredOn on, Point from, Point to, const std::string& first) {
        if (from == to) return;
        const Point along = unit(to - from);
        Measurable found;
        found.kind = Kind::Straight;
        found.on = on;
        found.from = from;
        found.to = to;
        found.at = from + std::clamp(dot(m_place - from, along), 0.0, distance(from, to)) * along;
        found.first = first;
        take(found, distance(found.at, m_place));
    }

    void offerOutline(MeasuredOn on, const Outline& outline, const std::string& id) {
        for (const OutlineLoop& loop : outline.loops) {
            for (const OutlinePiece& piece : loop) {
                if (piece.isArc) offerArc(on, piece, id);
                else offerStraight(on, piece.from, piece.to, id);
            }
        }
    }

    std::optional<Measurable> found() const { return m_found; }

private:
    void offerArc(MeasuredOn on, const OutlinePiece& piece, const std::string& id) {
        if (m_place == piece.centre) return;
        Measurable found;
        found.kind = Kind::Arc;
        found.on = on;
        found.from = piece.from;
        found.to = piece.to;
        found.centre = piece.centre;
        found.radius = piece.radius;
        found.at = piece.centre + piece.radius * unit(m_place - piece.centre);
        found.first = id;
        take(found, distanceTo(curveOf(piece), m_place));
    }

    void take(const Measurable& found, double away) {
        // What was offered first stays where both are as near: the line itself before the opening along it.
        if (away > (m_found ? m_reach - kAsNear : m_reach)) return;
        m_reach = away;
        m_found = found;
    }

    Point m_place;
    double m_reach;
    std::optional<Measurable> m_found;
};

std::optional<Measurable> placeNear(const Project& project, const Solved& solved, Point place, double reach) {
    Nearest nearest(place, reach);
    for (const Edge edge : kEdges) nearest.offerPlace(MeasuredOn::PanelCorner, markPlace(project.panel, {edge, 0}), {});
    for (std::size_t i = 0; i < solved.lines.size(); ++i) {
        const SolvedLine& line = solved.lines[i];
        for (std::size_t j = i + 1; j < solved.lines.size(); ++j) {
            const auto crossing = crossingPlace(line, solved.lines[j]);
            if (crossing) nearest.offerPlace(MeasuredOn::Crossing, *crossing, line.id, solved.lines[j].id);
        }
        for (const Point end : {line.from, line.to}) nearest.offerPlace(MeasuredOn::Crossing, end, line.id, {});
    }
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) {
        const ClampHole& hole = project.clampHoles[i];
        const Point mouth = markPlace(project.panel, {hole.edge, hole.at});
        const std::string number = std::to_string(i + 1);
        nearest.offerPlace(MeasuredOn::HoleEnd, mouth, number);
        nearest.offerPlace(MeasuredOn::HoleEnd, mouth + hole.depth * leftOf(edgeHeading(hole.edge)), number);
    }
    for (std::size_t i = 0; i < project.fences.size(); ++i) {
        for (const Point corner : fenceBody(project, solved, project.fences[i])) {
            nearest.offerPlace(MeasuredOn::Corner, corner, std::to_string(i + 1));
        }
    }
    return nearest.found();
}

void offerSides(Nearest& nearest, MeasuredOn on, const std::vector<Point>& corners, std::size_t index) {
    for (std::size_t i = 0; i < corners.size(); ++i) {
        nearest.offerStraight(on, corners[i], corners[(i + 1) % corners.size()], std::to_string(index + 1));
    }
}

Point direction(const Measurable& straight) { return unit(straight.to - straight.from); }

/// Where a thing counts from: an arc's centre, else the place.
Point anchor(const Measurable& thing) { return thing.kind == Kind::Arc ? thing.centre : thing.at; }

Measurement between(Point from, Point to) {
    Measurement measured;
    measured.from = from;
    measured.to = to;
    measured.distance = distance(from, to);
    measured.across = to.x - from.x;
    measured.up = to.y - from.y;
    return measured;
}

Point footOn(const Measurable& straight, Point place) {
    return straight.from + dot(place - straight.from, direction(straight)) * direction(straight);
}

}  // namespace

std::optional<Measurable> measurableNear(const Project& project, const Solved& solved, Point place, double reach) {
    if (const auto found = placeNear(project, solved, place, reach)) return found;
    Nearest nearest(place, reach);
    for (const SolvedLine& line : solved.lines) nearest.offerStraight(MeasuredOn::Line, line.from, line.to, line.id);
    for (const Edge edge : kEdges) {
        const Point start = markPlace(project.panel, {edge, 0});
        const Point end = start + edgeLength(project.panel, edge) * edgeHeading(edge);
        nearest.offerStraight(MeasuredOn::Edge, start, end, std::string(edgeName(edge)));
    }
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) {
        offerSides(nearest, MeasuredOn::Hole, holeCorners(project.panel, project.clampHoles[i]), i);
    }
    for (std::size_t i = 0; i < project.fences.size(); ++i) {
        offerSides(nearest, MeasuredOn::Fence, fenceBody(project, solved, project.fences[i]), i);
    }
    for (const SolvedCutout& cutout : solved.cutouts) {
        nearest.offerOutline(MeasuredOn::Opening, cutout.opening, cutout.id);
        nearest.offerOutline(MeasuredOn::Work, cutout.work, cutout.id);
    }
    return nearest.found();
}

Measurement measure(const Measurable& first, const Measurable& second) {
    const bool fromStraight = first.kind == Kind::Straight, toStraight = second.kind == Kind::Straight;
    if (fromStraight && toStraight) {
        const double turn = cross(direction(first), direction(second));
        if (std::abs(turn) < kParallel) {
            Measurement measured = between(first.at, footOn(second, first.at));
            measured.isParallel = true;
            return measured;
        }
        const double along = cross(second.from - first.from, direction(second)) / turn;
        Measurement measured = between(first.from + along * direction(first), first.from + along * direction(first));
        measured.angle = degrees(std::atan2(std::abs(turn), std::abs(dot(direction(first), direction(second)))));
        return measured;
    }
    if (toStraight) return between(anchor(first), footOn(second, anchor(first)));
    if (fromStraight) return between(footOn(first, anchor(second)), anchor(second));
    return between(anchor(first), anchor(second));
}

double angleFromReference(const Panel& panel, const Measurable& straight) {
    const Point edge = edgeHeading(panel.referenceEdge);
    const double angle = tidiedAngle(degrees(std::atan2(cross(edge, direction(straight)), dot(edge, direction(straight)))));
    if (angle > 90) return angle - 180;
    return angle <= -90 ? angle + 180 : angle;
}

}  // namespace kerfwall

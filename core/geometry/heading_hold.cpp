// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/heading_hold.h"

#include <cmath>

#include "core/geometry/angle.h"
#include "core/geometry/edge_place.h"

namespace kerfwall {
namespace {

constexpr double kWholeDegreeShare = 0.5;  // of the reach: parallel and square hold on further than
constexpr double kHalfDegreeShare = 0.25;  // whole degrees, whole degrees further than half ones
constexpr double kAlongEdge = 1e-12;       // sine between a slanting line and an edge
constexpr double kSameStray = 1e-9;        // mm

HeldHeading heldTo(HoldOn on, const Base& base, double angle, Point heading, Point at) {
    HeldHeading held{base, angle, heading, Hold{}};
    held.hold->on = on;
    held.hold->base = base;
    held.hold->angle = angle;
    held.hold->at = at;
    return held;
}

std::optional<HeldHeading> holdLine(const Solved& solved, Point kept, Point free, double reach) {
    std::optional<HeldHeading> best;
    const Point run = free - kept;
    for (const SolvedLine& line : solved.lines) {
        const Point along = unit(line.to - line.from);
        if (std::abs(along.x) < kAlongEdge || std::abs(along.y) < kAlongEdge) continue;
        for (const double angle : {0.0, 90.0}) {
            const Point heading = turnedBy(along, angle);
            const double strays = std::abs(cross(heading, run));
            // Of lines that run alike the one laid first is meant.
            if (best ? strays > reach - kSameStray : strays > reach) continue;
            reach = strays;
            best = heldTo(angle == 0 ? HoldOn::Parallel : HoldOn::Square, line.id, angle, heading, free);
        }
    }
    return best;
}

}  // namespace

Edge edgeAlong(const Panel& panel, Point heading) {
    const double angle = angleBetween(edgeHeading(panel.referenceEdge), heading);
    return std::abs(angle) <= 45 ? panel.referenceEdge : squareEdge(panel);
}

double foldedAngle(double angle) {
    while (angle > 90) angle -= 180;
    while (angle <= -90) angle += 180;
    return angle;
}

double angleBetween(Point base, Point heading) {
    return foldedAngle(degrees(std::atan2(cross(base, heading), dot(base, heading))));
}

Point turnedBy(Point heading, double angle) {
    if (angle == 0) return heading;
    if (angle == 90) return leftOf(heading);
    if (angle == -90) return -1.0 * leftOf(heading);
    const double c = std::cos(radians(angle)), s = std::sin(radians(angle));
    return {c * heading.x - s * heading.y, s * heading.x + c * heading.y};
}

std::optional<HeldHeading> holdSquare(const Panel& panel, Point kept, Point free, double reach) {
    const Edge edge = edgeAlong(panel, free - kept);
    const Point heading = edgeHeading(edge);
    if (std::abs(cross(heading, free - kept)) > reach) return std::nullopt;
    HeldHeading held = heldTo(HoldOn::Parallel, edge, 0, heading, free);
    if (edge != panel.referenceEdge) {
        held.hold->on = HoldOn::Square;  // as makers say it: square to the reference edge
        held.hold->base = panel.referenceEdge;
    }
    return held;
}

std::optional<HeldHeading> holdSlant(const Panel& panel, const Solved& solved, Point kept, Point free, double reach) {
    if (const auto line = holdLine(solved, kept, free, reach * kWholeDegreeShare)) return line;
    const Edge edge = edgeAlong(panel, free - kept);
    const Point base = edgeHeading(edge);
    const double raw = angleBetween(base, free - kept);
    const auto strays = [&](double angle) { return std::abs(cross(turnedBy(base, angle), free - kept)); };
    const double whole = std::round(raw), half = std::round(raw * 2) / 2;
    if (strays(whole) <= reach * kWholeDegreeShare) {
        return heldTo(HoldOn::WholeDegree, edge, foldedAngle(whole), turnedBy(base, whole), free);
    }
    if (strays(half) <= reach * kHalfDegreeShare) {
        return heldTo(HoldOn::HalfDegree, edge, foldedAngle(half), turnedBy(base, half), free);
    }
    return std::nullopt;
}

}  // namespace kerfwall

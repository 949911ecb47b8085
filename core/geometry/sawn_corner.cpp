// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/sawn_corner.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/geometry/angle.h"

namespace kerfwall {
namespace {

constexpr double kOnEdge = 1e-6;       // mm; nearer than this a place lies on an outline
constexpr double kLookAside = 0.01;    // mm from a corner at which wood is looked for: finer than any sawn work
constexpr double kStraightOn = 0.5;    // degrees from 180 within which a corner is none to a saw
constexpr double kSameHeading = 1e-9;  // radians

using Outline = std::vector<Point>;

std::vector<Outline> partsOf(const Project& project) {
    std::vector<Outline> parts;
    if (!project.workpiece) return parts;
    if (project.workpiece->outline.size() > 2) parts.push_back(project.workpiece->outline);
    for (const WorkPart& part : project.workpiece->parts) {
        if (part.outline.size() > 2) parts.push_back(part.outline);
    }
    return parts;
}

bool holds(const Outline& part, Point place) {
    bool inside = false;
    for (std::size_t i = 0, j = part.size() - 1; i < part.size(); j = i++) {
        const Point a = part[i], b = part[j];
        if ((a.y > place.y) == (b.y > place.y)) continue;
        if (place.x < (b.x - a.x) * (place.y - a.y) / (b.y - a.y) + a.x) inside = !inside;
    }
    return inside;
}

template <typename Does>
void eachEdge(const std::vector<Outline>& parts, const Does& does) {
    for (const Outline& part : parts) {
        for (std::size_t i = 0; i < part.size(); ++i) {
            const Point from = part[i], to = part[(i + 1) % part.size()];
            if (distance(from, to) > kOnEdge) does(from, to);
        }
    }
}

/// Corners of the parts and places where their edges cross: where a corner of the whole can be.
std::vector<Point> candidates(const std::vector<Outline>& parts) {
    std::vector<Point> places;
    const auto add = [&](Point place) {
        const auto same = [&](Point other) { return distance(place, other) < kOnEdge; };
        if (std::ranges::none_of(places, same)) places.push_back(place);
    };
    for (const Outline& part : parts) std::ranges::for_each(part, add);
    eachEdge(parts, [&](Point a, Point b) {
        eachEdge(parts, [&](Point c, Point d) {
            const double turn = cross(b - a, d - c);
            if (std::abs(turn) < kOnEdge) return;
            const double s = cross(c - a, d - c) / turn, t = cross(c - a, b - a) / turn;
            if (s > 0 && s < 1 && t > 0 && t < 1) add(a + s * (b - a));
        });
    });
    return places;
}

/// The directions in which edges leave a place, in radians from 0 to a turn, in order.
std::vector<double> headingsAt(const std::vector<Outline>& parts, Point place) {
    std::vector<double> headings;
    const auto add = [&](Point along) {
        const double raw = std::atan2(along.y, along.x);
        const double heading = raw < 0 ? raw + kTurn : raw;
        const auto same = [&](double other) { return std::abs(other - heading) < kSameHeading; };
        if (std::ranges::none_of(headings, same)) headings.push_back(heading);
    };
    eachEdge(parts, [&](Point from, Point to) {
        const Point along = unit(to - from);
        const double at = dot(place - from, along), whole = distance(from, to);
        if (std::abs(cross(along, place - from)) > kOnEdge || at < -kOnEdge || at > whole + kOnEdge) return;
        if (at < whole - kOnEdge) add(along);
        if (at > kOnEdge) add(-1.0 * along);
    });
    std::ranges::sort(headings);
    return headings;
}

Point towards(double heading) { return {std::cos(heading), std::sin(heading)}; }

}  // namespace

std::vector<SawnCorner> sawnCorners(const Project& project) {
    std::vector<SawnCorner> corners;
    const std::vector<Outline> parts = partsOf(project);
    for (const Point place : candidates(parts)) {
        const std::vector<double> headings = headingsAt(parts, place);
        std::vector<SawnCorner> free;
        for (std::size_t i = 0; i < headings.size(); ++i) {
            const double from = headings[i];
            const double to = i + 1 < headings.size() ? headings[i + 1] : headings.front() + kTurn;
            const Point aside = place + kLookAside * towards((from + to) / 2);
            if (std::ranges::any_of(parts, [&](const Outline& part) { return holds(part, aside); })) continue;
            free.push_back({place, towards(from), towards(to), degrees(to - from)});
        }
        // Two free sides touch in a place only: that is no corner of a piece of work.
        if (free.size() == 1 && free.front().angle < 180 - kStraightOn) corners.push_back(free.front());
    }
    return corners;
}

std::optional<double> clearingDepth(double radius, double margin, double angle, std::optional<double> otherDepth) {
    assert(radius > 0 && margin >= 0 && angle > 0 && angle < 180);
    const double room = radius - margin;  // how far the sawn corner may lie from the arc's centre
    if (room <= 0) return std::nullopt;
    if (!otherDepth) return radius - room * std::sin(radians(angle / 2));
    if (*otherDepth < margin) return std::nullopt;
    const double across = radius - *otherDepth;  // from the corner to the centre, square to the other wall
    if (across <= 0) return margin;              // the sawn corner lies beyond the arc: only the walls themselves count
    const double turn = radians(angle);
    return radius - (std::sin(turn) * std::sqrt(room * room - across * across) - across * std::cos(turn));
}

}  // namespace kerfwall

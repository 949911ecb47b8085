// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/distance.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

constexpr double kAngleSlack = 1e-12;  // rad: an arc's own ends count as on it

double lengthwise(Point from, Point to, Point place) {
    const Point along = to - from;
    const double square = dot(along, along);
    return square > 0 ? std::clamp(dot(place - from, along) / square, 0.0, 1.0) : 0.0;
}

// Angle from the arc's start to the ray centre -> place, the way the arc turns; [0, 2 pi).
double turnedTo(const OutlinePiece& arc, Point place) {
    const Point start = arc.from - arc.centre;
    const Point ray = place - arc.centre;
    const double anticlockwise = std::atan2(cross(start, ray), dot(start, ray));
    const double turned = arc.turn == Turn::Left ? anticlockwise : -anticlockwise;
    return turned < 0 ? turned + kTurn : turned;
}

bool facesArc(const OutlinePiece& arc, Point place) {
    const double turned = turnedTo(arc, place);
    return turned <= sweepOf(arc) + kAngleSlack || turned >= kTurn - kAngleSlack;
}

Gap between(Point first, Point second) { return {distance(first, second), first, second}; }

Gap turnedRound(const Gap& gap) { return {gap.distance, gap.second, gap.first}; }

void keepNearer(Gap& best, const Gap& other) {
    if (other.distance < best.distance) {
        best = other;
    }
}

// True where both ends of a stretch lie on another's line: rounding alone would tell whether and where they cross.
bool isAlong(const OutlinePiece& line, const OutlinePiece& stretch) {
    const Point along = line.to - line.from;
    const double most = kBite * length(along);
    return std::abs(cross(along, stretch.from - line.from)) <= most &&
           std::abs(cross(along, stretch.to - line.from)) <= most;
}

// Where two straight pieces cross; parallel ones, and those on one line, are nearest at an end.
std::optional<Point> crossingOf(const OutlinePiece& a, const OutlinePiece& b) {
    const Point along = a.to - a.from;
    const Point other = b.to - b.from;
    const double area = cross(along, other);
    if (area == 0 || isAlong(a, b) || isAlong(b, a)) {
        return std::nullopt;
    }
    const double onFirst = cross(b.from - a.from, other) / area;
    const double onSecond = cross(b.from - a.from, along) / area;
    if (onFirst < 0 || onFirst > 1 || onSecond < 0 || onSecond > 1) {
        return std::nullopt;
    }
    return a.from + onFirst * along;
}

Gap straightAndArc(const OutlinePiece& line, const OutlinePiece& arc, Gap best) {
    const Point along = line.to - line.from;
    const double whole = length(along);
    if (whole == 0) {
        return best;
    }
    const Point way = (1 / whole) * along;
    const double at = dot(arc.centre - line.from, way);
    const Point foot = line.from + at * way;
    const double off = distance(foot, arc.centre);
    if (off > arc.radius) {
        if (at >= 0 && at <= whole && facesArc(arc, foot)) {
            keepNearer(best, between(foot, arc.centre + (arc.radius / off) * (foot - arc.centre)));
        }
        return best;
    }
    const double half = std::sqrt((arc.radius - off) * (arc.radius + off));
    for (const double s : {at - half, at + half}) {
        const Point met = line.from + s * way;
        if (s >= 0 && s <= whole && facesArc(arc, met)) {
            return between(met, met);
        }
    }
    return best;
}

Gap arcAndArc(const OutlinePiece& a, const OutlinePiece& b, Gap best) {
    const Point axis = b.centre - a.centre;
    const double apart = length(axis);
    if (apart == 0) {
        return best;  // concentric: nearest at an end of one of them, or everywhere alike
    }
    const Point way = (1 / apart) * axis;
    const double at = (apart * apart + (a.radius - b.radius) * (a.radius + b.radius)) / (2 * apart);
    const double square = a.radius * a.radius - at * at;
    if (square >= 0) {
        for (const double side : {-1.0, 1.0}) {
            const Point met = a.centre + at * way + (side * std::sqrt(square)) * leftOf(way);
            if (facesArc(a, met) && facesArc(b, met)) {
                return between(met, met);
            }
        }
    }
    for (const double first : {-a.radius, a.radius}) {
        for (const double second : {-b.radius, b.radius}) {
            const Point onFirst = a.centre + first * way;
            const Point onSecond = b.centre + second * way;
            if (facesArc(a, onFirst) && facesArc(b, onSecond)) {
                keepNearer(best, between(onFirst, onSecond));
            }
        }
    }
    return best;
}

Gap nearestEnd(const OutlinePiece& first, const OutlinePiece& second) {
    Gap best = gapBetween(first.from, second);
    keepNearer(best, gapBetween(first.to, second));
    keepNearer(best, turnedRound(gapBetween(second.from, first)));
    keepNearer(best, turnedRound(gapBetween(second.to, first)));
    return best;
}

}  // namespace

OutlinePiece straight(Point from, Point to) {
    OutlinePiece piece;
    piece.from = from;
    piece.to = to;
    return piece;
}

Gap gapBetween(Point place, const OutlinePiece& piece) {
    if (!piece.isArc) {
        const double share = lengthwise(piece.from, piece.to, place);
        return between(place, share == 1 ? piece.to : piece.from + share * (piece.to - piece.from));
    }
    Gap best = between(place, piece.from);
    keepNearer(best, between(place, piece.to));
    const double off = distance(place, piece.centre);
    if (off > 0 && facesArc(piece, place)) {
        keepNearer(best, between(place, piece.centre + (piece.radius / off) * (place - piece.centre)));
    }
    return best;
}

Gap gapBetween(const OutlinePiece& first, const OutlinePiece& second) {
    const Gap best = nearestEnd(first, second);
    if (first.isArc && second.isArc) {
        return arcAndArc(first, second, best);
    }
    if (first.isArc) {
        return turnedRound(straightAndArc(second, first, turnedRound(best)));
    }
    if (second.isArc) {
        return straightAndArc(first, second, best);
    }
    const std::optional<Point> met = crossingOf(first, second);
    return met ? between(*met, *met) : best;
}

std::optional<Gap> gapBetween(const OutlinePiece& piece, const Outline& outline) {
    std::optional<Gap> best;
    for (const OutlineLoop& loop : outline.loops) {
        for (const OutlinePiece& other : loop) {
            const Gap gap = gapBetween(piece, other);
            if (!best || gap.distance < best->distance) {
                best = gap;
            }
        }
    }
    return best;
}

std::optional<Gap> gapBetween(const Outline& first, const Outline& second) {
    std::optional<Gap> best;
    for (const OutlineLoop& loop : first.loops) {
        for (const OutlinePiece& piece : loop) {
            const std::optional<Gap> gap = gapBetween(piece, second);
            if (gap && (!best || gap->distance < best->distance)) {
                best = gap;
            }
        }
    }
    return best;
}

}  // namespace kerfwall

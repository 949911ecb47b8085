// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/void_parts.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

ConvexPart polygonPart(const std::vector<Point>& corners) {
    ConvexPart part{{}, kFacesOwner};
    for (std::size_t i = 0; i < corners.size(); ++i) {
        part.bounds.push_back({corners[i], unit(corners[(i + 1) % corners.size()] - corners[i])});
    }
    return part;
}

/// What of a line's spans lies in a part, with its sides.
Spans within(const RimLine& line, const ConvexPart& part) {
    RimLine probe = line;
    probe.owner = kFacesOwner + 1;
    const Cover cover = coverOf(probe, part);
    if (!cover.span) return {};
    takeOut(probe.spans, -kEverywhere, cover.span->first);
    takeOut(probe.spans, cover.span->second, kEverywhere);
    return probe.spans;
}

std::vector<RimLine> sidesOf(const ConvexPart& polygon, int owner, VoidSide::Kind kind) {
    std::vector<RimLine> sides;
    for (std::size_t i = 0; i < polygon.bounds.size(); ++i) {
        const HalfPlane& half = polygon.bounds[i];
        const double size = distance(half.origin, polygon.bounds[(i + 1) % polygon.bounds.size()].origin);
        sides.push_back({half.origin, half.direction, {{0, size}}, owner, {}, {}, {kind, 0, 0, Edge::Bottom}});
    }
    return sides;
}

}  // namespace

Cover coverOf(const RimLine& line, const ConvexPart& part) {
    double from = -kEverywhere;
    double to = kEverywhere;
    // The same without sides that nearly face the line: wood thinner than kDoubt may stand on either side of them.
    double wideFrom = -kEverywhere;
    double wideTo = kEverywhere;
    std::optional<std::pair<double, double>> near;
    bool outside = false;
    constexpr double kParallel = 1e-13;
    for (const HalfPlane& half : part.bounds) {
        const double slope = cross(half.direction, line.along);
        const double level = cross(half.direction, line.origin - half.origin);
        const bool facing = dot(half.direction, line.along) < 0;
        if (std::abs(slope) > kParallel) {
            const double at = -level / slope;
            if (slope > 0) from = std::max(from, at);
            else to = std::min(to, at);
            if (facing && std::abs(slope) < kNearlyParallel) {
                const double thin = kDoubt / std::abs(slope);
                near = {at - thin, at + thin};
            } else {
                (slope > 0 ? wideFrom : wideTo) = slope > 0 ? std::max(wideFrom, at) : std::min(wideTo, at);
            }
            continue;
        }
        if (std::abs(level) <= kSameSide) {
            // Facing: no wood between them. The same way: one of the two keeps the rim.
            if (!facing && part.owner >= line.owner) return {};
            continue;
        }
        if (facing && std::abs(level) < kDoubt) near = {-kEverywhere, kEverywhere};
        outside = outside || level < 0;
    }
    Cover cover;
    if (near) {
        const std::pair doubtful{std::max(wideFrom, near->first), std::min(wideTo, near->second)};
        if (doubtful.first < doubtful.second) cover.doubtful = doubtful;
    }
    if (from < to && !outside) cover.span = {from, to};
    return cover;
}

void takeDisc(Spans& spans, const RimLine& line, Point centre, double radius, double least) {
    const double off = cross(line.along, centre - line.origin);
    if (std::abs(off) > radius - least) return;
    const double foot = dot(line.along, centre - line.origin);
    const double half = std::sqrt((radius - off) * (radius + off));
    takeOut(spans, foot - half, foot + half);
}

void addCurves(const RimLine& line, std::vector<Curve>& curves, std::vector<VoidSide>& sides) {
    if (line.spans.empty()) return;
    for (const auto& [a, b] : line.spans) {
        if (b - a >= kBite) curves.push_back(straight(line.place(a), line.place(b), sides.size()));
    }
    sides.push_back(line.side);
}

ConvexPart bandPart(const ArrangedLine& line, const LaidKerf& kerf, const std::pair<double, double>& span, int owner) {
    const Point u = line.direction;
    const Point n = leftOf(u);
    const bool left = kerf.kerf.side == Side::Left;
    const double low = left ? 0 : -kerf.kerf.width;
    const double high = left ? kerf.kerf.width : 0;
    ConvexPart part{{{line.from + low * n, u}, {line.from + high * n, -1.0 * u}}, owner};
    if (span.first > -kPastThePanel) part.bounds.push_back({line.from + span.first * u, -1.0 * n});
    if (span.second < kPastThePanel) part.bounds.push_back({line.from + span.second * u, n});
    return part;
}

Looked lookedAt(const Frame& frame) {
    Looked looked{polygonPart(frame.corners), frame.whole, {}, {}};
    if (frame.hollow) {
        looked.hollow = polygonPart(cornersOf(*frame.hollow));
        looked.near = polygonPart(frame.near);
    }
    return looked;
}

void keepLooked(RimLine& line, const Looked& looked) {
    line.spans = within(line, looked.inside);
    if (!looked.hollow || line.spans.empty()) return;
    const RimLine unseen{line.origin, line.along, within(line, *looked.hollow), line.owner, {}, {}, {}};
    line.spans = without(std::move(line.spans), without(unseen.spans, within(unseen, looked.near)));
}

std::vector<RimLine> endsOf(const Looked& looked, int owner) {
    const auto sideKind = looked.whole ? VoidSide::Kind::World : VoidSide::Kind::Frame;
    std::vector<RimLine> ends = sidesOf(looked.inside, owner, sideKind);
    if (!looked.hollow) return ends;
    for (RimLine& side : sidesOf(looked.near, owner, VoidSide::Kind::Frame)) {
        side.spans = within(side, *looked.hollow);
        ends.push_back(std::move(side));
    }
    for (RimLine side : sidesOf(*looked.hollow, owner, VoidSide::Kind::Frame)) {
        side.spans = without(side.spans, within(side, looked.near));
        // What is looked at lies outside the hollow: the other way round.
        side.along = -1.0 * side.along;
        Spans turned;
        for (const auto& [from, to] : side.spans) addSpan(turned, -to, -from);
        side.spans = std::move(turned);
        ends.push_back(std::move(side));
    }
    return ends;
}

}  // namespace kerfwall

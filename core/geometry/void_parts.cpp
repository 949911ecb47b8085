// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/void_parts.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerance.h"

namespace kerfwall {

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

ConvexPart insideOf(const Frame& frame) {
    ConvexPart inside{{}, kFacesOwner};
    for (std::size_t i = 0; i < frame.corners.size(); ++i) {
        const Point& from = frame.corners[i];
        inside.bounds.push_back({from, unit(frame.corners[(i + 1) % frame.corners.size()] - from)});
    }
    return inside;
}

}  // namespace kerfwall

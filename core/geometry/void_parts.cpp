// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/void_parts.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerance.h"

namespace kerfwall {

Cover coverOf(const RimLine& line, const ConvexPart& part) {
    double from = -kEverywhere;
    double to = kEverywhere;
    bool outside = false;
    bool doubtful = false;
    constexpr double kParallel = 1e-13;
    for (const HalfPlane& half : part.bounds) {
        const double slope = cross(half.direction, line.along);
        const double level = cross(half.direction, line.origin - half.origin);
        if (std::abs(slope) > kParallel) {
            const double at = -level / slope;
            if (slope > 0) from = std::max(from, at);
            else to = std::min(to, at);
            continue;
        }
        const bool facing = dot(half.direction, line.along) < 0;
        if (std::abs(level) <= kSameSide) {
            // Facing: no wood between them. The same way: one of the two keeps the rim.
            if (!facing && part.owner >= line.owner) return {};
            continue;
        }
        doubtful = doubtful || (facing && std::abs(level) < kDoubt);
        outside = outside || level < 0;
    }
    Cover cover;
    if (!(from < to)) return cover;
    if (doubtful) cover.doubtful = {from, to};
    if (!outside) cover.span = {from, to};
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

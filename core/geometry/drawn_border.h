// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <iterator>
#include <string>
#include <vector>

#include "core/geometry/curve.h"
#include "core/geometry/outline.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {

/// The drawn cutout's border, to ask how far inside or outside it a place lies.
class DrawnBorder {
  public:
    struct Segment {
        Point from;
        Point to;
        /// From the nearest place of the segment to `p`.
        [[nodiscard]] Point awayTo(Point p) const {
            const Point along = to - from;
            const double t = std::clamp(dot(p - from, along) / dot(along, along), 0.0, 1.0);
            return p - from - t * along;
        }
        [[nodiscard]] double squareTo(Point p) const {
            const Point off = awayTo(p);
            return dot(off, off);
        }
    };

    explicit DrawnBorder(const Outline& drawn) {
        for (const OutlineLoop& loop : drawn.loops) {
            for (const OutlinePiece& piece : loop) {
                m_all.push_back({piece.from, piece.to});
                m_names.push_back(piece.on);
            }
        }
    }
    [[nodiscard]] const std::vector<Segment>& segments() const { return m_all; }
    /// The line or edge whose stretch of border is nearest.
    [[nodiscard]] const std::string& nearestName(Point place) const {
        const auto nearest = std::ranges::min_element(m_all, {}, [&](const Segment& side) { return side.squareTo(place); });
        return m_names[static_cast<std::size_t>(nearest - m_all.begin())];
    }
    [[nodiscard]] double distanceOutside(Point place) const { return distanceOutside(place, m_all); }
    /// The same where only `near` can be the nearest.
    [[nodiscard]] double distanceOutside(Point place, const std::vector<Segment>& near) const {
        double square = 1e300;
        for (const Segment& side : near) square = std::min(square, side.squareTo(place));
        if (square < kBite * kBite || isInside(place)) return 0;
        return std::sqrt(square);
    }
    [[nodiscard]] double distanceTo(Point place) const {
        double square = 1e300;
        for (const Segment& side : m_all) square = std::min(square, side.squareTo(place));
        return std::sqrt(square);
    }
    /// The sides that can be nearest to some place within `reach` of `middle`.
    [[nodiscard]] std::vector<Segment> near(Point middle, double reach) const {
        const double most = distanceTo(middle) + 2 * reach + kBite;
        std::vector<Segment> found;
        std::ranges::copy_if(m_all, std::back_inserter(found),
                             [&](const Segment& side) { return side.squareTo(middle) <= most * most; });
        return found;
    }

    [[nodiscard]] bool isInside(Point p) const {
        bool inside = false;
        for (const Segment& s : m_all) {
            if ((s.from.y > p.y) == (s.to.y > p.y)) continue;
            if (p.x < s.from.x + (p.y - s.from.y) / (s.to.y - s.from.y) * (s.to.x - s.from.x)) inside = !inside;
        }
        return inside;
    }

  private:
    std::vector<Segment> m_all;
    std::vector<std::string> m_names;
};

struct Deepest {
    double depth = 0;
    Point at;
};

/// The place of a stretch of curve that lies farthest outside the drawn cutout; depth 0 where none does.
/// Exact to  1e-9 of the stretch in its place.
[[nodiscard]] Deepest deepestOn(const Curve& curve, double from, double to, const DrawnBorder& border);

}  // namespace kerfwall

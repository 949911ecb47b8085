// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/curve.h"
#include "core/geometry/void_parts.h"

namespace kerfwall {

/// Circle and line, or two circles, that come this close to touching are taken as touching: they do not
/// cross.
inline constexpr double kTouch = 2e-10;

/// What a disc swept: a region by its rim's closed loops, to ask what it covers.
class SweptRegion {
  public:
    explicit SweptRegion(const Rim& rim);

    [[nodiscard]] const std::vector<Curve>& curves() const { return m_curves; }
    [[nodiscard]] bool holds(Point place) const;  ///< not for a place on the rim
    [[nodiscard]] bool isOnRim(Point place) const;
    /// What of a line's stretches lies in the region, or on its rim whichever way that runs.
    [[nodiscard]] Spans coverOn(const RimLine& line) const;
    /// Where an arc meets the rim, by the arc's parameter: crossings, and ends of the rim's curves on it.
    void markOn(const Curve& arc, std::vector<double>& marks) const;

  private:
    struct Loop {
        std::vector<Curve> curves;
        Box bounds;
    };
    std::vector<Loop> m_loops;
    std::vector<Curve> m_curves;
};

/// As meetLine and meetCircle, where they do not merely touch.
void crossLine(const Curve& arc, Point origin, Point direction, std::vector<double>& marks);
void crossCircle(const Curve& arc, Point centre, double radius, std::vector<double>& marks);

}  // namespace kerfwall

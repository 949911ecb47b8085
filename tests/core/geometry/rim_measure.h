// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/void_rim.h"

namespace kerfwall::test {

/// How long the stretches of one kind are together, mm.
inline double lengthOf(const VoidRim& made, VoidSide::Kind kind) {
    double along = 0;
    for (const Curve& curve : made.rim.curves) {
        if (made.sides.at(curve.tag).kind == kind) along += curve.lengthInMm();
    }
    return along;
}

/// mm², the frame's inside counted in.
inline double voidArea(const VoidRim& made) {
    double area = 0;
    for (const auto& loop : made.rim.closedRuns()) area += signedArea(loop);
    return area;
}

}  // namespace kerfwall::test

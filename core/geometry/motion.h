// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/point.h"

namespace kerfwall {

/// A movement of the plan that stretches nothing: a shift, a turn or a mirroring. Panel frame.
struct Motion {
    Point acrossTo{1, 0};  ///< where the direction +x goes
    Point upTo{0, 1};      ///< where the direction +y goes
    Point shift;           ///< where the origin goes, mm
    double turn = 0;       ///< degrees anticlockwise; mirrored: twice the angle of the axis
    bool mirrors = false;
    bool operator==(const Motion&) const = default;
};

[[nodiscard]] Motion shiftBy(Point shift);
/// Anticlockwise by `angle` degrees. Quarter turns are exact.
[[nodiscard]] Motion turnAbout(Point centre, double angle);
/// Requires  along is not the zero vector.
[[nodiscard]] Motion mirrorAbout(Point on, Point along);

/// True for a shift and nothing else.
[[nodiscard]] bool isShift(const Motion& motion);

/// Where a place goes.
[[nodiscard]] Point moved(const Motion& motion, Point place);
/// Where a direction goes.
[[nodiscard]] Point headed(const Motion& motion, Point direction);

/// A length or coordinate to the nanometre: free of what was lost in working it out.
[[nodiscard]] double tidied(double mm);
[[nodiscard]] Point tidied(Point place);
/// An angle to 1e-9 degrees, over -180 up to 180.
[[nodiscard]] double tidiedAngle(double degrees);

}  // namespace kerfwall

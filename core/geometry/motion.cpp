// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/motion.h"

#include <cmath>

#include "core/geometry/angle.h"

namespace kerfwall {
namespace {

constexpr double kQuarter = 90;  // degrees
constexpr double kNanometres = 1e6;  // in 1 mm
constexpr double kAngleParts = 1e9;  // of a degree

/// The direction at that angle; quarter turns exact.
Point directionAt(double angle) {
    const double quarters = angle / kQuarter;
    if (quarters != std::round(quarters)) return {std::cos(radians(angle)), std::sin(radians(angle))};
    switch (((static_cast<int>(quarters) % 4) + 4) % 4) {
        case 1: return {0, 1};
        case 2: return {-1, 0};
        case 3: return {0, -1};
        default: return {1, 0};
    }
}

/// The motion with those directions that leaves one place where it is.
Motion about(Point fixed, Point acrossTo, Point upTo, double turn, bool mirrors) {
    Motion motion{acrossTo, upTo, {}, turn, mirrors};
    motion.shift = fixed - headed(motion, fixed);
    return motion;
}

}  // namespace

Motion shiftBy(Point shift) { return {{1, 0}, {0, 1}, shift, 0, false}; }

Motion turnAbout(Point centre, double angle) {
    const Point across = directionAt(angle);
    return about(centre, across, leftOf(across), angle, false);
}

Motion mirrorAbout(Point on, Point along) {
    const double axis = degrees(std::atan2(along.y, along.x));
    const Point u = unit(along);
    const Point across{u.x * u.x - u.y * u.y, 2 * u.x * u.y};
    return about(on, across, -1.0 * leftOf(across), 2 * axis, true);
}

bool isShift(const Motion& motion) { return !motion.mirrors && motion.turn == 0; }

Point moved(const Motion& motion, Point place) { return motion.shift + headed(motion, place); }

Point headed(const Motion& motion, Point direction) {
    return direction.x * motion.acrossTo + direction.y * motion.upTo;
}

double tidied(double mm) { return std::round(mm * kNanometres) / kNanometres + 0.0; }

Point tidied(Point place) { return {tidied(place.x), tidied(place.y)}; }

double tidiedAngle(double angle) {
    const double within = std::remainder(angle, 360);
    return std::round(within * kAngleParts) / kAngleParts + 0.0;
}

}  // namespace kerfwall

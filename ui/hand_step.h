// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/says/project.h"

namespace kerfwall {

inline constexpr int kFarSteps = 10;  ///< Shift and an arrow key: that many steps

/// The step the hand works in at that scale: whole parts of a millimetre, or marks of an inch rule; in mm.
[[nodiscard]] inline double handStep(double pixelsPerMm, Units units) {
    constexpr double kInch = 25.4;
    if (units == Units::Inches) {
        if (pixelsPerMm >= 10) return kInch / 64;
        if (pixelsPerMm >= 4) return kInch / 32;
        return pixelsPerMm >= 0.8 ? kInch / 16 : kInch / 8;
    }
    if (pixelsPerMm >= 25) return 0.1;
    if (pixelsPerMm >= 8) return 0.5;
    return pixelsPerMm >= 0.7 ? 1 : 5;
}

}  // namespace kerfwall

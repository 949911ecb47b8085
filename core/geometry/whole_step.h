// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>

namespace kerfwall {

/// The whole number of steps nearest to a value. Decimal steps give decimals as they are written: 0.3, not
/// 3 * 0.1 = 0.30000000000000004.
[[nodiscard]] inline double stepped(double value, double step) {
    constexpr double kRounding = 1e-12;  // a share: a step that divides the millimetre does so up to this
    const double perMm = std::round(1 / step);
    if (perMm >= 1 && std::abs(perMm * step - 1) < kRounding) return std::round(value * perMm) / perMm;
    return std::round(value / step) * step;
}

}  // namespace kerfwall

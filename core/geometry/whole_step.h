// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>

namespace kerfwall {

/// The whole number of steps nearest to a value.
[[nodiscard]] inline double stepped(double value, double step) { return std::round(value / step) * step; }

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/geometry/measuring.h"

namespace kerfwall {

/// "line A", "the crossing of A and C", "the opening".
[[nodiscard]] QString measurableText(const Measurable& thing);

/// What one thing measures by itself: a line's angle and run, an arc's radius, where a place lies.
[[nodiscard]] QString aloneText(const Project& project, const Measurable& thing);

/// What was measured between two: the distance, its parts to the right and up, the angle.
[[nodiscard]] QString measurementText(const Project& project, const Measurement& measured);

}  // namespace kerfwall

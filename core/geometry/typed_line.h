// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/laying.h"

namespace kerfwall {

/// A line laid by numbers alone: `distance` mm to the left of `from`, turned by `angle` degrees about the place
/// at that distance nearest to the panel's true corner.
/// Refuses   OffThePanel, OnALine.
[[nodiscard]] std::expected<Place, NoLine> typedLine(const Project& project, const Solved& solved, const Base& from,
                                                     double distance, double angle);

}  // namespace kerfwall

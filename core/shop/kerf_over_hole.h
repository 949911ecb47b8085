// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/solved.h"

namespace kerfwall {

/// A kerf held against a clamp hole, and how wide the hole counts in plan there. Valid while the answer
/// it points into is.
struct KerfOver {
    const SolvedLine* line = nullptr;
    const Kerf* kerf = nullptr;
    double width = 0;  ///< mm
};

/// The hole's width in plan at `floor` mm below the layout face, the widest above it counted; 0 where the
/// hole begins deeper.
/// Source    chord of a circle: 2 sqrt(r^2 - h^2).
[[nodiscard]] double widthAtFloor(const Panel& panel, const ClampHole& hole, double floor);

/// True where a hole `depth` deep lies under the kerf's full-depth band in plan.
[[nodiscard]] bool crossesHole(const Panel& panel, const ClampHole& hole, double depth, const KerfOver& over);

/// How deep the hole can be drilled without coming under the kerf, to less than a micrometre.
/// Requires  crossesHole at the hole's own depth.
[[nodiscard]] double clearDepth(const Panel& panel, const ClampHole& hole, const KerfOver& over);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/motion.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// A clamp hole after a motion. A shift moves it along its edge, and not past the edge's ends.
/// Gives     none where it would be bored from no edge: a turn by no quarter, a slanting mirror.
[[nodiscard]] std::optional<ClampHole> movedHole(const Panel& panel, const ClampHole& hole, const Motion& motion);

/// A fence after a motion, measured along `bases`' first straight that is parallel to it, then along the panel's edges,
/// else along any line.
/// Requires  `before` is where it lay (fenceBody).
/// Gives     none where nothing runs parallel to it.
[[nodiscard]] std::optional<Fence> movedFence(const Panel& panel, const Solved& after, Fence fence, const std::vector<Point>& before,
                                              const Motion& motion);

}  // namespace kerfwall

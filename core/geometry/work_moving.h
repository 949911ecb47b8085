// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/motion.h"
#include "core/says/project.h"

namespace kerfwall {

/// The size wanted after a motion.
[[nodiscard]] Wanted moved(Wanted wanted, const Motion& motion);

/// The workpiece after a motion, its grain turned along.
[[nodiscard]] Workpiece moved(Workpiece workpiece, const Motion& motion);

}  // namespace kerfwall

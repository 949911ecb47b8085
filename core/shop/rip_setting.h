// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/shop/way.h"

namespace kerfwall {

/// The table saw's rip fence with `against` on it, panel face down. `saw` of the answer is not set.
/// Requires  the kerf runs along `against`.
/// Source    fence y where the waste lies beyond the line, y - kerf where it lies between line and fence.
[[nodiscard]] Way ripWay(const Panel& panel, const Saw& saw, const KerfAsked& kerf, Edge against);

}  // namespace kerfwall

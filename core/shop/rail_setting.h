// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/shop/way.h"

namespace kerfwall {

/// The hand-held saw on its rail, panel face up. The rail lies on the kept side with its edge on the line,
/// so the saw is pushed the way that has the waste across from the rail. `saw` is not set.
[[nodiscard]] Way railWay(const Panel& panel, const Saw& saw, const KerfAsked& kerf);

/// How much panel lies under the rail on the kept side where there is least of it, mm: square to the line in the
/// middle of the stretch that is cut and a tenth of it from both its ends. Less than the rail is wide, it needs support.
[[nodiscard]] double panelUnderRail(const Panel& panel, const KerfAsked& kerf);

/// Whether the saw on its rail is pushed in the line's direction (else against it).
/// Source    the rail on the left of the cut, waste on the right of the push; on the right, mirrored.
[[nodiscard]] bool isPushedAlong(const Saw& saw, const KerfAsked& kerf);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/outline.h"
#include "core/says/panel.h"

namespace kerfwall {

/// The outline of all places on the panel that lie inside `drawn` and at least `by` mm from each of its stretches
/// on a line. Its stretches on a panel edge keep no distance: the saw comes in there. Names its own on an edge.
/// Requires  by > 0; `drawn` of straight pieces, its stretches on panel edges named after them.
/// Gives     an empty outline where nothing is so far from all of them.
[[nodiscard]] Outline insetOf(const Outline& drawn, double by, const Panel& panel);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/outline.h"
#include "core/says/panel.h"

namespace kerfwall {

/// True inside the panel and off its edges.
[[nodiscard]] bool liesInsidePanel(const Panel& panel, Point place);

/// The loop's pieces as far as they lie on the panel, without those that run along its edges: what an open
/// cutout's wanted outline asks for. An arc across an edge is left out.
[[nodiscard]] std::vector<OutlinePiece> clippedToPanel(const Panel& panel, const OutlineLoop& loop);

}  // namespace kerfwall

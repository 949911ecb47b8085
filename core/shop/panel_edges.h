// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/outline.h"
#include "core/says/fixture.h"
#include "core/says/panel.h"

namespace kerfwall {

/// An edge from its start corner to its end, anticlockwise round the panel.
[[nodiscard]] OutlinePiece edgePiece(const Panel& panel, Edge edge);

/// A clamp hole's axis in plan, from the edge inwards to the drill's point.
[[nodiscard]] OutlinePiece axisOf(const Panel& panel, const ClampHole& hole);

/// Height of a clamp hole's axis below the layout face, mm: as given, else half the thickness.
[[nodiscard]] double heightOf(const Panel& panel, const ClampHole& hole);

/// True for a piece that lies on one of the panel's edges.
[[nodiscard]] bool liesOnEdge(const OutlinePiece& piece);

}  // namespace kerfwall

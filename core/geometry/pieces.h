// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/outline.h"
#include "core/geometry/rows.h"

namespace kerfwall {

/// The place half way along a piece; arcs of half a turn and less.
[[nodiscard]] Point middleOf(const OutlinePiece& piece);

/// How often a loop turns round a place, anticlockwise positive; its own border counts as either.
/// Source    chords by a ray to the right, and the slices between chord and arc. Exact for arcs of half a turn and
///           less; no angle is summed up, so that it costs little and is another way than `windingRound`.
[[nodiscard]] int turnsRound(const OutlineLoop& loop, Point place);

/// An outline's pieces by the rows they lie in, to ask it about many places.
/// Requires  the outline outlives it.
class Pieces {
  public:
    explicit Pieces(const Outline& outline);

    /// The sum of `turnsRound` over its loops: 1 inside.
    [[nodiscard]] int turnsRound(Point place) const;
    /// True where its border comes within `reach` mm of a place.
    [[nodiscard]] bool isOnBorder(Point place, double reach) const;

  private:
    std::vector<const OutlinePiece*> m_all;
    Rows m_rows;
};

}  // namespace kerfwall

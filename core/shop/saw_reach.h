// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/point.h"
#include "core/says/bench.h"
#include "core/says/panel.h"

namespace kerfwall {

/// A wedge steeper than this slides along the sled's fence, degrees. Common practice, no source.
inline constexpr double kSteepestWedge = 10;

/// A cut that is asked for: its run on the panel, its depth, and whether it stops short.
struct AskedCut {
    Point from;
    Point to;
    double depth = 0;  ///< mm
    bool stopped = false;
};

/// Whether the saw can make the cut with the edge `against` on its fence, within its length, its angle,
/// its blade and its fence's travel. A rail lies on the marks and asks for no edge.
[[nodiscard]] bool reaches(const Saw& saw, const AskedCut& cut, Edge against, const Panel& panel);

/// Whether the kind can end its kerf short of the panel's edge.
[[nodiscard]] bool canStop(SawKind kind);

/// Thickness of the piece behind the panel at a sliding mitre saw, so that a kerf has its depth at the fence.
/// Source    the length of the shallow end there, see reachOfRound.
[[nodiscard]] double spacerFor(const Saw& saw, double depth);

}  // namespace kerfwall

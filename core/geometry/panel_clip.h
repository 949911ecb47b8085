// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/arranged.h"
#include "core/geometry/curve.h"

namespace kerfwall {

/// A closed run of curves, the region on its left; `edges` stands beside `curves` and names the panel's
/// edge where the run lies on it.
struct ClippedLoop {
    std::vector<Curve> curves;
    std::vector<std::optional<Edge>> edges;
};

/// What of a rim's region (on its left) lies on the panel. The rim's closed loops count, nothing else. A region
/// that holds the panel's whole border gives the border as a loop.
[[nodiscard]] std::vector<ClippedLoop> clipToPanel(const Rim& rim, const Panel& panel);

/// Places where a rim comes from the panel to within kDoubt of its edge and turns back: whether two regions part there
/// is not to be told.
[[nodiscard]] std::vector<Point> touchesOf(const Rim& rim, const Panel& panel);

/// Loops gathered into regions: an outer loop first, then the holes in it. Dust is left out.
[[nodiscard]] std::vector<std::vector<std::size_t>> regionsOf(const std::vector<std::vector<Curve>>& loops);

/// True where a region (as regionsOf gives it) and the faces have more than a border in common.
[[nodiscard]] bool isOver(const std::vector<std::vector<Curve>>& loops, const std::vector<std::size_t>& region,
                          const std::vector<ArrangedFace>& faces);

/// True where the place lies on the panel, more than `margin` from its edges.
[[nodiscard]] bool isOnPanel(const Panel& panel, Point place, double margin = 0);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/measured_edge.h"

#include <algorithm>

#include "core/shop/way.h"

namespace kerfwall {

bool isMeasuredFrom(const Panel& panel, Edge edge) {
    if (edge == panel.referenceEdge || panel.squareCorner == SquareCorner::All) return true;
    const std::vector<Edge> ends = trueEnds(panel, panel.referenceEdge);
    return std::ranges::find(ends, edge) != ends.end();
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/bases.h"

#include <algorithm>

#include "core/geometry/edge_place.h"

namespace kerfwall {

std::vector<Base> edgeBases(const Panel& panel) {
    std::vector<Base> bases{panel.referenceEdge, squareEdge(panel)};
    for (const Edge edge : kEdges) {
        if (std::ranges::find(bases, Base{edge}) == bases.end()) bases.emplace_back(edge);
    }
    return bases;
}

std::vector<Base> allBases(const Panel& panel, const Solved& solved) {
    std::vector<Base> bases = edgeBases(panel);
    for (const SolvedLine& line : solved.lines) bases.emplace_back(line.id);
    return bases;
}

}  // namespace kerfwall

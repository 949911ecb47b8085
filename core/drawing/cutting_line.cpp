// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/cutting_line.h"

#include <algorithm>

namespace kerfwall {

Point cutHeading(CutDirection direction) {
    return direction == CutDirection::Level ? Point{1, 0} : Point{0, 1};
}

double cutLength(const Panel& panel, CutDirection direction) {
    return direction == CutDirection::Level ? panel.width : panel.height;
}

double cutReach(const Panel& panel, CutDirection direction) {
    return direction == CutDirection::Level ? panel.height : panel.width;
}

Point onCut(const CuttingLine& cut, double along) {
    return cut.direction == CutDirection::Level ? Point{along, cut.at} : Point{cut.at, along};
}

double alongCut(const CuttingLine& cut, Point place) {
    return cut.direction == CutDirection::Level ? place.x : place.y;
}

double beyondCut(const CuttingLine& cut, Point place) {
    return cut.direction == CutDirection::Level ? place.y - cut.at : cut.at - place.x;
}

CuttingLine cutThrough(const Panel& panel, CutDirection direction, Point place) {
    const double at = direction == CutDirection::Level ? place.y : place.x;
    return {direction, std::clamp(at, 0.0, cutReach(panel, direction))};
}

}  // namespace kerfwall

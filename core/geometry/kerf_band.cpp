// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/kerf_band.h"

#include "core/geometry/clip.h"
#include "core/geometry/edge_place.h"

namespace kerfwall {

std::vector<Point> clippedToPanel(std::vector<Point> polygon, const Panel& panel) {
    for (const Edge edge : kEdges) {
        const Point start = markPlace(panel, {edge, 0});
        polygon = leftPart(polygon, start, start + edgeLength(panel, edge) * edgeHeading(edge));
    }
    return polygon;
}

Point kerfSide(const SolvedLine& line, const Kerf& kerf) {
    const Point left = leftOf(unit(line.to - line.from));
    return kerf.side == Side::Left ? left : -1.0 * left;
}

std::vector<Point> kerfBand(const Panel& panel, const SolvedLine& line, const Kerf& kerf, double from, double to) {
    const double whole = distance(line.from, line.to);
    const double beyond = panel.width + panel.height;
    const Point along = unit(line.to - line.from);
    const Point across = kerf.width * kerfSide(line, kerf);
    const Point a = line.from + (from <= 0 ? -beyond : from) * along;
    const Point b = line.from + (to >= whole ? whole + beyond : to) * along;
    return clippedToPanel({a, b, b + across, a + across}, panel);
}

}  // namespace kerfwall

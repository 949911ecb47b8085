// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/waste_click.h"

#include <algorithm>

#include "core/geometry/clip.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/solve.h"
#include "core/geometry/tolerance.h"
#include "core/geometry/widest_disc.h"

namespace kerfwall {
namespace {

bool hasSideOnEdge(const Panel& panel, const std::vector<Point>& face) {
    for (std::size_t i = 0; i < face.size(); ++i) {
        const Point from = face[i], to = face[(i + 1) % face.size()];
        if (distance(from, to) < kShortestWall) continue;
        for (const Edge edge : kEdges) {
            if (std::max(distanceFromEdge(panel, edge, from), distanceFromEdge(panel, edge, to)) <= kSameSide) return true;
        }
    }
    return false;
}

}  // namespace

std::expected<WasteClick, NoMarking> wasteClickAt(const Project& project, Point place, const std::string& joinTo) {
    const auto marking = markWaste(project, place, joinTo);
    if (!marking) return std::unexpected(marking.error());
    WasteClick click;
    click.face = facePolygon(project, place);
    if (click.face.size() < 3) return std::unexpected(NoMarking::OnALine);
    click.bounds = boundsOf(click.face);
    click.area = polygonArea(click.face);
    click.widest = widestDisc(makeOutline({polygonLoop(click.face)})).diameter;
    click.what = marking->what;
    click.cutout = marking->cutout;
    const auto cutout = std::ranges::find(marking->project.cutouts, click.cutout, &Cutout::id);
    if (cutout == marking->project.cutouts.end()) return click;
    std::vector<Point> corners;
    for (const Point seed : cutout->seeds) {
        const std::vector<Point> face = facePolygon(project, seed);
        if (face.size() < 3) continue;
        corners.insert(corners.end(), face.begin(), face.end());
        click.cutoutArea += polygonArea(face);
        click.open = click.open || hasSideOnEdge(project.panel, face);
    }
    if (!corners.empty()) click.cutoutBounds = boundsOf(corners);
    return click;
}

}  // namespace kerfwall

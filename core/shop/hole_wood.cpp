// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/hole_wood.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/distance.h"
#include "core/geometry/edge_place.h"
#include "core/shop/kerf_over_hole.h"
#include "core/shop/limits.h"
#include "core/shop/panel_edges.h"

namespace kerfwall {
namespace {

/// A clamp hole held against all that is on the panel.
struct Round {
    const Project& project;
    const Solved& solved;
    std::size_t index;
    const ClampHole& hole;
    OutlinePiece axis;
    double height;  ///< of the axis below the layout face
    std::vector<WoodLeft> wood;

    void add(WoodAt at, double left, const std::string& what = {}) { wood.push_back({at, left, what}); }
    void addPanel();
    void addKerfs();
    void addCutouts();
    void addHoles();
};

/// A place on an axis that is not the drill's point: there the hole has its flank around it.
bool isBeforePoint(const OutlinePiece& axis, Point place) { return distance(place, axis.to) > kOnLimit; }

void Round::addPanel() {
    const double radius = hole.diameter / 2;
    add(WoodAt::Above, height - radius);
    add(WoodAt::Below, project.panel.thickness - height - radius);
    add(WoodAt::EdgeStart, hole.at - radius);
    add(WoodAt::EdgeEnd, edgeLength(project.panel, hole.edge) - hole.at - radius);
}

void Round::addKerfs() {
    const double begins = height - hole.diameter / 2;
    for (const SolvedLine& line : solved.lines) {
        for (const Kerf& kerf : line.kerfs) {
            const bool reaches = kerf.depth > begins + kOnLimit;
            const double width = reaches ? widthAtFloor(project.panel, hole, kerf.depth) : hole.diameter;
            if (crossesHole(project.panel, hole, hole.depth, {&line, &kerf, width})) {
                add(WoodAt::UnderKerf, begins - kerf.depth, line.id);
            }
        }
    }
}

void Round::addCutouts() {
    for (const SolvedCutout& cutout : solved.cutouts) {
        const auto gap = gapBetween(axis, cutout.opening);
        const auto point = gapBetween(straight(axis.to, axis.to), cutout.opening);
        if (!gap || !point) continue;
        const bool into = gap->distance == 0 || isInside(cutout.opening, axis.to);
        add(WoodAt::AheadCutout, into ? 0 : point->distance, cutout.id);
        // One that the axis runs into, or that lies ahead of the point, has nothing beside it.
        if (gap->distance > 0 && isBeforePoint(axis, gap->first)) {
            add(WoodAt::BesideCutout, gap->distance - hole.diameter / 2, cutout.id);
        }
    }
    const bool level = hole.edge == Edge::Left || hole.edge == Edge::Right;
    add(WoodAt::AheadEdge, std::max(0.0, (level ? project.panel.width : project.panel.height) - hole.depth));
}

void Round::addHoles() {
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) {
        const ClampHole& other = project.clampHoles[i];
        if (i == index || other.depth <= 0) continue;
        const OutlinePiece otherAxis = axisOf(project.panel, other);
        const Gap gap = gapBetween(axis, otherAxis);
        const double apart = std::hypot(gap.distance, height - heightOf(project.panel, other));
        const double flanks = (isBeforePoint(axis, gap.first) ? hole.diameter / 2 : 0) +
                              (isBeforePoint(otherAxis, gap.second) ? other.diameter / 2 : 0);
        add(WoodAt::BesideHole, apart - flanks, holeNumber(project, i));
    }
}

}  // namespace

std::string holeNumber(const Project& project, std::size_t hole) {
    const std::string& id = project.clampHoles.at(hole).id;
    return id.empty() ? std::to_string(hole + 1) : id;
}

std::vector<WoodLeft> woodRound(const Project& project, const Solved& solved, std::size_t hole) {
    const ClampHole& of = project.clampHoles.at(hole);
    Round round{project, solved, hole, of, axisOf(project.panel, of), heightOf(project.panel, of), {}};
    round.addPanel();
    round.addKerfs();
    round.addCutouts();
    round.addHoles();
    std::ranges::stable_sort(round.wood, {}, &WoodLeft::at);
    return round.wood;
}

}  // namespace kerfwall

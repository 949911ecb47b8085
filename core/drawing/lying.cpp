// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/lying.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/geometry/edge_place.h"
#include "core/says/bench.h"

namespace kerfwall {
namespace {

/// The panel's own directions from where the edge on the fence runs and the panel lies beside it.
Lying fromEdge(Edge against, Point runs, Point panelSide) {
    const Point along = edgeHeading(against);
    const Point inward = leftOf(along);
    return {along.x * runs + inward.x * panelSide, along.y * runs + inward.y * panelSide};
}

Point turnedBy(Point place, double degreesLeft) {
    const double angle = radians(degreesLeft);
    return {std::cos(angle) * place.x - std::sin(angle) * place.y, std::sin(angle) * place.x + std::cos(angle) * place.y};
}

bool isFenceFar(const Saw& saw) {
    return saw.kind == SawKind::SlidingMitre || (saw.kind == SawKind::CrosscutSled && saw.fenceFar);
}

}  // namespace

Lying lyingAt(const Project& project, const WorkStep& step) {
    const Bench bench = benchOf(project);
    const Saw* saw = findSaw(bench, step.saw);
    const double face = step.faceUp ? 1 : -1;  // face up the panel lies on the left of its edges
    if (!step.against) return step.faceUp ? Lying{} : Lying{{-1, 0}, {0, 1}};
    const Point farSide{0, -1};
    // A drill press has its fence behind the spindle, as a sliding saw has.
    if (!saw) return fromEdge(*step.against, -face * leftOf(farSide), farSide);
    if (saw->kind == SawKind::RipFence) {
        const Point panelSide{saw->fenceSide == Side::Right ? -1.0 : 1.0, 0};
        return fromEdge(*step.against, -face * leftOf(panelSide), panelSide);
    }
    const Point panelSide{0, isFenceFar(*saw) ? -1.0 : 1.0};
    Lying lying = fromEdge(*step.against, -face * leftOf(panelSide), panelSide);
    const double turn = turnOfPanelAt(project, step);
    lying.right = turnedBy(lying.right, turn);
    lying.up = turnedBy(lying.up, turn);
    return lying;
}

double turnOfPanelAt(const Project& project, const WorkStep& step) {
    const Bench bench = benchOf(project);
    const Saw* saw = findSaw(bench, step.saw);
    if (!saw || !step.turn) return 0;
    const double left = *step.turn == Side::Left ? 1 : -1;
    if (saw->kind == SawKind::MitreGauge) return left * step.setting.angle.value_or(0);
    if (saw->kind == SawKind::CrosscutSled && step.setting.wedge && step.setting.wedge->length > 0) {
        return left * degrees(std::atan2(step.setting.wedge->rise, step.setting.wedge->length));
    }
    return 0;
}

OutlineLoop laid(const OutlineLoop& loop, const Lying& lying) {
    OutlineLoop put = loop;
    for (OutlinePiece& piece : put) {
        piece.from = lying.put(piece.from);
        piece.to = lying.put(piece.to);
        piece.centre = lying.put(piece.centre);
        if (lying.isMirrored()) piece.turn = piece.turn == Turn::Left ? Turn::Right : Turn::Left;
    }
    return put;
}

std::vector<OutlineLoop> laid(const std::vector<OutlineLoop>& loops, const Lying& lying) {
    std::vector<OutlineLoop> put;
    for (const OutlineLoop& loop : loops) put.push_back(laid(loop, lying));
    return put;
}

std::vector<Point> laid(std::vector<Point> places, const Lying& lying) {
    for (Point& place : places) place = lying.put(place);
    return places;
}

Box boundsLaid(const Panel& panel, const Lying& lying) {
    Box box{lying.put({0, 0}), lying.put({0, 0})};
    for (const Point corner : {Point{panel.width, 0}, Point{panel.width, panel.height}, Point{0, panel.height}}) {
        const Point at = lying.put(corner);
        box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y)};
        box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y)};
    }
    return box;
}

}  // namespace kerfwall

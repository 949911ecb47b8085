// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/drawing/plan_parts.h"
#include "core/geometry/angle.h"
#include "core/geometry/fencing.h"

namespace kerfwall {
namespace {

constexpr double kNameHeight = 2.8;  // mm on paper
constexpr double kTurnsOver = 1e-9;  // a text along a line that runs down, or to the left, is turned to be read

/// Degrees at which a text runs along a fence and is read from below or from the right.
double readableTurn(Point along) {
    const bool backwards = along.x < -kTurnsOver || (along.x < kTurnsOver && along.y < 0);
    const Point way = backwards ? -1.0 * along : along;
    return degrees(std::atan2(way.y, way.x));
}

void addName(Drawing& drawing, const Fence& fence, const std::vector<Point>& body, const std::string& id, double scale) {
    const Point along = unit(body[1] - body[0]);
    const double turn = readableTurn(along);
    const Point up{-std::sin(radians(turn)), std::cos(radians(turn))};
    const std::string name = (fence.kind == FenceKind::Stop ? "stop " : "fence ") + id;
    const double letters = kNameHeight * scale;
    // Letters are about six tenths of their height wide; a name that does not fit is left out.
    if (letters * 1.4 > fence.width || 0.62 * letters * static_cast<double>(name.size()) > distance(body[0], body[1])) return;
    const Point middle = 0.5 * (body[0] + body[2]);
    drawing.marks.emplace_back(
        Label{Ink::Text, middle - 0.36 * letters * up, name, kNameHeight, Anchor::Middle, turn, "fence-" + id});
}

}  // namespace

void addFences(Drawing& drawing, const Project& project, const Solved& solved, const PlanLayers& layers) {
    for (std::size_t i = 0; i < project.fences.size(); ++i) {
        const Fence& fence = project.fences[i];
        const std::vector<Point> body = fenceBody(project, solved, fence);
        if (body.empty()) continue;
        const std::string id = std::to_string(i + 1);
        // Under the panel it is a hidden edge.
        const bool hidden = fence.face == Face::Back;
        drawing.marks.emplace_back(Area{hidden ? Ink::Hidden : Ink::FenceBody, {polygonLoop(body)}, id});
        drawing.marks.emplace_back(Stroke{hidden ? Ink::Hidden : Ink::PanelEdge, body[0], body[1], id});
        addName(drawing, fence, body, id, layers.markScale);
    }
}

}  // namespace kerfwall

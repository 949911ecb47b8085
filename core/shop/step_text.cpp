// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/step_text.h"

#include <array>
#include <charconv>
#include <cmath>

#include "core/geometry/edge_name.h"
#include "core/geometry/edge_place.h"
#include "core/says/length_text.h"
#include "core/shop/heading.h"

namespace kerfwall {

std::string edgeWord(Edge edge) { return std::string(edgeName(edge)); }

std::string sideWord(Side side) { return side == Side::Left ? "left" : "right"; }

std::string cornerWord(Edge one, Edge other) {
    const bool oneIsLevel = one == Edge::Bottom || one == Edge::Top;
    return edgeWord(oneIsLevel ? one : other) + "-" + edgeWord(oneIsLevel ? other : one) + " corner";
}

std::string sizeText(const Project& project, double mm) {
    return lengthAtSaw(mm, project.units) + (project.units == Units::Inches ? "\"" : " mm");
}

std::string degreesText(double degrees) {
    const double hundredths = std::round(degrees * 100) / 100;
    std::array<char, 40> room{};
    const auto end = std::to_chars(room.data(), room.data() + room.size(), hundredths).ptr;
    return std::string(room.data(), end) + "°";
}

Edge measuredEnd(const Panel& panel) {
    return panel.squareCorner == SquareCorner::End ? nextOf(panel.referenceEdge)
                                                   : previousOf(panel.referenceEdge);
}

Edge measuredFrom(const Panel& panel, Edge edge) {
    const Edge reference = panel.referenceEdge;
    return edge == reference || edge == oppositeOf(reference) ? measuredEnd(panel) : reference;
}

std::string markText(const Project& project, const EdgeMark& mark) {
    const Edge corner = measuredFrom(project.panel, mark.edge);
    const bool fromStart = corner == previousOf(mark.edge);
    const double at = fromStart ? mark.at : edgeLength(project.panel, mark.edge) - mark.at;
    return sizeText(project, at) + " from the " + cornerWord(mark.edge, corner) + " on the " +
           edgeWord(mark.edge) + " edge";
}

std::string placeText(const Project& project, Point place) {
    const Edge end = measuredEnd(project.panel);
    const Edge reference = project.panel.referenceEdge;
    return sizeText(project, distanceFromEdge(project.panel, end, place)) + " from the " + edgeWord(end) +
           " edge and " + sizeText(project, distanceFromEdge(project.panel, reference, place)) + " from the " +
           edgeWord(reference) + " edge";
}

}  // namespace kerfwall

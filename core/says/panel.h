// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string>

namespace kerfwall {

/// The panel's edges, directed anticlockwise round the panel, so that the panel lies on the left.
enum class Edge { Bottom, Right, Top, Left };
inline constexpr std::array kEdges{Edge::Bottom, Edge::Right, Edge::Top, Edge::Left};

/// Which end of the reference edge has a true right angle. All: four true corners, both sizes measured.
enum class SquareCorner { Start, End, Both, None, All };

/// The stock panel a template is made from. Lengths in mm.
struct Panel {
    double width = 0;      ///< 10 to 3000, along x
    double height = 0;     ///< 10 to 3000, along y
    double thickness = 0;  ///< 3 to 60
    std::string material = "mdf";
    Edge referenceEdge = Edge::Bottom;
    SquareCorner squareCorner = SquareCorner::Start;
    std::string unknown;  ///< fields this version does not know, as a JSON object's text; "" for none
    bool operator==(const Panel&) const = default;
};

/// A material is named by an id of lower-case letters, digits and hyphens.
[[nodiscard]] inline bool isMaterialId(const std::string& id) {
    return id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos;
}

}  // namespace kerfwall

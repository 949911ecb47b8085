// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/solve.h"

namespace kerfwall {

/// A panel of 400 x 250 x 12, reference edge at the bottom, true at its left corner.
inline Project blankPanel() {
    Project project;
    project.panel.width = 400;
    project.panel.height = 250;
    project.panel.thickness = 12;
    return project;
}

inline void addLine(Project& project, const LineId& id, const Place& place) {
    LayoutLine line;
    line.id = id;
    line.place = place;
    project.lines.push_back(line);
}

/// Lines A y 90, B y 146, C x 110, D x 290: a middle face of 180 x 56 round (200, 118).
inline Project gridOfFour() {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 90});
    addLine(project, "B", ByOffset{Edge::Bottom, 146});
    addLine(project, "C", ByOffset{Edge::Left, 110});
    addLine(project, "D", ByOffset{Edge::Left, 290});
    return project;
}

/// Lines A y 90, B y 146, C x 110, D x 290, the window between them marked, a clamp hole from the bottom at x 60
/// (5 x 40) and a fence along the bottom over x 310 to 380, y 20 to 35.
inline Project sheetOfThings() {
    Project project = gridOfFour();
    project.cutouts.push_back({"window", {{200, 118}}, {}, {}, {}});
    ClampHole& hole = project.clampHoles.emplace_back();
    hole.edge = Edge::Bottom;
    hole.at = 60;
    hole.diameter = 5;
    hole.depth = 40;
    Fence& fence = project.fences.emplace_back();
    fence.along = Edge::Bottom;
    fence.offset = 20;
    fence.from = 310;
    fence.to = 380;
    fence.width = 15;
    fence.height = 10;
    return project;
}

}  // namespace kerfwall

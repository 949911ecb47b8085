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

}  // namespace kerfwall

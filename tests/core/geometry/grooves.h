// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "tests/core/geometry/projects.h"

namespace kerfwall::test {

/// Two guide rails, "fine" with a kerf of 1.8 and "wide" with one of 3.2, and a trimming bit; every line
/// through.
inline void setRails(Project& project, double bit) {
    Bench bench;
    for (const auto& [id, kerf] : {std::pair{"fine", 1.8}, std::pair{"wide", 3.2}}) {
        Saw saw;
        saw.id = id;
        saw.kind = SawKind::GuideRail;
        saw.kerf = kerf;
        saw.blade = 160;
        bench.saws.push_back(saw);
    }
    bench.trimBit = TrimBit{};
    bench.trimBit->diameter = bit;
    project.bench = bench;
    for (LayoutLine& line : project.lines) line.extent = Extent::Through;
}

inline LayoutLine sawnLine(const char* id, Edge edge, double offset, const char* saw) {
    LayoutLine line = offsetLine(id, edge, offset);
    line.saw = saw;
    return line;
}

/// The window (180 x 56, fine kerfs), and far right of it a slot `height` high whose two wide kerfs overlap:
/// together a groove of that height across the panel, 30 above the window's lower wall.
///
///        ___________
///     __|           |________[]__   slot
///     __             ________[]__
///       |___________|
inline Project acrossTheWindow(double height, double bit) {
    Project project = panelOf(400, 250);
    project.lines = {
        sawnLine("A", Edge::Bottom, 90, "fine"),  sawnLine("B", Edge::Bottom, 146, "fine"),
        sawnLine("C", Edge::Left, 110, "fine"),   sawnLine("D", Edge::Left, 290, "fine"),
        sawnLine("G", Edge::Bottom, 120, "wide"), sawnLine("H", Edge::Bottom, 120 + height, "wide"),
        sawnLine("P", Edge::Left, 330, "fine"),   sawnLine("Q", Edge::Left, 370, "fine")};
    project.cutouts = {cutoutAt("window", {{200, 100}, {200, 120 + height / 2}, {200, 140}}),
                       cutoutAt("slot", {{350, 120 + height / 2}})};
    setRails(project, bit);
    return project;
}

/// A window of 57 from the panel's left edge (3 off) up to 60, and two notches at the lower edge far right,
/// whose wide kerfs [2.8, 6] and [-0.1, 3.1] join to a rebate of 6 along the whole edge.
inline Project windowOverARebate() {
    Project project = panelOf(400, 250);
    project.lines = {sawnLine("A", Edge::Bottom, 2, "fine"), sawnLine("B", Edge::Bottom, 60, "fine"),
                     sawnLine("C", Edge::Left, 3, "fine"),   sawnLine("D", Edge::Left, 60, "fine"),
                     sawnLine("G", Edge::Bottom, 6, "wide"), sawnLine("H", Edge::Bottom, 3.1, "wide"),
                     sawnLine("P", Edge::Left, 300, "fine"), sawnLine("Q", Edge::Left, 340, "fine"),
                     sawnLine("R", Edge::Left, 350, "fine"), sawnLine("S", Edge::Left, 380, "fine")};
    project.cutouts = {cutoutAt("window", {{30, 2.5}, {30, 5}, {30, 30}}),
                       cutoutAt("upper", {{320, 1}, {320, 2.5}, {320, 5}}),
                       cutoutAt("lower", {{365, 1}, {365, 2.5}})};
    setRails(project, 5.8);
    return project;
}

}  // namespace kerfwall::test

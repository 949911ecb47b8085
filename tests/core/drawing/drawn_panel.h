// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// A panel of that size with nothing on it.
inline Project blankPanel(double width, double height, double thickness) {
    Project project;
    project.panel.width = width;
    project.panel.height = height;
    project.panel.thickness = thickness;
    return project;
}

/// A line with one through kerf of width 3.2 and depth 6.
inline SolvedLine sawnLine(const std::string& id, Point from, Point to, Side side) {
    SolvedLine line;
    line.id = id;
    line.from = from;
    line.to = to;
    const double whole = distance(from, to);
    line.kerfs.push_back({side, 0, 3.2, 6, false, 0, whole, 0, whole});
    return line;
}

/// A window from 110 to 290 and 90 to 146 on a panel of 400 x 250 x 12; its upright walls on C and D,
/// their kerfs inside it.
inline Solved windowInPanel() {
    Solved solved;
    solved.kerfDepth = 6;
    solved.lines = {sawnLine("C", {110, 250}, {110, 0}, Side::Left),
                    sawnLine("D", {290, 0}, {290, 250}, Side::Left)};
    SolvedCutout cutout;
    cutout.id = "window";
    cutout.opening = makeOutline({polygonLoop({{110, 90}, {290, 90}, {290, 146}, {110, 146}})});
    solved.cutouts.push_back(cutout);
    return solved;
}

/// The marks of one kind and ink. Kind: Area, Stroke, Circle or Label.
template <typename Kind>
std::vector<Kind> marksOf(const Drawing& drawing, Ink ink) {
    std::vector<Kind> found;
    for (const Mark& mark : drawing.marks) {
        const Kind* kind = std::get_if<Kind>(&mark);
        if (kind && kind->ink == ink) found.push_back(*kind);
    }
    return found;
}

inline std::vector<std::string> dimensionTexts(const Drawing& drawing) {
    std::vector<std::string> texts;
    for (const Mark& mark : drawing.marks) {
        if (const Dimension* size = std::get_if<Dimension>(&mark)) texts.push_back(size->text);
    }
    return texts;
}

}  // namespace kerfwall

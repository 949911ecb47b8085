// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/drawing/side_view.h"

namespace kerfwall {

/// A side view in the making. Places are given as mm along the cut and mm below the layout face.
struct SideViewer {
    const Project& project;
    const Solved& solved;
    const std::vector<Finding>& findings;
    CuttingLine cut;
    SideViewLook look;
    std::vector<SectionRun> runs;
    Drawing drawing;

    [[nodiscard]] bool isLevel() const { return cut.direction == CutDirection::Level; }
    [[nodiscard]] double thickness() const { return project.panel.thickness; }
    [[nodiscard]] double length() const { return cutLength(project.panel, cut.direction); }
    /// That many mm of the drawing for mm on paper: along the cut, and as depth.
    [[nodiscard]] double mm(double paper) const { return paper * look.markScale; }
    [[nodiscard]] double deep(double paper) const { return mm(paper) / look.exaggeration; }
    [[nodiscard]] Point place(double along, double depth) const;
    [[nodiscard]] std::string text(double size) const;
    /// True where nothing but wood is cut from `from` to `to`.
    [[nodiscard]] bool isWood(double from, double to) const;
};

/// Clamp holes with their heights, where they come through, and the signs of what is found about them.
void addClampHoles(SideViewer& view);
/// How many different holes there are to be told about.
[[nodiscard]] std::size_t differentHoles(const Project& project);
/// The holes' measures in words, one line for all of one drill at one height (upright three); `firstLine`: where the first one's baseline lies.
void addHoleTexts(SideViewer& view, Point firstLine);

}  // namespace kerfwall

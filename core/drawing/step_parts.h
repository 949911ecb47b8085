// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/lying.h"
#include "core/drawing/step_drawing.h"
#include "core/shop/panel_after.h"

namespace kerfwall {

/// What the parts of a step's picture are drawn from and on.
struct StepSheet {
    Drawing& drawing;
    const Project& project;
    const Solved& solved;
    const WorkStep& step;
    Lying lying;
    double scale = 1;  ///< mm of the panel for one mm on paper
};

/// How a saw passes a kerf, as the operator sees it.
struct CutWay {
    Point entry;    ///< where the blade comes to the panel, on the layout line
    Point exit;
    Point forward;  ///< unit, from entry to exit
    Point waste;    ///< unit, from the line to the kerf
    double width = 0;
};

/// The way of the first kerf of a step; none where it cuts none.
[[nodiscard]] std::optional<CutWay> cutWayOf(const Project& project, const Solved& solved, const WorkStep& step);

/// The wood: openings, holes, kerfs, lines and marks, as far as they are made; what the step makes marked.
void addPanelAfter(StepSheet& sheet, const PanelAfter& after);

/// Edge marks, as far as they are made and this step is about them, with their lines' names.
void addStepMarks(StepSheet& sheet, const PanelAfter& after);

/// How far the centres of this step's holes stand from the edges they are measured from.
void addHoleSizes(StepSheet& sheet);

/// Fence, stop, wedge, spacer, rail and blade with their dimensions, which way the cut runs, and the bit's way round.
void addMachine(StepSheet& sheet);

/// The rail's four corners, panel frame; none where the step is not cut along a rail.
[[nodiscard]] std::vector<Point> railOf(const Project& project, const Solved& solved, const WorkStep& step);

/// How far a mark lies along its edge from where marks are measured: the reference edge, or its measured end.
[[nodiscard]] double measuredAlong(const Panel& panel, const EdgeMark& mark);

/// An arrow of that length from `from` along unit `way`, mm on paper.
void addArrow(StepSheet& sheet, Point from, Point way, double length, const std::string& id);

// mm on paper.
inline constexpr double kBladeAway = 12;  // from where the cut begins to the blade
inline constexpr double kBladeLong = 12;
inline constexpr double kBladeWords = 6;  // beyond the blade, for its name

}  // namespace kerfwall

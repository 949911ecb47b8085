// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/drawing/drawing.h"
#include "core/drawing/plan_drawing.h"

namespace kerfwall {

// Of edge marks and line names, mm on paper.
inline constexpr double kEdgeTick = 4.5;
inline constexpr double kWasteTick = 3;
inline constexpr double kIdAway = 8;
inline constexpr double kLongIdAway = 5.5;  // where a long one begins
inline constexpr double kIdHeight = 4;

/// A directed straight reference on the panel.
struct Run {
    Point start;
    Point along;  ///< unit
    double length = 0;
};

/// An edge, from its start corner, anticlockwise round the panel.
[[nodiscard]] Run edgeRun(const Panel& panel, Edge edge);

[[nodiscard]] OutlineLoop rectangleLoop(Point low, Point high);

/// Two centre lines that reach that far from a hole's centre.
void addCross(Drawing& drawing, Point centre, double reach, const std::string& id);

// The plan's layers, each adding its marks in painting order.
void addKerfs(Drawing& drawing, const Project& project, const Solved& solved, const PlanLayers& layers);
void addLines(Drawing& drawing, const Project& project, const Solved& solved, const PlanLayers& layers);
void addStrays(Drawing& drawing, const Solved& solved, const PlanLayers& layers);
void addEdgeMarks(Drawing& drawing, const Project& project, const Solved& solved, const PlanLayers& layers);
void addReferenceEdge(Drawing& drawing, const Project& project, const Solved& solved,
                      const PlanLayers& layers);
void addOpenings(Drawing& drawing, const Solved& solved);
void addReliefHoles(Drawing& drawing, const Solved& solved, const PlanLayers& layers);
void addClampHoles(Drawing& drawing, const Project& project, const PlanLayers& layers);
void addFences(Drawing& drawing, const Project& project, const Solved& solved, const PlanLayers& layers);
void addWork(Drawing& drawing, const Project& project, const Solved& solved, const PlanLayers& layers);
void addSizes(Drawing& drawing, const Project& project, const Solved& solved, const PlanLayers& layers);
void addSigns(Drawing& drawing, const std::vector<Finding>& findings);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/point.h"
#include "core/says/layout_line.h"
#include "core/says/panel.h"

namespace kerfwall {

/// Length of an edge, mm.
[[nodiscard]] double edgeLength(const Panel& panel, Edge edge);

/// Direction of an edge, anticlockwise round the panel; length 1.
[[nodiscard]] Point edgeHeading(Edge edge);

/// The place of an edge mark in the panel frame.
[[nodiscard]] Point markPlace(const Panel& panel, const EdgeMark& mark);

/// The mark on `edge` nearest to a place.
[[nodiscard]] EdgeMark markOnEdge(const Panel& panel, Edge edge, Point place);

/// The mark nearest to a place, on whichever edge is nearest.
[[nodiscard]] EdgeMark nearestMark(const Panel& panel, Point place);

/// How far a place lies to the left of an edge, which is into the panel, mm.
[[nodiscard]] double distanceFromEdge(const Panel& panel, Edge edge, Point place);

/// True on the panel or its border, and up to `slack` mm past it.
[[nodiscard]] bool liesOnPanel(const Panel& panel, Point place, double slack = 0);

/// The edge square to the reference edge at its true corner: the second edge to measure from.
[[nodiscard]] Edge squareEdge(const Panel& panel);

}  // namespace kerfwall

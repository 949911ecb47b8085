// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/point.h"
#include "core/says/panel.h"

namespace kerfwall {

/// Two directions count as one where a run strays from the other by less than this, mm: a
/// thousandth of the finest thing a saw can be set to.
inline constexpr double kSameHeading = 1e-4;

/// A place this close to the panel's edge lies on it, mm.
inline constexpr double kAtTheEdge = 1e-6;

/// How a line runs as seen from an edge.
enum class Heading { Along, Square, Askew };

[[nodiscard]] Edge oppositeOf(Edge edge);
/// The edges that follow and come before it anticlockwise: at its end and at its start.
[[nodiscard]] Edge nextOf(Edge edge);
[[nodiscard]] Edge previousOf(Edge edge);
/// How far along the edge a place lies from its start corner, mm.
[[nodiscard]] double alongFrom(Edge edge, Point place, const Panel& panel);

/// How the run from -> to lies as seen from the edge.
[[nodiscard]] Heading headingFrom(Edge edge, Point from, Point to);
/// Degrees by which the run leans from square to the edge, whichever way it is directed: in (-90, 90],
/// positive where it leans towards the edge's start as it goes into the panel (anticlockwise).
[[nodiscard]] double leanFrom(Edge edge, Point from, Point to);

/// The edges that may lie on a fence: the reference edge; on a panel true at all corners the other
/// three too, the one opposite the reference edge first.
[[nodiscard]] std::vector<Edge> trueEdges(const Panel& panel);

}  // namespace kerfwall

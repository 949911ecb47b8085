// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>

#include "core/geometry/solved.h"

namespace kerfwall {

/// What a measured thing belongs to.
enum class MeasuredOn { Anywhere, PanelCorner, Crossing, Corner, HoleEnd, Line, Edge, Hole, Fence, Opening, Work };

/// Something to measure from or to: a place, a straight or an arc.
struct Measurable {
    enum class Kind { Spot, Straight, Arc };
    Kind kind = Kind::Spot;
    MeasuredOn on = MeasuredOn::Anywhere;
    Point at;           ///< the place; of a straight or an arc the one nearest to the pointer
    Point from;         ///< Straight and Arc: its ends
    Point to;
    Point centre;       ///< Arc
    double radius = 0;  ///< Arc, mm
    std::string first;  ///< lines: ids; edges: their names; holes and fences: their numbers from 1
    std::string second; ///< a crossing's other line
    bool operator==(const Measurable&) const = default;
};

/// What lies between two things. Lengths in mm, angles in degrees.
struct Measurement {
    Point from;  ///< the stretch that was measured
    Point to;
    double distance = 0;
    double across = 0;  ///< how far `to` lies to the right of `from`
    double up = 0;
    std::optional<double> angle;  ///< straights that are not parallel: the smaller one between them, up to 90
    bool isParallel = false;      ///< straights that are
    bool operator==(const Measurement&) const = default;
};

/// What can be measured within `reach` mm of a place: ends, crossings and corners before lines, edges, holes, fences and
/// the outlines of the openings in the template and the work; the nearest of them. None: there is nothing.
[[nodiscard]] std::optional<Measurable> measurableNear(const Project& project, const Solved& solved, Point place, double reach);

/// Between two places the straight way; to a straight square to it, as if it had no ends; arcs count from their centres;
/// straights that are not parallel have an angle, measured at their crossing, and no distance.
[[nodiscard]] Measurement measure(const Measurable& first, const Measurable& second);

/// The angle of a straight from the reference edge, over -90 to 90 degrees anticlockwise. Requires  a straight.
[[nodiscard]] double angleFromReference(const Panel& panel, const Measurable& straight);

}  // namespace kerfwall

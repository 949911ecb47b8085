// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// A line resolved from how it was laid and clipped to the panel. The decisions behind it are exact;
/// the numbers are the exact ones rounded once to double.
struct ArrangedLine {
    std::size_t index = 0;  ///< into the project's lines
    Point from;
    Point to;
    Point direction;  ///< unit
    bool cut = true;
    std::vector<EdgeMark> marks;
};

/// What bounds a face or a border run: a line of `Arranged::lines`, or one of the panel's edges.
struct Bound {
    std::optional<std::size_t> line;
    Edge edge = Edge::Bottom;  ///< where there is no line
    bool operator==(const Bound&) const = default;
};

/// The half-plane to the left of `direction` through `origin`.
struct HalfPlane {
    Point origin;
    Point direction;  ///< unit
};

/// True where a place lies more than `margin` mm inside every half-plane.
[[nodiscard]] bool isWithin(const std::vector<HalfPlane>& bounds, Point place, double margin);

/// A convex face: its half-planes and its corners, anticlockwise.
struct ArrangedFace {
    std::vector<HalfPlane> bounds;
    std::vector<Point> corners;
};

/// A stretch of a cutout's border on one line or edge, the cutout on its left.
struct BorderRun {
    Bound on;
    Point from;
    Point to;
    bool alongLine = true;  ///< runs in its line's own direction: the waste is on the line's left
};

/// A stretch of a line with the cutout on both sides.
struct InnerRun {
    std::size_t line = 0;
    Point from;  ///< in the line's direction
    Point to;
};

struct ArrangedCutout {
    std::size_t index = 0;  ///< into the project's cutouts
    std::vector<ArrangedFace> faces;
    std::vector<std::vector<BorderRun>> loops;  ///< runs shorter than kShortestWall left out
    std::vector<InnerRun> inner;
    double area = 0;
};

struct Arranged {
    std::vector<ArrangedLine> lines;
    std::vector<ArrangedCutout> cutouts;
    std::vector<DrawingTrouble> troubles;
    std::vector<StrayLine> strays;
};

/// The id of a line of the arrangement.
[[nodiscard]] const LineId& lineId(const Project& project, const Arranged& arranged, std::size_t line);

/// Resolves the lines and joins the faces of every cutout.
/// Exact: decimals are taken as they are written; a line by an angle that is no multiple of 45 degrees,
/// or mirrored about a slanting line, is the exact line through its point and a second one 1000 mm on,
/// rounded to 1 nm; an offset from a slanting line goes through a point given to double precision.
/// Gives     trouble of drawing for what it left out.
[[nodiscard]] Arranged arrange(const Project& project);

}  // namespace kerfwall

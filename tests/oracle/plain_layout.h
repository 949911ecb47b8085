// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/geometry/point.h"
#include "core/says/project.h"
#include "tests/oracle/exact_line.h"

namespace kerfwall::oracle {

/// A kerf as a plain band: from `s0` to `s1` mm along `from` -> `to` (measured from `from`; it may run
/// past both), `width` mm to the left or to the right.
struct PlainBand {
    Point from;
    Point to;
    double s0 = 0;
    double s1 = 0;
    bool left = true;
    double width = 0;
    std::size_t line = 0;  ///< index into the project's lines
    std::vector<ExactPoint> exactEnds{};  ///< `from` and `to` without rounding; none: as those say
    bool isDoubled = false;  ///< another cut line lies on this one but for rounding: no wood is between them
};

/// A corner bored round: the whole bore is void, wood stands between its arc and the drawn point.
struct PlainRound {
    Point corner;
    Point centre;
    Point first;   ///< where the arc touches the arriving wall
    Point second;  ///< ... and the leaving one
    double radius = 0;
};

struct PlainWall {
    std::size_t line = 0;
    bool left = true;  ///< the cutout's side of the line, in the line's direction
    double s0 = 0;     ///< mm along the line from where it enters the panel, s0 < s1
    double s1 = 0;
};

struct PlainCorner {
    std::size_t first = 0;  ///< line of the arriving wall, the cutout on the left
    std::size_t second = 0;
    Point point;
    double angle = 0;  ///< radians, inside the cutout
};

/// A layout line on the panel.
struct PlainLine {
    Point from;
    Point to;
    bool cut = true;
};

struct PlainCutout {
    std::vector<std::vector<Point>> faces;  ///< convex, anticlockwise, edge to edge
    /// The same without rounding, so that faces a nanometre wide keep their shape; empty where laid out by hand.
    std::vector<std::vector<ExactPoint>> exactFaces;
    double drawnArea = 0;                   ///< mm², the exact sum rounded once
    bool open = false;
    std::vector<PlainWall> walls;
    std::vector<PlainCorner> corners;
    std::vector<PlainRound> rounds;
};

/// A project said in the plainest way: no ids, no references. Lengths in mm, panel frame.
struct PlainLayout {
    double width = 0;
    double height = 0;
    double bitRadius = 0;
    std::vector<PlainLine> lines;  ///< in the project's order
    std::vector<PlainBand> bands;  ///< the kerfs of all lines
    std::vector<PlainCutout> cutouts;
};

/// Works a project out by exact fractions and half-planes: a face is what the half-planes of all cut
/// lines and edges leave round its seed; a wall is an edge of a face that no other face of the cutout
/// shares. Shares no code with the engine.
/// Requires  a bench with a trimming bit; every line names its saw, or all saws have one kerf width; lines by
/// angle turn from an
///           edge; offsets from edges or from level and upright lines; mirrors about the centres.
/// Refuses   (none) a layout the project file calls trouble of drawing.
[[nodiscard]] std::optional<PlainLayout> plainLayout(const Project& project);

}  // namespace kerfwall::oracle

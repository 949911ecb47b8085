// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/geometry/point.h"

namespace kerfwall {

struct Curve;

enum class Turn { Left, Right };  ///< anticlockwise, clockwise

/// One piece of an outline: a straight stretch, or an arc of less than a full turn.
struct OutlinePiece {
    bool isArc = false;
    Point from;
    Point to;
    Point centre;          ///< arcs only
    double radius = 0;     ///< arcs only, mm
    Turn turn = Turn::Left;  ///< arcs only: how it runs from `from` to `to` round `centre`
    std::string on;        ///< straight pieces: the line's id or the edge's name it lies on; "" for none
    bool operator==(const OutlinePiece&) const = default;
};

/// A closed run of pieces; each begins where the one before ends, the first where the last ends.
using OutlineLoop = std::vector<OutlinePiece>;

/// An opening. Outer loops run anticlockwise (the opening on their left), islands clockwise.
struct Outline {
    std::vector<OutlineLoop> loops;  ///< empty where nothing is opened
    double area = 0;                 ///< mm²
    double perimeter = 0;            ///< mm
    Box bounds;
    bool operator==(const Outline&) const = default;
};

/// The piece as a curve, for the engine.
[[nodiscard]] Curve curveOf(const OutlinePiece& piece);

/// A closed loop of straight pieces through these corners.
[[nodiscard]] OutlineLoop polygonLoop(const std::vector<Point>& corners);

/// A circle as two half turns, anticlockwise.
[[nodiscard]] OutlineLoop circleLoop(Point centre, double radius);

/// Signed area of one loop, mm²: positive where it runs anticlockwise. Arcs counted exactly.
[[nodiscard]] double signedArea(const OutlineLoop& loop);

/// An outline with `area`, `perimeter` and `bounds` worked out from its loops.
[[nodiscard]] Outline makeOutline(std::vector<OutlineLoop> loops);

/// The angle an arc sweeps, radians, positive whichever way it turns; in (0, 2π].
[[nodiscard]] double sweepOf(const OutlinePiece& arc);

/// True where `place` lies inside the outline (its border counts as neither).
[[nodiscard]] bool isInside(const Outline& outline, Point place);

}  // namespace kerfwall

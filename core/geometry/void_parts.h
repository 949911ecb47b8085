// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "core/geometry/arranged.h"
#include "core/geometry/curve.h"
#include "core/geometry/kerf_layout.h"
#include "core/geometry/void_rim.h"

namespace kerfwall {

/// Owner of faces and of what lies off the panel: before every kerf.
inline constexpr int kFacesOwner = -1;
inline constexpr double kEverywhere = 4 * kPastThePanel;

/// A convex part of the void. Where sides of two parts lie on one another, facing the same way, the one
/// with the smaller owner keeps the rim.
struct ConvexPart {
    std::vector<HalfPlane> bounds;
    int owner = 0;
};

/// The part of a corner that a bore leaves standing: inside the two tangents and the corner, outside the bore.
struct Spandrel {
    std::size_t corner = 0;  ///< into Border::corners
    ConvexPart triangle;
    Point centre;
    double radius = 0;
};

/// A stretch of rim in the making: `place(s) = origin + s along`, the void on its left.
struct RimLine {
    Point origin;
    Point along;
    Spans spans;
    int owner = 0;
    std::optional<std::size_t> ownLine;  ///< kerfs of this line do not cut its own walls ...
    std::optional<std::size_t> ownKerf;  ///< ... nor this kerf its own sides
    VoidSide side;

    [[nodiscard]] Point place(double s) const { return origin + s * along; }
};

struct Cover {
    std::optional<std::pair<double, double>> span;
    /// Where a facing side lies within kDoubt of the line and not on it.
    std::optional<std::pair<double, double>> doubtful;
};

/// The stretch of `line` that lies inside `part`.
[[nodiscard]] Cover coverOf(const RimLine& line, const ConvexPart& part);

/// Takes out of a line what a disc holds; one that comes less than `least` over the line holds nothing of it.
void takeDisc(Spans& spans, const RimLine& line, Point centre, double radius, double least);

/// Adds what is left of a line as curves that carry its side.
void addCurves(const RimLine& line, std::vector<Curve>& curves, std::vector<VoidSide>& sides);

/// A stretch of a kerf as a part of the void; ends past the panel are open.
[[nodiscard]] ConvexPart bandPart(const ArrangedLine& line, const LaidKerf& kerf, const std::pair<double, double>& span,
                                  int owner);

/// A frame as convex parts, nobody's.
struct Looked {
    ConvexPart inside;
    bool whole = false;
    std::optional<ConvexPart> hollow;
    ConvexPart near;
};
[[nodiscard]] Looked lookedAt(const Frame& frame);

/// Leaves of a line what is looked at.
void keepLooked(RimLine& line, const Looked& looked);

/// Where what is looked at ends, what is looked at on the left.
[[nodiscard]] std::vector<RimLine> endsOf(const Looked& looked, int owner);

}  // namespace kerfwall

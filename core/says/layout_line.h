// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>

#include "core/geometry/point.h"
#include "core/says/panel.h"

namespace kerfwall {

using LineId = std::string;  ///< 1 to 24 letters, digits, '-' or '_'; never an edge's name

/// What a line is laid from: one of the panel's edges or another line.
using Base = std::variant<Edge, LineId>;

/// A place on an edge, `at` mm from that edge's start corner.
struct EdgeMark {
    Edge edge = Edge::Bottom;
    double at = 0;
    bool operator==(const EdgeMark&) const = default;
};

/// The place where two lines cross.
struct CrossingOf {
    LineId first;
    LineId second;
    bool operator==(const CrossingOf&) const = default;
};

/// Parallel to `from`, `distance` mm to its left (negative: to its right), same direction.
struct ByOffset {
    Base from;
    double distance = 0;
    bool operator==(const ByOffset&) const = default;
};
/// `from`'s direction turned anticlockwise by `angle` degrees, through a point or a crossing.
struct ByAngle {
    Base from;
    double angle = 0;
    std::variant<Point, CrossingOf> through;
    bool operator==(const ByAngle&) const = default;
};
/// From p towards q.
struct ByPoints {
    Point p;
    Point q;
    bool operator==(const ByPoints&) const = default;
};
/// From one edge mark to another; moves with the panel's edges.
struct ByMarks {
    EdgeMark a;
    EdgeMark b;
    bool operator==(const ByMarks&) const = default;
};
enum class Centre { Upright, Level };  ///< x = width / 2; y = height / 2
/// The mirror image of a line, directions mirrored too.
struct ByMirror {
    LineId of;
    std::variant<Centre, LineId> about;
    bool operator==(const ByMirror&) const = default;
};
using Place = std::variant<ByOffset, ByAngle, ByPoints, ByMarks, ByMirror>;

enum class Face { Layout, Back, Both };
enum class Extent { Auto, Through, Stopped };

/// A layout line: endless, clipped to the panel, kept as it was laid out.
struct LayoutLine {
    LineId id;
    Place place;
    bool cut = true;  ///< false: a mark only; bounds no face and gets no kerf
    Face drawnOn = Face::Layout;
    std::optional<std::string> saw;  ///< a saw's id; chosen by the plan when absent
    Extent extent = Extent::Auto;
    std::string unknown;       ///< as Panel::unknown
    std::string placeUnknown;  ///< the same, of its `place` object
    bool operator==(const LayoutLine&) const = default;
};

}  // namespace kerfwall

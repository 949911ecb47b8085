// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/says/bench.h"
#include "core/says/layout_line.h"

namespace kerfwall {

/// A blind hole from an edge, for a clamp. Lengths in mm.
struct ClampHole {
    std::string id;  ///< "" where the maker gave none
    Edge edge = Edge::Left;
    double at = 0;  ///< along that edge from its start corner
    double diameter = 0;
    double depth = 0;              ///< from the edge inwards to the drill's point
    std::optional<double> height;  ///< of its axis below the layout face; absent: half the thickness
    std::string unknown;
    bool operator==(const ClampHole&) const = default;
};

enum class FenceKind { Straight, Stop };

/// A straight reference fixed to the template. Lengths in mm.
struct Fence {
    Base along;
    double offset = 0;             ///< the face the work touches, this far to the left of `along`
    Side body = Side::Left;        ///< of that face
    double from = 0;               ///< along it
    double to = 0;
    double width = 0;
    double height = 0;
    double groove = 0;  ///< its depth, 0 for none
    FenceKind kind = FenceKind::Straight;
    Face face = Face::Layout;  ///< Layout or Back
    std::string unknown;
    bool operator==(const Fence&) const = default;
};

/// One piece of the work. Its grain as an angle in degrees in the panel frame.
struct WorkPart {
    std::vector<Point> outline;
    std::optional<double> grain;
    std::string unknown;
    bool operator==(const WorkPart&) const = default;
};

struct Workpiece {
    std::vector<Point> outline;  ///< at least 3 points, or empty where `parts` say it
    std::optional<double> thickness;
    std::optional<double> grain;
    std::vector<WorkPart> parts;
    std::string unknown;
    bool operator==(const Workpiece&) const = default;
};

}  // namespace kerfwall

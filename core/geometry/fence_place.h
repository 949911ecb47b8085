// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// A straight that things are measured along: a panel's edge, or a line as it runs over the panel.
struct Straight {
    Point start;
    Point along;  ///< length 1
    double length = 0;  ///< mm
    bool operator==(const Straight&) const = default;
};

/// The straight of an edge or of a line; none where the line is in trouble or not there.
[[nodiscard]] std::optional<Straight> straightOf(const Panel& panel, const Solved& solved, const Base& base);

/// Where a fence lies in the plan: its face from `from` to `to`, then round its body. Four corners; empty where
/// what it runs along is in trouble or not there.
[[nodiscard]] std::vector<Point> fenceBody(const Project& project, const Solved& solved, const Fence& fence);

/// The middle of a fence's body; none as fenceBody.
[[nodiscard]] std::optional<Point> fenceMiddle(const Project& project, const Solved& solved, const Fence& fence);

}  // namespace kerfwall

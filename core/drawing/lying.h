// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/drawing.h"
#include "core/shop/order_of_work.h"

namespace kerfwall {

/// How the panel lies before its operator: where the panel frame's x and y go. Turned, and mirrored where we look at
/// its back; x is to the operator's right, y away. Lengths stay what they are.
struct Lying {
    Point right{1, 0};  ///< where the panel's x goes; length 1
    Point up{0, 1};     ///< where its y goes; length 1, square to `right`
    bool operator==(const Lying&) const = default;

    [[nodiscard]] bool isMirrored() const { return cross(right, up) < 0; }
    /// A place of the panel frame, or a difference of two, as the operator sees it.
    [[nodiscard]] Point put(Point place) const { return place.x * right + place.y * up; }
};

/// How the panel lies in a step: face, edge on the fence, end that leads and turn as lie.h explains. Where no fence
/// holds it, it lies as on the plan, or turned over like a page.
[[nodiscard]] Lying lyingAt(const Project& project, const WorkStep& step);

/// Degrees from square by which a gauge or a wedge turns the panel, anticlockwise as the operator sees it; 0 for a saw
/// whose arm or rail turns while the panel lies still.
[[nodiscard]] double turnOfPanelAt(const Project& project, const WorkStep& step);

/// A loop of the panel as it lies: arcs turn the other way where it is mirrored.
[[nodiscard]] OutlineLoop laid(const OutlineLoop& loop, const Lying& lying);
[[nodiscard]] std::vector<OutlineLoop> laid(const std::vector<OutlineLoop>& loops, const Lying& lying);
[[nodiscard]] std::vector<Point> laid(std::vector<Point> places, const Lying& lying);

/// Bounds of a panel as it lies.
[[nodiscard]] Box boundsLaid(const Panel& panel, const Lying& lying);

}  // namespace kerfwall

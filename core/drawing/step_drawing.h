// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/drawing.h"
#include "core/shop/order_of_work.h"

namespace kerfwall {

/// What the picture of a step needs.
struct StepRoom {
    Box panel;         ///< the panel as it lies, with what holds it, mm
    double left = 14;  ///< mm on paper beside it, for marks, machine and dimensions
    double right = 14;
    double below = 14;
    double above = 14;
};

/// Requires  index < order.steps.size(); `order` is the plan of `solved`; as the following.
[[nodiscard]] StepRoom stepRoom(const Project& project, const Solved& solved, const OrderOfWork& order, std::size_t index);

/// mm of the panel for one mm on paper at which that room fits into `width` by `height` mm on paper.
/// Requires  more width and height than the room takes beside the panel; else the picture is as small as the room.
[[nodiscard]] double fittingScale(const StepRoom& room, double width, double height);

/// The panel as it is after a step, seen from the side that is up at that machine, as it lies before the operator (x to
/// the right, y away), what this step does marked; with fence, stop, blade and turn, dimensioned with its numbers.
/// Where a part was trimmed its outline is the template's opening.
[[nodiscard]] Drawing stepDrawing(const Project& project, const Solved& solved, const OrderOfWork& order, std::size_t index,
                                  double markScale);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/geometry/solved.h"
#include "core/shop/order_of_work.h"
#include "core/shop/way.h"

// Answers of geometry written down by hand, so that the order of work is tested by itself.
namespace kerfwall::hand {

/// A panel with its reference edge at the bottom and its true corner at bottom left.
Project panelOf(double width, double height, double thickness = 12);

/// A table saw with rip fence, crosscut sled and gauge (kerf 3.2, blade 254), a rail saw (2.2, 160):
/// indices 0 to 3; bit 12.7 with a bearing of 5 at its tip, router table, 8 mm drill.
Bench workshop();

/// A line across the panel with one kerf; its marks are worked out from where it ends.
SolvedLine lineOf(const Project& project, const LineId& id, Point from, Point to, Side waste, std::size_t saw,
                  double depth = 6);

/// A level line y = at running right, or an upright one x = at running up.
SolvedLine level(const Project& project, const LineId& id, double at, Side waste, std::size_t saw = 0);
SolvedLine upright(const Project& project, const LineId& id, double at, Side waste, std::size_t saw = 1);

/// A rectangle of four walls on the lines A (below), D (right), B (above), C (left), anticlockwise.
SolvedCutout windowOf(double left, double below, double right, double above);

/// A window on a 400 x 250 panel: A at 90, B at 146, C at 110, D at 290.
struct Job {
    Project project;
    Solved solved;
};
Job windowJob();

/// What is asked of a saw for a line's one kerf.
KerfAsked asked(const SolvedLine& line);

/// The first step of the plan that cuts that line.
WorkStep stepFor(const OrderOfWork& order, const LineId& line);

}  // namespace kerfwall::hand

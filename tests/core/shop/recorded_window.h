// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/solve.h"
#include "core/shop/order_of_work.h"

namespace kerfwall::hand {

/// A window of 180 x 56 wanted on a panel of 400 x 250, stock bench, steered by the trimming bit's bearing: A (90) and
/// B (146) from the bottom edge at the rip fence, C (110) and D (290) from the left at the sled's stop. The waste lies
/// beyond A and C, and between B and D and their fence or stop. Kerfs 3.2.
inline Project recordedWindow() {
    const auto line = [](const LineId& id, Edge from, double distance) {
        LayoutLine laid;
        laid.id = id;
        laid.place = ByOffset{from, distance};
        return laid;
    };
    Project project;
    project.panel = {400, 250, 12, "mdf", Edge::Bottom, SquareCorner::Start, {}};
    project.lines = {line("A", Edge::Bottom, 90), line("B", Edge::Bottom, 146), line("C", Edge::Left, 110),
                     line("D", Edge::Left, 290)};
    Cutout window;
    window.id = "window";
    window.seeds = {{200, 118}};
    window.wanted = Wanted{};
    window.wanted->outline = {{110, 90}, {290, 90}, {290, 146}, {110, 146}};
    window.wanted->cornerRadius = 6.35;
    project.cutouts = {window};
    return project;
}

/// That line's wall found so far from an edge.
inline Record foundAt(const LineId& line, Edge from, double measured) {
    Record record;
    record.line = {line, from};
    record.measured = measured;
    return record;
}

/// The opening between two walls.
inline Record foundAcross(const LineId& first, const LineId& second, double measured) {
    Record record;
    record.between = {first, second};
    record.measured = measured;
    return record;
}

}  // namespace kerfwall::hand

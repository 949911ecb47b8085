// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/shop/order_of_work.h"
#include "core/shop/way.h"

namespace kerfwall {

/// A kerf and the way chosen for it.
struct PlannedKerf {
    std::size_t line = 0;  ///< index into the solved lines
    std::size_t kerf = 0;  ///< index into that line's kerfs
    Way way;
};

/// Every kerf with its way, saw by saw in the order they are cut.
[[nodiscard]] std::vector<PlannedKerf> plannedKerfs(const Project& project, const Solved& solved);

/// The kerfs' steps, with the number of their set-ups and a bound below which no plan can go.
struct KerfSteps {
    int setups = 0;
    int lowerBound = 0;
    std::vector<WorkStep> steps;
};

/// Each kerf the way it was solved with; kerfs of one setting, edge on the fence and edge at the stop share a
/// step. Saws that stop no kerf come first, through kerfs before stopped ones; at one saw angle by angle, fence
/// and stop from the nearest setting to the farthest. Where the next step keeps the setting and only the panel is
/// turned, it says so.
[[nodiscard]] KerfSteps kerfSteps(const Project& project, const Solved& solved);

/// The marks in view while the blade is brought to the line: none on an edge hidden behind a fence; on a
/// rip fence the leading end's; where a cut goes by its marks alone, all that are free.
[[nodiscard]] std::vector<EdgeMark> marksInView(const SolvedLine& line, const Way& way);

}  // namespace kerfwall

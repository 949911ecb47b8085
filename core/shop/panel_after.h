// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// One kerf of the answer: indices into Solved::lines and that line's kerfs.
struct KerfPlace {
    std::size_t line = 0;
    std::size_t kerf = 0;
    bool operator==(const KerfPlace&) const = default;
};

/// What was done to the panel. Cutouts are indices into Solved::cutouts, holes and fences into the project's.
struct WorkDone {
    std::vector<EdgeMark> marks;  ///< drawn on the edges
    std::vector<LineId> lines;    ///< whose marks are drawn
    std::vector<KerfPlace> kerfs;
    std::vector<ReliefHole> holes;      ///< bored or drilled through
    std::vector<std::size_t> sawnOut;   ///< the waste is out, with a rest left on the kerf's floor
    std::vector<std::size_t> trimmed;
    std::vector<std::size_t> cleaned;   ///< by hand, where the bit had to stop
    std::vector<std::size_t> clampHoles;
    std::vector<std::size_t> grooves;  ///< of these fences
    std::vector<std::size_t> fences;
    bool operator==(const WorkDone&) const = default;
};

/// What this step alone does to the panel.
[[nodiscard]] WorkDone doneBy(const Solved& solved, const WorkStep& step);

/// The panel after a step of the order of work.
struct PanelAfter {
    WorkDone before;  ///< by all earlier steps
    WorkDone here;    ///< by the step itself
    bool operator==(const PanelAfter&) const = default;
};

/// Requires  index < order.steps.size(); `order` is the plan of `solved`.
[[nodiscard]] PanelAfter panelAfter(const Solved& solved, const OrderOfWork& order, std::size_t index);

}  // namespace kerfwall

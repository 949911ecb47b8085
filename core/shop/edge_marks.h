// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// The first steps: the edge and the corner everything is measured from, checked; then the marks on the edges, each with a
/// tick towards the waste, one line of text a layout line. Only marks that one of the kerfs' steps has in view, and those
/// of foot lines; where a panel lies face down they are carried over the edge. None where there is nothing to mark.
[[nodiscard]] std::vector<WorkStep> markSteps(const Project& project, const Solved& solved,
                                              const std::vector<WorkStep>& kerfs);

/// "left edge 80.0 mm from the bottom, tick to the top": from the reference edge or the measured end.
[[nodiscard]] std::string tickedMarkText(const Project& project, const LineMark& mark);

}  // namespace kerfwall

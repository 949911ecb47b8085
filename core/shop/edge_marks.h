// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// The first steps: the edge and the corner everything is measured from, checked; then the marks on the
/// edges, each with a tick towards the waste. Only lines that get a kerf, and foot lines. None where there
/// is no such line.
[[nodiscard]] std::vector<WorkStep> markSteps(const Project& project, const Solved& solved);

/// "80.0 mm from the bottom-left corner on the left edge, tick towards the top-left corner".
[[nodiscard]] std::string tickedMarkText(const Project& project, const LineMark& mark);

}  // namespace kerfwall

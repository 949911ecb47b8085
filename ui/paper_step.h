// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/solved.h"
#include "core/shop/order_of_work.h"
#include "ui/paper_column.h"

namespace kerfwall {

/// Adds one step to the set-up sheet: its number, a box to tick, its settings large, its picture, what is done, and
/// room to write what was measured.
/// Requires  index < order.steps.size(); `order` is the plan of `solved`; `pictures`: how many times larger than the
/// smallest its picture is, from 1.
void addPaperStep(PaperColumn& column, const Project& project, const Solved& solved, const OrderOfWork& order,
                  std::size_t index, double pictures = 1);

/// "3 to 6, 8": the numbers in order, runs of three and more drawn together.
[[nodiscard]] QString numbersInWords(const std::vector<int>& numbers);

}  // namespace kerfwall

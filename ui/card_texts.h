// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/finding.h"
#include "core/shop/order_of_work.h"
#include "ui/card_row.h"

namespace kerfwall {

/// The rows of the job card, in the order of what they are about.
[[nodiscard]] std::vector<CardRow::Text> findingTexts(const std::vector<Finding>& findings);
[[nodiscard]] std::vector<CardRow::Text> stepTexts(const Project& project, const OrderOfWork& order);
[[nodiscard]] std::vector<CardRow::Text> sizeTexts(const Project& project, const Solved& solved, const OrderOfWork& order);
/// The lines that row of the sizes is measured between.
[[nodiscard]] std::vector<LineId> sizeLines(const Project& project, const Solved& solved, std::size_t row);

/// "1 stop · 2 to take care of", "nothing to mind".
[[nodiscard]] QString findingSummary(const std::vector<Finding>& findings);
/// "4 set-ups, the fewest".
[[nodiscard]] QString orderSummary(const OrderOfWork& order);

}  // namespace kerfwall

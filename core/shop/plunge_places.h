// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// The plunge marks of a stopped cut as they are measured at the saw: along the line from where the saw starts, the
/// end that leads, in the order in which the saw comes to them.
/// Gives     none where the step has no plunge marks.
[[nodiscard]] std::optional<PlungeMarks> plungeFromStart(const Panel& panel, const Solved& solved, const WorkStep& step);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/shop/order_of_work.h"
#include "core/shop/way.h"

namespace kerfwall {

/// The kerf step that cuts that side of the line, or nullptr.
[[nodiscard]] const WorkStep* stepCutting(const OrderOfWork& order, const LineId& line, Side side);

/// The way a kerf step cuts, read back from it: without fence and stop it is cut to marks.
[[nodiscard]] Way wayOf(const Project& project, const WorkStep& step);

}  // namespace kerfwall

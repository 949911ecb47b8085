// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// All that can be measured while making: each wall along an edge from that edge, the one it is set from first, then the
/// opposite one; each size across an opening; each bored corner. As entries of the record with the size that is drawn.
[[nodiscard]] std::vector<Record> measurables(const Project& project, const Solved& solved, const OrderOfWork& order);

}  // namespace kerfwall

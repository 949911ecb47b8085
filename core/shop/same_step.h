// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// Where the step of an earlier order of work stands in a later one, whatever its number is now: it belongs to its
/// kerfs, its cutout, its holes or its fence. Where it was split or joined: the step that shares most of its kerfs.
/// Gives     none where it is gone.
[[nodiscard]] std::optional<std::size_t> sameStep(const std::vector<WorkStep>& before, std::size_t index,
                                                  const std::vector<WorkStep>& now);

}  // namespace kerfwall

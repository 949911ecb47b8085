// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/shop/finding.h"

namespace kerfwall {

/// Which finding's sign lies at `place` on the plan, within `reach` mm of its middle: of several the nearest, of signs on one
/// another the gravest, which lies on top.
[[nodiscard]] std::optional<std::size_t> signAt(const std::vector<Finding>& findings, Point place, double reach);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/shop/finding.h"

namespace kerfwall {

/// Which of `all` says the same of the same thing as `finding`, of whichever severity: same code, lines, cutout, hole and
/// fence; of several the one nearest to its place. None where it is gone.
[[nodiscard]] std::optional<std::size_t> sameFinding(const std::vector<Finding>& all, const Finding& finding);

}  // namespace kerfwall

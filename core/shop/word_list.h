// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace kerfwall {

/// "A", "A and B", "A, B and C".
[[nodiscard]] std::string listText(const std::vector<std::string>& words);

}  // namespace kerfwall

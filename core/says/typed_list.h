// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <string>
#include <string_view>
#include <vector>

#include "core/says/project.h"
#include "core/says/range.h"

namespace kerfwall {

/// Reads lengths set apart by semicolons, each as `readLength` takes it; an empty text is an empty list. mm.
/// Refuses   the first that cannot be read or lies out of `range`, with its place: "The 2nd size, ...".
[[nodiscard]] std::expected<std::vector<double>, std::string> readLengths(std::string_view text, Units units,
                                                                          const Range& range);

}  // namespace kerfwall

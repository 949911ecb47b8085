// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/says/json_tree.h"

namespace kerfwall {

/// JSON as a person reads it: what fits on one line stands on one, two spaces a level, a line break at
/// the end. Numbers are the shortest that come back bit for bit. Same value, same bytes.
[[nodiscard]] std::string jsonText(const Json& value);

/// A whole number is written without a decimal point; any other double as itself.
[[nodiscard]] Json plainNumber(double value);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <string>

#include "core/says/project.h"
#include "core/says/typed_number.h"

namespace kerfwall {

/// A sum of typed lengths, read to the end of the text, in mm. How it is understood stands at `readLength`.
/// Refuses   with a reason in one sentence; `typed` then stands where the trouble is.
[[nodiscard]] std::expected<double, std::string> takeLengthSum(Typed& typed, Units units);

}  // namespace kerfwall

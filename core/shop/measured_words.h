// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/shop/measured.h"

namespace kerfwall {

/// What the entry says, as a heading: "A, 90.4 mm from the bottom edge"; "A to B, 55.6 mm".
[[nodiscard]] std::string recordWords(const Project& project, const Record& record);

/// The answer in whole sentences.
/// Requires  all of `answer` but its text is worked out.
[[nodiscard]] std::string measuredText(const Project& project, const MeasuredAnswer& answer, const Tape& tape);

}  // namespace kerfwall

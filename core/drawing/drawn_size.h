// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/says/project.h"

namespace kerfwall {

/// A size as a drawing shows it: without unit; whole millimetres without a decimal ("110.0" would read
/// as a promise of a tenth), inches to the nearest 1/64.
[[nodiscard]] std::string drawnSize(double mm, Units units);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/says/project.h"

namespace kerfwall {

/// A size as a drawing shows it: without unit; millimetres with as many of two decimals as are needed
/// ("110.00" would read as a promise), inches to the nearest 1/64.
[[nodiscard]] std::string drawnSize(double mm, Units units);

/// A setting or mark as a step's picture and figures show it: as drawnSize, inches as they are set (lengthAtSaw).
[[nodiscard]] std::string drawnSetting(double mm, Units units);

}  // namespace kerfwall

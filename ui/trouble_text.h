// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/geometry/solved.h"

namespace kerfwall {

/// Why a line is left out of the drawing, as sentences; "" where it is not.
[[nodiscard]] QString troubleText(const Solved& solved, const LineId& id);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/drawing.h"

namespace kerfwall {

/// A drawing of the panel as its back shows it: turned over like a page, x becomes width - x; texts still read from below.
[[nodiscard]] Drawing mirrored(const Drawing& drawing, double width);

}  // namespace kerfwall

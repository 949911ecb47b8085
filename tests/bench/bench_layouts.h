// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/says/project.h"

namespace kerfwall::bench {

/// Windows in rows on one panel, four lines each, a little askew; every kerf runs through, across the
/// other windows' walls. `lines` is a multiple of 4.
[[nodiscard]] Project windows(int lines);

/// One cutout with `lines` walls round a circle.
[[nodiscard]] Project roundCutout(int lines);

/// The same project with its first line dragged by `step` tenths of a millimetre.
[[nodiscard]] Project dragged(const Project& project, int step);

}  // namespace kerfwall::bench

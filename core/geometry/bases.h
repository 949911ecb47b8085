// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// The panel's edges as things to lay from: the reference edge first, the edge square to it, the others.
[[nodiscard]] std::vector<Base> edgeBases(const Panel& panel);

/// The same, and all lines that are solved.
[[nodiscard]] std::vector<Base> allBases(const Panel& panel, const Solved& solved);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/says/panel.h"

namespace kerfwall {

/// Whether an edge may be measured from and put at a stop: the reference edge; its neighbours where the corner
/// between them is true; all four on a panel true all round.
[[nodiscard]] bool isMeasuredFrom(const Panel& panel, Edge edge);

}  // namespace kerfwall

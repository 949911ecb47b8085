// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/drawing/sheets.h"

namespace kerfwall {

/// One direction of a tiling: where each sheet's window begins, and how long it is. Panel frame, mm.
struct Tiles {
    int count = 1;
    double window = 0;  ///< of one sheet
    double step = 0;    ///< from one window's beginning to the next
};

/// Which sheets have something to show, column by column of each row from the bottom: [row * across.count + column].
/// A sheet stays where something stands on it that no neighbour shows; of what only overlaps show, as few more as cover it.
[[nodiscard]] std::vector<bool> sheetsWithMarks(const Tiles& across, const Tiles& up, const std::vector<Stretch>& drawn);

}  // namespace kerfwall

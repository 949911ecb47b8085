// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/drawing.h"
#include "core/drawing/sheets.h"

namespace kerfwall {

/// The name of a sheet by its row and column, as it stands on the sheet itself: "A1" top-left, "B3".
[[nodiscard]] std::string sheetNameOf(const Sheet& sheet);

/// The sheets laid on the panel, panel frame: the sides of their windows, dashed where a neighbour is joined, and their names
/// in the middle of each. One sheet as large as the panel has no name.
[[nodiscard]] Drawing sheetMap(const Sheets& sheets);

}  // namespace kerfwall

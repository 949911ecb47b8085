// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/sheets.h"
#include "core/geometry/solved.h"
#include "core/shop/finding.h"
#include "ui/paper_pdf.h"

namespace kerfwall {

/// The label for the finished template, 105 x 74 mm (A7 lying): title, sizes in the work, bush or bearing and cutters in
/// turn with how far each stands below the base, bearing band of bored corners, panel, a small outline with its scale.
/// The router's side, date and name are left to be written by hand. However long the words, all stand on it: they break,
/// then grow smaller.
[[nodiscard]] PaperPage labelPage(const Project& project, const Solved& solved,
                                  const std::vector<Finding>& findings);

/// As many of them as the sheet holds, upright or lying, whichever holds more, to be cut along thin lines.
/// Requires  a sheet that holds one.
[[nodiscard]] PaperPage labelSheet(const Project& project, const Solved& solved, const std::vector<Finding>& findings,
                                   const Paper& paper);

/// Columns and rows of labels on a sheet.
struct LabelGrid {
    int columns = 0;
    int rows = 0;
    bool isTurned = false;  ///< the sheet is used the other way round than it is named
    bool operator==(const LabelGrid&) const = default;
};
[[nodiscard]] LabelGrid labelGrid(const Paper& paper);

}  // namespace kerfwall

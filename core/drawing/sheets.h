// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <string>
#include <utility>
#include <vector>

#include "core/geometry/point.h"
#include "core/says/project.h"

namespace kerfwall {

/// Paper as it lies, mm.
struct Paper {
    std::string name;
    double width = 0;
    double height = 0;
    bool operator==(const Paper&) const = default;
};

/// The paper of that name: a4 a3 a2 a1 a0 letter tabloid ansi-c ansi-d ansi-e, upright; "panel", as large as the panel; or
/// "roll-610", as wide as it says (mm) and as long as the panel's pattern takes.
/// Refuses   any other name, in one sentence that lists them.
/// Source    ISO 216; ANSI/ASME Y14.1 for the others.
[[nodiscard]] std::expected<Paper, std::string> paperOf(const std::string& name, const Panel& panel);

/// One sheet of the tiled pattern: `window` of the panel frame is printed at `corner` of the paper
/// (its bottom-left, mm from the paper's bottom-left), full size.
struct Sheet {
    int column = 0;
    int row = 0;
    Box window;
    Point corner;
    bool operator==(const Sheet&) const = default;
};

struct Sheets {
    Paper paper;  ///< as it lies: width and height change places where it lies on its side
    int columns = 0;
    int rows = 0;
    std::vector<Sheet> sheets;  ///< row by row from the top-left; those on which nothing would stand left out
    bool operator==(const Sheets&) const = default;
};

/// A straight stretch of something that is drawn, panel frame.
using Stretch = std::pair<Point, Point>;

inline constexpr double kLeastMargin = 6.35;  ///< mm no printer is asked to print in: a quarter inch, of the trade

/// The sheets a panel's pattern takes, from the panel's bottom-left corner on; neighbours share `overlap` mm.
/// The paper lies upright or on its side, whichever takes fewer sheets; upright where both take as many. What a printer's own
/// dialog set up (name "printer") stays as it lies.
/// Where `drawn` is given, sheets are left out on which none of it stands but what a sheet that stays shows too.
/// Source    n = ceil((size - overlap) / (paper - 2 margin - overlap)) on each axis, margin at least kLeastMargin.
[[nodiscard]] Sheets sheetsFor(const Panel& panel, const Printing& printing, const Paper& paper);
[[nodiscard]] Sheets sheetsFor(const Panel& panel, const Printing& printing, const Paper& paper,
                               const std::vector<Stretch>& drawn);

}  // namespace kerfwall

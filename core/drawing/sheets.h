// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <string>
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

/// The paper of that name: a4 a3 a2 a1 a0 letter tabloid, upright; or "panel", as large as the panel.
/// Refuses   any other name, in one sentence that lists them.
/// Source    ISO 216; ANSI/ASME Y14.1 for letter and tabloid.
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
    Paper paper;
    int columns = 0;
    int rows = 0;
    std::vector<Sheet> sheets;  ///< row by row from the top-left
    bool operator==(const Sheets&) const = default;
};

/// The sheets a panel's pattern takes; neighbours share `overlap` mm.
/// Source    n = ceil((size - overlap) / (paper - 2 margin - overlap)).
[[nodiscard]] Sheets sheetsFor(const Panel& panel, const Printing& printing, const Paper& paper);

}  // namespace kerfwall

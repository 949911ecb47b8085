// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <functional>

#include "ui/print_wish.h"

namespace kerfwall {

class SheetForm;

/// What the rows of the print form read and write besides the project.
struct PrintRows {
    PrintWish& wish;
    const QString& printer;
    std::function<void()> wished;                 ///< the wish was changed
    std::function<Paper(const Project&)> laidFor;  ///< the paper as it lies
};

/// "A4", "letter", "ANSI C", "as the panel", "a roll".
[[nodiscard]] QString paperWords(const std::string& name);

/// Paper, how it lies, margin, overlap, face and line width. A correction turns with the paper.
void addPrintRows(SheetForm& form, const PrintRows& rows);

/// What was measured off that printer's prints, on paper that lies so; the project is left as it is where nothing was.
void takeKeptScale(Project& project, const Paper& laid, const QString& printer);

/// "8 sheets of A4, upright: 4 across and 2 up."
[[nodiscard]] QString sheetsInWords(const Project& project, const Sheets& sheets);

}  // namespace kerfwall

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
    std::function<void()> wished;  ///< the wish was changed
};

/// "A4", "Letter", "as the panel".
[[nodiscard]] QString paperWords(const std::string& name);

/// Paper, how it lies, margin and overlap. What was measured off the printer goes with the paper as it lies.
void addPrintRows(SheetForm& form, const PrintRows& rows);

/// What was measured off that printer's prints, on the project's paper as it lies; the project is left as it is where nothing was.
void takeKeptScale(Project& project, const PrintWish& wish, const QString& printer);

/// "8 sheets of A4, upright: 4 across and 2 up."
[[nodiscard]] QString sheetsInWords(const Project& project, const Sheets& sheets);

}  // namespace kerfwall

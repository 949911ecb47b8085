// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/paper_lie.h"

namespace kerfwall {

/// How the pattern is to be printed, beyond what the project keeps. Lasts as long as the window.
struct PrintWish {
    PaperLie lie = PaperLie::Fewest;
    bool operator==(const PrintWish&) const = default;
};

/// The project's paper as it lies for its pattern; A4 where the project asks for one that is not known.
[[nodiscard]] Paper printPaper(const Project& project, const PrintWish& wish);

/// The sheets its pattern takes on it.
[[nodiscard]] Sheets printSheets(const Project& project, const PrintWish& wish);

}  // namespace kerfwall

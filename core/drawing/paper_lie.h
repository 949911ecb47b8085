// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/sheets.h"

namespace kerfwall {

/// How the maker wants the paper to lie under the pattern.
enum class PaperLie { Fewest, Upright, OnItsSide };

/// The paper as it lies for a panel's pattern: on its side where that is asked for, or where it takes fewer sheets. One sheet as
/// large as the panel lies as it is.
[[nodiscard]] Paper laidPaper(const Panel& panel, const Printing& printing, const Paper& paper, PaperLie lie);

/// True where its longer side lies level.
[[nodiscard]] inline bool liesOnItsSide(const Paper& paper) { return paper.width > paper.height; }

}  // namespace kerfwall

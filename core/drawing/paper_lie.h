// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/sheets.h"

namespace kerfwall {

/// How the maker wants the paper to lie under the pattern.
enum class PaperLie { Fewest, Upright, OnItsSide };

/// True for paper that can be laid either way: neither a roll nor one sheet as large as the panel.
[[nodiscard]] bool canBeLaid(const Paper& paper);

/// The paper to tile a pattern on: turned as it is to lie, where it can be laid either way; left to the tiling for the fewest.
[[nodiscard]] Paper laidPaper(const Paper& paper, PaperLie lie);

/// True where its longer side lies level.
[[nodiscard]] inline bool liesOnItsSide(const Paper& paper) { return paper.width > paper.height; }

}  // namespace kerfwall

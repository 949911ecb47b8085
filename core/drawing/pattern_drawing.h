// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/drawing/drawing.h"
#include "core/drawing/sheets.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// The full-size pattern's marks: nothing filled, names inside the panel's edges. The project's printing says what is left
/// out and which face it is for; the back's is mirrored, and no layout line is hidden on it.
[[nodiscard]] Drawing patternDrawing(const Project& project, const Solved& solved);

/// What of a drawing counts when sheets are left out: all but texts and hatching, arcs as chords.
[[nodiscard]] std::vector<Stretch> stretchesOf(const Drawing& drawing);

/// Where a mark stands; texts by their letters' usual width.
[[nodiscard]] Box boundsOf(const Mark& mark);

/// The pattern's sheets, blank ones left out.
[[nodiscard]] Sheets patternSheets(const Project& project, const Solved& solved, const Paper& paper);

}  // namespace kerfwall

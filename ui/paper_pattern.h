// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QStringList>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/drawing/sheets.h"
#include "core/shop/finding.h"
#include "ui/paper_pdf.h"

namespace kerfwall {

/// The full-size pattern's marks: no fills, the ids inside the panel.
[[nodiscard]] Drawing patternDrawing(const Project& project, const Solved& solved);

/// Adds in large letters what the engine would not guess, across the middle of the panel.
void addUnsure(Drawing& drawing, const Panel& panel, const std::vector<Finding>& findings);

/// The pattern as pages: tiled with overlap, with joining marks, sheet numbers, a key map, a scale bar
/// on both axes and the printer's correction.
[[nodiscard]] std::vector<PaperPage> patternPages(const Project& project, const Solved& solved,
                                                  const std::vector<Finding>& findings, const Paper& paper);

/// The sentences of what the engine would not guess; empty where there is none.
[[nodiscard]] QStringList unsureSentences(const std::vector<Finding>& findings);

}  // namespace kerfwall

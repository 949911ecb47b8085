// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QStringList>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/drawing/pattern_drawing.h"
#include "core/drawing/sheets.h"
#include "core/shop/finding.h"
#include "ui/paper_pdf.h"

namespace kerfwall {

/// Adds in large letters what the engine would not guess, across the middle of the panel.
void addUnsure(Drawing& drawing, const Panel& panel, const std::vector<Finding>& findings);

/// The length of a scale bar where there is that much room, mm: whole 50 mm or 2 inches, the longest that fit; where not even
/// one does, whole 10 mm or inches. 0 where there is no room at all.
[[nodiscard]] double barLength(double room, Units units);

/// The scale bars a sheet of the pattern carries, as they should measure, mm.
struct ScaleBars {
    double level = 0;
    double upright = 0;
    double diagonal = 0;  ///< from the cross at the bars' common end to the one over their far ends
};
[[nodiscard]] ScaleBars scaleBarsOf(const Sheets& sheets, const Printing& printing, Units units);

/// A level scale bar from `start` on a page that counts in mm, as long as fits into `room`, its length behind it.
void paintScaleBar(QPainter& painter, QPointF start, double room, Units units, double correction);

/// The pattern as pages: tiled with overlap, with joining marks, sheet numbers, a key map, scale bars on both axes, a diagonal
/// to check, and the printer's correction. Blank sheets are left out.
[[nodiscard]] std::vector<PaperPage> patternPages(const Project& project, const Solved& solved,
                                                  const std::vector<Finding>& findings, const Paper& paper);

/// The sentences of what the engine would not guess; empty where there is none.
[[nodiscard]] QStringList unsureSentences(const std::vector<Finding>& findings);

}  // namespace kerfwall

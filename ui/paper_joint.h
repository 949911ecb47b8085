// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QString>
#include <vector>

#include "core/drawing/sheets.h"
#include "ui/painter.h"

namespace kerfwall {

/// A sheet of the pattern among the others, and how it is painted.
struct JoinedSheet {
    const Sheets& sheets;
    const Sheet& sheet;
    const std::vector<Stretch>& drawn;  ///< on the whole pattern: marks keep clear of it
    const View& view;
    const Palette& palette;
};

/// "A1": rows by letters from the top, columns by numbers from the left.
[[nodiscard]] QString sheetName(const Sheet& sheet);

/// What a sheet shares with each neighbour: the border at which the left or lower one is cut and up to which it is laid over the
/// other, and two named marks in what both show, at the same places on both.
void paintJoints(QPainter& painter, const JoinedSheet& at);

/// The cross of a joining mark.
void paintJoinCross(QPainter& painter, QPointF centre);

}  // namespace kerfwall

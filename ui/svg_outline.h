// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <expected>
#include <vector>

#include "core/geometry/point.h"

namespace kerfwall {

/// The one closed outline an SVG holds, as a polygon in mm, y up, from the picture's bottom-left corner. Rounds become
/// sides within kSvgTolerance. What defs, clip paths and the like hold, and what is not shown, is passed over.
/// Refuses   in one sentence, with the line in the file and the remedy: no XML or no SVG, no outline or several, a size or
///           transform that cannot be read, an open path.
[[nodiscard]] std::expected<std::vector<Point>, QString> readSvgOutline(const QByteArray& svg);

/// The same of a file; one that cannot be opened, or is larger than 16 MB, is refused too.
[[nodiscard]] std::expected<std::vector<Point>, QString> openSvgOutline(const QString& path);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <array>
#include <vector>

#include "core/geometry/point.h"

namespace kerfwall {

/// What a PDF page strokes, in mm from the page's top-left corner, y down.
struct PageCurve {
    std::array<Point, 4> handles;  ///< of a cubic: start, two handles, end
};
struct PageLine {
    Point from;
    Point to;
    double width = 0;
    bool dashed = false;
};
struct PagePaths {
    std::vector<PageLine> lines;
    std::vector<PageCurve> curves;
};

/// Every straight piece and every cubic that a PDF strokes, page by page, by an independent reader.
[[nodiscard]] std::vector<PagePaths> pathsOf(const QString& pdf);

}  // namespace kerfwall

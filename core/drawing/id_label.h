// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/drawing.h"

namespace kerfwall {

/// A line's id that stands off `at` along the unit `way`: a short one level, its middle `away` mm on paper off; a longer one
/// written along the way from `start` mm on paper on, so that neighbours do not run into one another.
struct IdPlace {
    Point at;
    Point way;
    double away = 0;
    double start = 0;
    double scale = 1;  ///< mm of the drawing for one mm on paper
};
[[nodiscard]] Label idLabel(const LineId& id, const IdPlace& place);

/// Whether that id is written along the way.
[[nodiscard]] bool isLongId(const LineId& id);

/// How far along the way a long id takes, mm on paper; 0 for a short one. By its letters' usual width.
[[nodiscard]] double idLength(const LineId& id);

/// For a small picture: of more than twelve letters the first and the last ones.
[[nodiscard]] std::string pictureId(const LineId& id);

}  // namespace kerfwall

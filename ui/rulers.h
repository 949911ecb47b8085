// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRect>

#include "core/says/project.h"
#include "ui/view_scale.h"

class QPainter;

namespace kerfwall {

inline constexpr int kRulerWidth = 46;   ///< pixels, of the upright one
inline constexpr int kRulerHeight = 24;  ///< pixels, of the level one

/// A ruler's marks: `labelled` mm apart with numbers, `fine` mm apart without.
struct RulerMarks {
    double labelled = 50;
    double fine = 10;
};

/// The marks that stay readable at that scale. Steps of 1, 2, 5; in inches halves down to 1/16, doubles up.
[[nodiscard]] RulerMarks rulerMarks(double pixelsPerMm, Units units);

/// Paints both rulers along the top and left of `area`, counting from the panel's bottom-left corner.
/// `pointer`: where the hand is, marked on both; may lie anywhere.
void paintRulers(QPainter& painter, const QRect& area, const ViewScale& scale, Units units, QPointF pointer);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <vector>

#include "core/drawing/drawing.h"
#include "ui/palette.h"

namespace kerfwall {

/// A line type: wide or narrow (ISO 128: 2 : 1), with dash and gap lengths in mm on paper.
struct LineType {
    QColor colour;
    bool wide = false;
    std::vector<double> dashes;  ///< dash, gap, dash, gap ...; empty: continuous
};

/// How areas of an ink are shown. Invalid colours mean: not filled, not hatched, no border.
struct AreaStyle {
    QColor fill;
    QColor hatch;
    double hatchSpacing = 3;  ///< mm on paper
    double hatchAngle = 45;   ///< degrees
    bool border = false;      ///< drawn with the ink's line type
};

inline constexpr double kWideLine = 0.7;     ///< mm, ISO 128
inline constexpr double kNarrowLine = 0.35;  ///< mm, ISO 128

[[nodiscard]] LineType lineType(Ink ink, const Palette& palette);
[[nodiscard]] AreaStyle areaStyle(Ink ink, const Palette& palette);

/// The severity a finding's ink stands for.
[[nodiscard]] Severity severityOf(Ink ink);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <string>

#include "core/drawing/sheets.h"

namespace kerfwall {

/// What a printer makes of a sheet's two axes, as corrections of what is sent to it.
struct PrintScale {
    double x = 1;
    double y = 1;
    bool operator==(const PrintScale&) const = default;
};

/// The length a scale bar is told to have, and what a ruler says of it on paper. Both mm, > 0.
struct BarReading {
    double nominal = 0;
    double measured = 0;
};

/// A correction, and what to think of before it is trusted; "" for nothing.
struct Correction {
    double factor = 1;
    std::string remark;
};

/// The correction that makes the next print of a bar as long as it is told to be, where the print that was measured was made
/// with the correction `before`.
/// Requires  both lengths and `before` more than 0.  (asserted)
/// Refuses   a reading outside 90 to 110 % of the bar, and a correction outside 0.9 to 1.1, in one sentence with what else it
///           may be. Nothing is clamped.
/// Remarks   on a reading of 93.75 % or its inverse: it is taken, but it comes from mixed units.
/// Source    factor = nominal / measured, each axis by itself, of the trade; a second print is off by what the first
///           correction left, so the two multiply. 93.75 % = 90 / 96.
[[nodiscard]] std::expected<Correction, std::string> correctionFrom(const BarReading& reading, double before = 1);

/// The length of the scale bar that fits on a sheet along `room` mm of its window: whole 50 mm, or whole 10 where that is
/// none; 0 where there is no room.
[[nodiscard]] double scaleBarIn(double room);

/// The scale bars of a tiled pattern's sheets: along x and along y, mm before correction.
[[nodiscard]] PrintScale scaleBarsOf(const Sheets& sheets);

/// A printer's corrections go with its paper, a pattern's with the panel: what is known of the paper's short and long side (x, y)
/// as corrections of a pattern's x and y on paper that lies so; and the other way round.
[[nodiscard]] PrintScale scaleOnPaper(const PrintScale& scale, const Paper& paper);

}  // namespace kerfwall

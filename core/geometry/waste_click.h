// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <string>
#include <vector>

#include "core/geometry/marking.h"

namespace kerfwall {

/// What a click to mark waste would do, told before it is done.
struct WasteClick {
    std::vector<Point> face;  ///< the region under the place: convex, anticlockwise
    Box bounds;               ///< of that region
    double area = 0;          ///< of it, mm²
    double widest = 0;        ///< diameter of the largest disc inside it, mm
    Marked what = Marked::Added;
    std::string cutout;  ///< the one it becomes, joins or is taken from
    Box cutoutBounds;    ///< of all that cutout's faces after the click
    double cutoutArea = 0;  ///< mm²; 0: that was its last face, and it is gone
    bool open = false;      ///< after the click it has a stretch of border on a panel edge
    bool operator==(const WasteClick&) const = default;
};

/// The answer for a click at `place`. It needs no cutout to be solved, so it is quick enough for a hover.
/// Refuses   as markWaste.
[[nodiscard]] std::expected<WasteClick, NoMarking> wasteClickAt(const Project& project, Point place,
                                                                const std::string& joinTo);

}  // namespace kerfwall

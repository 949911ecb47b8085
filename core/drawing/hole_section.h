// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/drawing/section.h"

namespace kerfwall {

/// Where a clamp hole has come through: the part of the bore that has no wood round it, as a rectangle in the
/// side view. mm along the cut, mm below the layout face (above it: negative).
struct HoleBreak {
    enum class Into { Opening, Kerf, Face } into = Into::Opening;
    double from = 0;
    double to = 0;
    double top = 0;
    double bottom = 0;
    bool operator==(const HoleBreak&) const = default;
};

/// A clamp hole as a side view shows it. Lying: its axis runs along the view; else it is seen end on.
struct HoleSection {
    bool lying = false;
    bool cut = false;  ///< the cutting line goes through the bore; else it lies hidden
    double mouth = 0;  ///< lying: where it enters the panel, mm along the cut; end on: its axis
    double point = 0;  ///< lying: where the drill's point stands; end on: its axis
    double axis = 0;   ///< mm below the layout face
    double half = 0;   ///< half its height in the view, mm: of the chord that is cut, or of the whole bore
    std::vector<HoleBreak> breaks;
    bool operator==(const HoleSection&) const = default;
};

/// How the hole shows at that cut, and where it comes through in the plane shown: the cut's own where the
/// hole is cut, else the plane through the hole's axis (a hole seen end on and not cut shows none but faces).
/// Source    chord of a circle: 2 sqrt(r^2 - h^2).
[[nodiscard]] HoleSection holeSection(const Project& project, const Solved& solved, const ClampHole& hole,
                                      const CuttingLine& cut);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/point.h"
#include "core/says/panel.h"

namespace kerfwall {

/// Which way the panel is cut for a side view. Level: along y = `at`, seen from the bottom edge, drawn under
/// the plan. Upright: along x = `at`, seen from the right edge, drawn to the right of the plan.
enum class CutDirection { Level, Upright };

inline constexpr CutDirection kCutDirections[] = {CutDirection::Level, CutDirection::Upright};

/// Where the panel is cut, mm from the bottom edge (level) or from the left edge (upright).
struct CuttingLine {
    CutDirection direction = CutDirection::Level;
    double at = 0;
    bool operator==(const CuttingLine&) const = default;
};

/// Which way the cut runs: to the right or up; length 1.
[[nodiscard]] Point cutHeading(CutDirection direction);

/// How long the cut is on the panel, and how far it can be moved, mm.
[[nodiscard]] double cutLength(const Panel& panel, CutDirection direction);
[[nodiscard]] double cutReach(const Panel& panel, CutDirection direction);

/// The place `along` mm from the left edge (level) or from the bottom edge (upright) on the cut.
[[nodiscard]] Point onCut(const CuttingLine& cut, double along);

/// How far along the cut a place lies, and how far beyond it, away from the one who looks, mm.
[[nodiscard]] double alongCut(const CuttingLine& cut, Point place);
[[nodiscard]] double beyondCut(const CuttingLine& cut, Point place);

/// The cut of that direction through a place, kept on the panel.
[[nodiscard]] CuttingLine cutThrough(const Panel& panel, CutDirection direction, Point place);

}  // namespace kerfwall

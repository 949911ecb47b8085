// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/drawing/cutting_line.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// One stretch of the panel along the cutting line, mm along it (cutting_line.h, onCut).
struct SectionRun {
    enum class Kind { Wood, Kerf, Opening } kind = Kind::Wood;
    double from = 0;
    double to = 0;
    double depth = 0;  ///< Kerf: how deep below the layout face here
    std::string line;  ///< Kerf: whose
    bool operator==(const SectionRun&) const = default;
};

/// The panel cut along that line, from its left or bottom edge on, gap free.
[[nodiscard]] std::vector<SectionRun> sectionAt(const Project& project, const Solved& solved,
                                                const CuttingLine& cut);

/// The places along the cut that thin lines carry over from the plan: the panel's ends, and the ends of what is
/// opened. mm along the cut.
[[nodiscard]] std::vector<double> projectedPlaces(const Project& project, const Solved& solved,
                                                  const CuttingLine& cut);

}  // namespace kerfwall

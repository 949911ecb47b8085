// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/drawing/cutting_line.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// A fence where the cutting line goes through it: a rectangle in the side view. mm along the cut, mm below
/// the layout face (above it: negative). A groove lets its foot into the panel.
struct FenceSection {
    std::size_t index = 0;  ///< into the project's fences
    double from = 0;
    double to = 0;
    double top = 0;
    double bottom = 0;
    bool operator==(const FenceSection&) const = default;
};

/// The fences that are cut, in the project's order.
[[nodiscard]] std::vector<FenceSection> fenceSections(const Project& project, const Solved& solved,
                                                      const CuttingLine& cut);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/geometry/point.h"
#include "core/says/project.h"

namespace kerfwall {

/// What choosing a saw asks of a line: its run on the panel.
struct LineRun {
    std::size_t line = 0;  ///< index into the project's lines
    Point from;
    Point to;
};

/// For each run the bench's saw that cuts its kerf (an index into the bench's saws): the one the line
/// names, else by its direction (along the reference edge: rip fence; square to it: sled, then gauge;
/// askew: gauge within its angle, then rail; stopped: a saw that can stop). None where no saw can.
[[nodiscard]] std::vector<std::optional<std::size_t>> chooseSaws(const Project& project,
                                                                 const std::vector<LineRun>& runs);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/says/project.h"

namespace kerfwall {

/// The bounds of the workpiece; none where there is none.
[[nodiscard]] std::optional<Box> workBounds(const Project& project);

/// True where the workpiece is one rectangle along the panel's edges, or there is none.
[[nodiscard]] bool isWorkRectangle(const Project& project);

/// The project with a workpiece of that rectangle; its thickness and grain stay.
/// Requires  low is below and to the left of high.
[[nodiscard]] Project withWorkRectangle(Project project, const Box& box);

/// The project with its workpiece moved so that its bounds begin at `low`. Unchanged where there is none.
[[nodiscard]] Project withWorkAt(Project project, Point low);

}  // namespace kerfwall

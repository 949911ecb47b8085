// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <string>
#include <vector>

#include "core/says/project.h"

namespace kerfwall {

/// The project with a workpiece of that outline, anticlockwise; its thickness and grain stay, glued parts go.
/// Requires  all numbers finite.
/// Refuses   fewer than three corners, sides that cross, and places beyond kFarthestWork, in one sentence with the remedy.
[[nodiscard]] std::expected<Project, std::string> withWorkOutline(Project project, std::vector<Point> outline);

inline constexpr double kFarthestWork = 10000;  ///< mm, as the project file says

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/exact_line.h"
#include "core/says/project.h"

namespace kerfwall {

/// Every line of the project as it was laid, exactly, beside the project's lines. None where a crossing it
/// stands on does not exist, or lines stand on one another in a ring.
[[nodiscard]] std::vector<std::optional<ExactLine>> laidLines(const Project& project, const ExactPanel& panel);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// One step for all clamp holes of one edge, diameter, depth and height.
[[nodiscard]] std::vector<WorkStep> holeSteps(const Project& project);

/// One step for each fence that stands in a groove, to be cut before the panel loses its reference edge: `setting.depth`
/// is the groove's. Its sides are told from the reference edge, or the edge square to it, where it runs along one.
[[nodiscard]] std::vector<WorkStep> grooveSteps(const Project& project, const Solved& solved);

/// One step for each straight reference fixed to the template.
[[nodiscard]] std::vector<WorkStep> fenceSteps(const Project& project);

/// What to write on the finished template.
[[nodiscard]] WorkStep labelStep(const Project& project, const Solved& solved);

}  // namespace kerfwall

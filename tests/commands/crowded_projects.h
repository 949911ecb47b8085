// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/says/project.h"

namespace kerfwall {

struct CrowdedProject {
    std::string name;
    Project project;
};

/// As many lines and cutouts as a project may have, in every way that makes much of them: a hundred windows, a
/// hundred faces between lines of every direction, a round of 500 walls, 500 lines through one micrometre, a grid
/// of 62,500 cells, 500 lines a tenth apart, 500 lines on a panel of 10 mm.
[[nodiscard]] std::vector<CrowdedProject> crowdedProjects();

}  // namespace kerfwall

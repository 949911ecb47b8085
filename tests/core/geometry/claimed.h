// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/proof.h"

namespace kerfwall::test {

/// One cutout's opening with all it was made from, to be spoiled and proved.
struct Claimed {
    VoidRim rim;
    Opening opening;
    double room = 0;
    double sweep = 0;
    Panel panel;

    [[nodiscard]] std::vector<Doubt> doubts() const { return doubtsAbout({rim, opening, room, sweep, panel}); }
};

/// The template's opening of every cutout of a project, looked at as `solve` does.
[[nodiscard]] std::vector<Claimed> claimed(const Project& project);

/// The same with a disc of `room` rolling in the void and one of `sweep` cutting.
[[nodiscard]] std::vector<Claimed> claimed(const Project& project, double room, double sweep);

}  // namespace kerfwall::test

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/says/project.h"

namespace kerfwall::oracle {

/// Seeds of at most `most` faces: the face round `first`, then its neighbours across lines that are not
/// among `own`, nearest first. For drawing layouts only: in doubles, so a face under 0.5 mm² is refused.
/// Gives     no seed where a face is too small or `first` lies on a line.
[[nodiscard]] std::vector<Point> seedsGrown(const Project& project, Point first,
                                            const std::vector<std::size_t>& own, std::size_t most);

}  // namespace kerfwall::oracle

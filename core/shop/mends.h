// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/remedies.h"

namespace kerfwall {

/// What can be done about a wall that was cut past its line, as whole projects: the line is laid where the wall stands, and
///   - the whole opening goes along with it, with all its sizes and what is wanted of it; or, where that is refused,
///   - the walls that face it go along, so that the sizes between them and it still come out.
/// Each is offered only where no wall in the record comes to lie past its line by it, no finding stops the work that did
/// not stop it before, and every cutout keeps its faces. `clears` says that this wall then stands on its line.
/// Requires  `solved` is this project's, `record` an index into its record.
/// Gives     nothing for a wall that is not past its line, or was measured again since.
[[nodiscard]] std::vector<Remedy> mends(const Project& project, const Solved& solved, std::size_t record);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/strength/held_plate.h"

namespace kerfwall {

/// How a panel of that material and thickness (mm) gives. Of one that is not known: MDF's figures, which are the lowest here.
/// MDF edgewise gives more than these flatwise figures say; whoever shows a flex says so.
/// Source    MDF: least modulus by thickness of general-purpose board, EN 622-5 as a board data sheet quotes it. Birch plywood (an
///           id that begins with birch or ply): the lower of both grains from 12 mm and 18 mm board, from memory of the handbook of
///           Finnish plywood. Poisson's ratio 0.3, from G = E/2.6: common practice, no source.
[[nodiscard]] Elastic elasticOf(const std::string& material, double thickness);

}  // namespace kerfwall

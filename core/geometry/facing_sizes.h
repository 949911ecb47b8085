// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// The sizes between walls that face each other across the cutout: parallel ones at their distance,
/// splayed ones (up to 30 degrees) square to the first at both ends of where they face.
[[nodiscard]] std::vector<FacingSize> facingSizes(const SolvedCutout& cutout);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/shop/kerf_steps.h"

namespace kerfwall {

/// One kerf step in whole sentences: what to set, how the panel lies, which marks to cut to. Lengths in
/// the project's units. Requires  the kerfs share one setting; at least one.
[[nodiscard]] std::string kerfText(const Project& project, const Solved& solved,
                                   const std::vector<PlannedKerf>& planned);

}  // namespace kerfwall

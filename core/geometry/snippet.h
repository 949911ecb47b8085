// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/copying.h"

namespace kerfwall {

/// What is picked as a project of its own, to be put on another sheet: the panel, units and bench, the things with the
/// lines of their walls and those their fences run along. Lines that were laid from others are laid from the panel's edges.
[[nodiscard]] Project snippetOf(const Copied& things);

/// The things of a snippet put where they were, or where that is taken as many `step`s (mm) to the right and up as need be.
/// Refuses   see NoCarrying; NothingNew where the snippet is empty or no place is free.
[[nodiscard]] std::expected<Copies, NoCarrying> pasted(const Project& onto, const Project& snippet, double step, int highestLine);

}  // namespace kerfwall

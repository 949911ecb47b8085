// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/geometry/clamping.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// What stands beside the pointer at a clamp hole: its numbers and the wood left round it.
[[nodiscard]] QString holeNote(const Project& project, const Solved& solved, std::size_t hole);

/// "clamp 1: 8 across, 60 deep": a hole to be placed.
[[nodiscard]] QString holeKindText(const HoleKind& kind, Units units);

}  // namespace kerfwall

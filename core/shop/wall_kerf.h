// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// The kerf whose wall bounds the cutout there; none where the line has no kerf on that side.
[[nodiscard]] std::optional<Kerf> kerfOf(const Solved& solved, const Wall& wall);

/// The kerfs of the two walls that meet at a corner (an index into the cutout's corners).
[[nodiscard]] std::vector<Kerf> kerfsAt(const Solved& solved, const SolvedCutout& cutout, std::size_t corner);

/// The narrowest kerf along the cutout's border, mm; none where it has no kerf.
[[nodiscard]] std::optional<double> narrowestKerf(const Solved& solved, const SolvedCutout& cutout);

/// Depth of the shallowest kerf along the cutout's border, mm; none where it has no kerf.
[[nodiscard]] std::optional<double> shallowestFloor(const Solved& solved, const SolvedCutout& cutout);

/// Whether the cutout can be cut out at all: it has kerfs for the bearing, and the bit fits.
[[nodiscard]] bool isWorkable(const Solved& solved, const SolvedCutout& cutout);

/// The ids of the lines along the cutout's border, each once, in the order of its walls.
[[nodiscard]] std::vector<LineId> linesAlong(const SolvedCutout& cutout);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/oracle/opening_question.h"

namespace kerfwall::oracle {

/// Answers by unions of exact capsules: CGAL's circle-segment polygon sets on an exact kernel.
/// A disc moved along a stretch is that stretch's rectangle and two discs; moved along an arc, a piece of
/// a ring and two discs. Unit normals are fractions within 1e-14 of the true ones, so every border lies
/// within 1e-11 mm of the true one. Pieces under 1e-7 mm² are what that leaves, and are dropped.
[[nodiscard]] OpeningAnswer exactOpening(const OpeningQuestion& question);

/// Area of the joined faces, mm², by the same polygon sets.
[[nodiscard]] double exactDrawnArea(const PlainCutout& cutout);

}  // namespace kerfwall::oracle

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/oracle/opening_question.h"

namespace kerfwall::oracle {

/// Answers with a general polygon library on whole nanometres, arcs as chords within 5e-5 mm of the
/// circle: union of the void, offset inwards, choice of parts, offset outwards. `border` is left empty.
[[nodiscard]] OpeningAnswer clipperOpening(const OpeningQuestion& question);

/// How far the two routes' areas may lie apart, mm². Each border point is rounded twice by half a
/// nanometre (taken as 2 nm along the whole perimeter); chords fall short of their arcs by 2/3 of 5e-5 mm
/// on average, once in the room and once in the opening; 1e-3 is left for steps that end on a chord.
[[nodiscard]] double clipperTolerance(const OpeningAnswer& exact);

}  // namespace kerfwall::oracle

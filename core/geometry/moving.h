// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/solved.h"

namespace kerfwall {

/// What of a line is taken hold of.
enum class Grip { Whole, From, To };

/// The project with that line moved so that what was at `grabbed` goes to `now`, keeping how it was laid:
/// an offset changes its distance, marks run along their edges, a mirror image moves the line it mirrors.
/// Distances and marks fall on whole `step`s (mm) where they changed. Taken by an end, a line laid by marks or
/// points turns; any other moves whole.
/// Gives     the project unchanged where the line is not there.
[[nodiscard]] Project moveLine(const Project& project, const Solved& solved, const LineId& id, Grip grip,
                               Point grabbed, Point now, double step);

/// A run laid from the panel's edges: parallel to the reference edge or the edge square to it by a distance, else from
/// one edge mark to another. Numbers to the nanometre. Requires  from and to are two places.
[[nodiscard]] Place laidFromEdges(const Panel& panel, Point from, Point to);

/// The project without that line. Lines laid from it stay where they are, laid anew from the panel's edges;
/// bored corners, fences and measures that named it go with it.
[[nodiscard]] Project withoutLine(const Project& project, const Solved& solved, const LineId& id);

/// The first of A, B, ... Z, AA, AB ... after every such id the project holds and after `highest`, the
/// highest number given before (0 for none, 1 for A).
[[nodiscard]] LineId nextLineId(const Project& project, int highest);

/// The number of an id of that kind: A 1, Z 26, AA 27; 0 for any other id.
[[nodiscard]] int lineIdNumber(const LineId& id);

}  // namespace kerfwall

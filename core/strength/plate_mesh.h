// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/strength/plate.h"

namespace kerfwall {

/// Cuts a plate into triangles: Delaunay refinement, no angle under some 20 degrees but where the shape has one, no side longer than
/// `longest` mm. Areas that hold are followed by the triangles' sides; a band thins the triangles it crosses by as much of each as it
/// covers. What does not hang together with a hold is left out, so that
/// every triangle is held; without holds that touch the plate there are none, and none either where the shape is too fine or too
/// nearly degenerate to be cut up soundly.
/// Requires  longest > 0.
/// Source    J. R. Shewchuk, Delaunay refinement algorithms for triangular mesh generation (2002), as in CGAL 2D meshes.
[[nodiscard]] PlateMesh meshOf(const PlateShape& shape, double longest);

}  // namespace kerfwall

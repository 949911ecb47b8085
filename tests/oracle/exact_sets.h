// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/General_polygon_set_2.h>
#include <CGAL/Gps_circle_segment_traits_2.h>

#include <vector>

#include "tests/oracle/plain_layout.h"

namespace kerfwall::oracle {

/// Regions bounded by straight stretches and arcs, joined and cut exactly. Shared by the exact routes.
using ExactSet = CGAL::General_polygon_set_2<
    CGAL::Gps_circle_segment_traits_2<CGAL::Exact_predicates_exact_constructions_kernel>>;

/// The faces of a cutout, joined.
[[nodiscard]] ExactSet exactFaces(const PlainCutout& cutout);
/// What stands of the panel when the cutout's faces, its bores and all kerfs are gone.
[[nodiscard]] ExactSet exactWood(const PlainLayout& layout, const PlainCutout& cutout);
/// Kerfs; unit normals within 1e-14.
[[nodiscard]] ExactSet exactBands(const std::vector<PlainBand>& bands);
[[nodiscard]] ExactSet exactDiscs(const std::vector<PlainRound>& bores);
[[nodiscard]] ExactSet exactBox(Point low, Point high);
/// `set` and all that a disc of `radius` covers with its centre on the set's border.
[[nodiscard]] ExactSet exactGrown(const ExactSet& set, double radius);
/// The parts of `set` that share a place with `over`, films left out; `count` of them.
[[nodiscard]] ExactSet exactPartsOver(const ExactSet& set, const ExactSet& over, int* count = nullptr);
/// mm².
[[nodiscard]] double exactArea(const ExactSet& set);

}  // namespace kerfwall::oracle

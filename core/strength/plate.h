// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "core/geometry/outline.h"

namespace kerfwall {

/// A convex stretch of a plate that is thinner than the rest.
struct PlateBand {
    std::vector<Point> corners;  ///< anticlockwise
    double thickness = 0;        ///< mm
};

/// One opening: loops filled by the even-odd rule. Openings may touch or cross one another.
using PlateOpening = std::vector<OutlineLoop>;

/// A straight stretch, or where `corners` are more than two a convex area, that cannot move.
struct PlateHold {
    std::vector<Point> corners;  ///< anticlockwise
};

/// A rectangular panel with openings, as what bears its load in its own plane. mm.
struct PlateShape {
    double width = 0;
    double height = 0;
    double thickness = 0;
    std::vector<PlateOpening> openings;
    std::vector<PlateBand> bands;
    std::vector<PlateHold> holds;
};

/// A side of a triangle with the plate on one side only.
struct PlateRim {
    std::size_t from = 0;
    std::size_t middle = 0;
    std::size_t to = 0;
};

/// The plate cut into triangles of six nodes: three corners anticlockwise, then the middles of the sides that begin at each.
struct PlateMesh {
    std::vector<Point> nodes;
    std::vector<std::array<std::size_t, 6>> triangles;
    std::vector<std::array<double, 3>> thickness;  ///< of each triangle round each of its corners: the mean, see kNearShare
    std::vector<char> isHeld;                      ///< of each node
    std::vector<PlateRim> rims;
};

/// Where a triangle's stiffness is read: near each corner, at 2/3 of it and 1/6 of the others. Exact for squares of linear strains.
inline constexpr double kNearShare = 2.0 / 3;
inline constexpr double kFarShare = 1.0 / 6;

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/outline.h"
#include "tests/oracle/plain_layout.h"

namespace kerfwall::oracle {

/// What a disc sweeps: the void of one cutout is eroded by `erode`, the parts of that room with a place
/// over the drawn cutout are dilated by `dilate`, cut off at the panel, and the pieces that hold no part
/// of the drawn cutout are dropped. Both radii are the bit's for the template's opening.
struct OpeningQuestion {
    const PlainLayout* layout = nullptr;
    std::size_t cutout = 0;
    double erode = 0;
    double dilate = 0;
};

struct OpeningAnswer {
    double area = 0;                   ///< mm²
    double perimeter = 0;              ///< mm, the run along the panel's edge counted in
    double arcLength = 0;              ///< mm of it that is arcs
    std::vector<OutlinePiece> border;  ///< in no promised order
    int parts = 0;                     ///< parts of the room over the drawn cutout
};

}  // namespace kerfwall::oracle

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/shop/iso_2768.h"
#include "core/shop/order_of_work.h"
#include "core/shop/plus_minus.h"

namespace kerfwall {

/// How exactly a size or an angle comes out, and the finest class it keeps even at its worst; none: it keeps none.
struct Exactness {
    PlusMinus plusMinus;
    std::optional<ToleranceClass> keeps;
    bool operator==(const Exactness&) const = default;
};

struct CutoutExactness {
    std::vector<std::optional<Exactness>> sizes;   ///< beside the cutout's sizes, mm; none where a wall has no step
    std::vector<std::optional<Exactness>> angles;  ///< beside its corners, degrees
    bool operator==(const CutoutExactness&) const = default;
};

/// How exactly the cutouts come out of that order of work: for each size between facing walls and each corner's angle
/// what the settings it depends on add up to (wall_shares.h), at the end of the walls where it is largest.
/// Gives     a list beside the answer's cutouts.
[[nodiscard]] std::vector<CutoutExactness> exactness(const Project& project, const Solved& solved,
                                                     const OrderOfWork& order);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/outline.h"

namespace kerfwall {

/// Where one run of pieces strays furthest from another.
struct Mismatch {
    double distance = 0;  ///< mm, at most kMismatchSlack less than the true greatest distance
    Point at;             ///< on the first run
    bool operator==(const Mismatch&) const = default;
};

inline constexpr double kMismatchSlack = 1e-3;  ///< mm: a hundredth of the finest limit it is held against

/// The greatest distance of a place on `from` to the nearest place on `to`; none where either is empty.
/// Source    the one-sided Hausdorff distance, by halving pieces and dropping those that cannot hold
///           the greatest: the distance to a straight piece is greatest at a chord's ends, the distance
///           to an arc within its sector at its ends or at the foot of the arc's centre.
[[nodiscard]] std::optional<Mismatch> greatestMismatch(const std::vector<OutlinePiece>& from,
                                                       const std::vector<OutlinePiece>& to);

}  // namespace kerfwall

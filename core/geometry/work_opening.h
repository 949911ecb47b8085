// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/geometry/reach.h"

namespace kerfwall {

/// True where the work's opening is the template's: guide, cutter and trimming bit of one size, clear of the
/// kerfs.
[[nodiscard]] bool worksAsTrimmed(const UseAnswer& use, double bitRadius);

/// The opening that the finished template cuts in the work: the guide rolls, the cutter cuts.
///
/// A guide not smaller than the trimming bit meets nothing that the drawn void does not show: where it fits,
/// the bit fitted. A smaller one rolls in what was trimmed, where it may pass a neck that the bit only opened
/// from both sides. Riding clear of the kerfs it meets that alone, in their band the kerfs besides. A guide
/// that reaches past the kerfs (Rides::Both) is held by the least void along its length: what lies below the
/// kerfs is part of what lies in their band, so it counts as riding clear.
[[nodiscard]] RolledOpening workOpening(const World& world, const ArrangedCutout& cutout,
                                        const Border& border, const UseAnswer& use, double bitRadius);

/// Rolls discs a nanometre smaller and larger: the place of a gap on the border of a decision, where that changes the
/// room they have by more than its rim times the nanometre, or its rim by a thousandth of a millimetre (a slot as
/// wide as the disc gives room without area).
[[nodiscard]] std::optional<Point> gapNearBorder(const World& world, const ArrangedCutout& cutout, double radius,
                                                 const RolledOpening& rolled);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/way.h"

namespace kerfwall {

/// The ways at a saw whose fence stands across the push: crosscut sled, mitre gauge, sliding mitre saw,
/// with `against` on that fence: a stop at each true end it can reach, then to marks. `saw` is not set.
/// Requires  the saw reaches the kerf with `against` on its fence.
/// Source    stop d where the waste lies beyond the line, d - kerf / cos a where it lies between line and
///           stop; d along the fence from the end at the stop to where the line meets the fence.
[[nodiscard]] std::vector<Way> stopWays(const Panel& panel, const Saw& saw, const KerfAsked& kerf,
                                        Edge against);

/// The wedge that turns a panel on a sled's fence by `angle` degrees: rise over `length` along the fence.
/// Source    rise = length tan(angle).
[[nodiscard]] Wedge wedgeFor(double angle, double length);

}  // namespace kerfwall

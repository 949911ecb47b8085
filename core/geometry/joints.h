// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/doubts.h"
#include "core/geometry/proof.h"

namespace kerfwall {

/// Adds a doubt for every round whose radius is not that of the disc, bore or lip that made it, or whose ends do not
/// lie on it; for every round that meets the wall it was rolled along with a kink; and for every corner to the left,
/// which no disc leaves. The panel's edge cuts rounds off anyhow.
/// Requires  `sources` beside the outline's pieces.
/// Exact to  kClearance square to a piece, sqrt(2 r kBite) along it (see joints.cpp).
void proveJoints(const Claim& claim, Doubts& doubts);

}  // namespace kerfwall

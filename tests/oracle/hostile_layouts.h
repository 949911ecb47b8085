// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/says/project.h"

namespace kerfwall::oracle {

/// Layouts drawn to break an engine. "A nudge" is 1 to 9 times a power of ten from 1e-9 to 1e-3 mm, either way.
enum class HostileKind {
    NearParallel,   ///< lines that turn from one another by a nudge over 300 mm, apart or crossing
    NearCrossing,   ///< lines within a nudge of a crossing of two others
    Concurrent,     ///< three to six lines through one point, by points, angles and mirrors
    Sliver,         ///< faces from a nudge to half a millimetre wide
    WideKerf,       ///< kerfs of 5 to 10 mm in faces of 0.5 to 15
    LargeBit,       ///< bits of 20 to 60 mm in openings of 4 to 50
    ExactNeck,      ///< slots and necks a nudge, or nothing, off the bit's diameter
    Overlap,        ///< parallel walls a kerf, half a kerf, or either and a nudge apart
    AtTheEdge,      ///< lines on, or a nudge off, an edge or a corner of the panel, or a kerf away from it
    NearCorners,    ///< corners of two cutouts that touch, or lie from a nudge to a panel's thickness apart
    Crowd,          ///< twenty to thirty lines of every direction
    ManyCutouts,    ///< four to six windows whose kerfs run through one another
    SmallPanel,     ///< panels of 10 to 40 mm
    LargePanel,     ///< panels of 3000 mm, lines at angles down to a tenth of a degree
    Stopped,        ///< stopped kerfs and bored corners, bores a nudge off the bit or off the next bore
};
inline constexpr int kHostileKinds = 15;

[[nodiscard]] std::string kindName(HostileKind kind);

/// A layout drawn from `seed`, the same on every machine: one that `readProject` accepts. Its lines may still be
/// trouble of drawing (a line off the panel, a face of two cutouts).
[[nodiscard]] Project hostileLayout(HostileKind kind, std::uint64_t seed);

}  // namespace kerfwall::oracle

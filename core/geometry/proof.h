// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/opening.h"

namespace kerfwall {

/// An opening as `openingOf` gave it, with all it was made from: plain values, none of them trusted.
struct Claim {
    const VoidRim& rim;
    const Opening& opening;
    double room = 0;   ///< mm: radius of the disc that rolled in the void ...
    double sweep = 0;  ///< ... and of the disc that sweeps; a template: both the bit's
    const Panel& panel;
};

/// What of an opening cannot be true, each with its place; none of it doubted before. Never fails, whatever the
/// values are. Proves, by other means than the opening was made by,
///   that its loops close, outer ones anticlockwise, islands clockwise and inside one outer loop;
///   that a round meets the wall it was rolled along without a kink, and that no corner is sharper than a disc;
///   that a round's radius is the disc's, a bore's or a lip's, and its ends lie on it;
///   that the disc which made a piece touches what it says it touched, and no wall comes nearer (clearance.h);
///   that no wood is left inside;
///   that its area is its loops' and lies between its room's and what its room can sweep.
/// Requires  links that hold: tags and followers of the rim and the room are indices into what stands beside them.
/// Source    a region grown by s has the area A + s P + π s² (outer loops - islands), less what overlaps, and only
///           the rounds overlap; a union of discs of radius s has no corner to the left sharper than s.
[[nodiscard]] std::vector<Doubt> doubtsAbout(const Claim& claim);

/// The same for a cutout's answer as a whole: its outlines' loops and areas, the drawn area against its faces, and
/// that a bit which fits the widest place of the drawn cutout opens that place.
[[nodiscard]] std::vector<Doubt> doubtsAbout(const SolvedCutout& cutout, double bitRadius);

}  // namespace kerfwall

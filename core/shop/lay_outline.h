// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <functional>
#include <string>
#include <vector>

#include "core/shop/wish.h"

namespace kerfwall {

/// An opening wanted in the work where it is to lie on the panel. Panel frame.
struct WantedOutline {
    std::string name = "opening";    ///< what sentences call it
    std::string cutout = "opening";  ///< its cutout's id, a number behind it where there is one already
    std::vector<Point> corners;    ///< anticlockwise; those of an open side lie off the panel
    double cornerRadius = 0;       ///< mm; 0: sharp
    bool isOpenBelow = false;      ///< it runs out over the panel's bottom edge
    bool isSymmetric = false;      ///< its right half is laid as the mirror image of its left
    WishPart narrowPart = WishPart::Corners;             ///< what to change where it is too narrow
    std::function<std::string(std::size_t)> sideName;    ///< side i in words: "the side from corner 2 to 3"
};

/// The radius the tools in use leave in the work's corners where the template's are not bored, mm.
[[nodiscard]] double cornerLeft(const Project& project);

/// How far outside the edge it cuts a wall stands, mm: (guide - cutter) / 2.
[[nodiscard]] double wallOffset(const Project& project);

/// The project with that outline laid on its panel: its lines, a cutout with the wish in `wanted`, and bores where the
/// corners want them. Level and upright lines lie by their distance from the reference edge or the edge square to it,
/// a line that is the mirror image of another about the panel's middle mirrors it, one at a whole or half degree lies by
/// that angle, others by two points. A symmetric outline off the panel's middle gets a centre line, a mark, to be
/// mirrored about. Kerfs that end at an inward corner are stopped where that leaves less to mind. A line that lies where a wall is to stand is used again: windows in a row share their lines.
/// Places fall on whole 1e-9 mm. It may lie beside others where no line of the one runs through the other; kerfs that
/// pass close by, thin borders and clamp holes in its way are findings, not refusals. Limits of `border-thin` are the
/// project's. `highest`: the highest number of a line id given before (moving.h, nextLineId).
/// Requires  a simple polygon without corners of 180 degrees, all numbers finite.
/// Refuses   see NoWish, from TooNarrow on; the first that holds, in that order.
/// Source    the opening in the work: every wall stands (guide - cutter) / 2 outside the edge it cuts. A corner of
///           radius R in the template, R at least the guide's, leaves R - (guide - cutter) / 2; a smaller one leaves
///           the cutter's radius. The trimming bit leaves its own, a bore R = radius wanted + (guide - cutter) / 2.
///           Radii within kSameRadius count as the same, and no bore is set.
[[nodiscard]] std::expected<LaidWish, WishRefusal> layOutline(const Project& project, const WantedOutline& wish,
                                                              int highest = 0);

}  // namespace kerfwall

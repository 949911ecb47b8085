// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// How far above the shallowest kerf's floor the bearing runs, mm. Common practice, no source.
inline constexpr double kBearingAboveFloor = 1;

/// What a trimming bit takes at once without tearing, mm wide. Common practice, no source.
inline constexpr double kBiteAtOnce = 1.5;

/// In how many passes a bite is taken. By width, never by depth: the bearing in the kerf lets the whole web be cut at once.
[[nodiscard]] int passesFor(double bite);

/// Which of the bit's bearings runs in the kerfs, Tip or Shank. With one at both, the one that leaves the
/// layout face up.
[[nodiscard]] BearingAt bearingInKerf(Router router, BearingAt bearingAt);

/// Whether the layout face lies up while trimming. The bearing must run in the kerfs: a bearing at the
/// bit's tip points away from the router, one at the shank sits next to it.
/// Requires  Tip or Shank.
[[nodiscard]] bool isTrimmedFaceUp(Router router, BearingAt bearingAt);

/// From the table, or from the router's base, to the bearing's end next to the kerf's floor, mm:
///
///      bearing at the tip                bearing at the shank
///      layout face ___     ___           back face   ___________
///                     | |b|                             web
///      1 above floor  |_|b|              floor       ----+
///         web         __|||__            1 off it      |b| |
///      back face on table or base        layout face on table or base
///
/// Source    tip: thickness - floor + 1; shank: floor - 1.
[[nodiscard]] double bearingHeight(double thickness, double floorDepth, BearingAt bearingAt);

/// The wall along which the feed is told: the longest with a neighbour at both ends; nullptr where there is none.
[[nodiscard]] const Wall* feedWall(const SolvedCutout& cutout);

/// One trimming step for each cutout whose border has a kerf; without a setting, and saying so, where the bit
/// does not fit.
[[nodiscard]] std::vector<WorkStep> trimSteps(const Project& project, const Solved& solved);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/geometry/outline.h"

namespace kerfwall {

/// How far two things are apart, and between which places. Millimetres.
struct Gap {
    double distance = 0;  ///< 0 where they touch or cross
    Point first;          ///< on the first thing ...
    Point second;         ///< ... and on the second: the nearest pair
    bool operator==(const Gap&) const = default;
};

/// A straight piece that lies on nothing.
[[nodiscard]] OutlinePiece straight(Point from, Point to);

/// The least distance between a place and a piece, to rounding; arcs are taken as arcs.
/// Source    foot of a perpendicular; for an arc the ray from its centre.
[[nodiscard]] Gap gapBetween(Point place, const OutlinePiece& piece);

/// The least distance between two pieces.
/// Source    two curves are nearest where they cross, at an end of one, or along a common normal,
///           which for a circle runs through its centre.
[[nodiscard]] Gap gapBetween(const OutlinePiece& first, const OutlinePiece& second);

/// The least distance between two outlines' borders; none where one of them is empty.
[[nodiscard]] std::optional<Gap> gapBetween(const Outline& first, const Outline& second);

/// The least distance between a piece and an outline's border; none where the outline is empty.
[[nodiscard]] std::optional<Gap> gapBetween(const OutlinePiece& piece, const Outline& outline);

}  // namespace kerfwall

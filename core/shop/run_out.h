// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace kerfwall {

/// Length of the shallow end a round blade leaves past the place where it is at full depth, mm.
/// Requires  0 < depth < blade / 2.
/// Source    half the chord of the blade's circle, `depth` deep: sqrt(d (D - d)).
[[nodiscard]] double runOut(double blade, double depth);

/// Depth of the kerf `past` mm past the full-depth place; 0 where the blade has left the face.
/// Source    sqrt(R^2 - x^2) - (R - d).
[[nodiscard]] double depthInRunOut(double blade, double depth, double past);

/// How far past the full-depth place the kerf still has `wall` of its depth, mm.
/// Requires  0 <= wall <= depth.
/// Source    sqrt(R^2 - (R - d + w)^2).
[[nodiscard]] double runOutAt(double blade, double depth, double wall);

}  // namespace kerfwall

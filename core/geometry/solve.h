// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/geometry/solved.h"

namespace kerfwall {

/// Everything geometry answers: lines on the panel, faces, kerfs, the opening the trimming bit leaves,
/// what it will cut in the work. Never fails: what could not be solved is in `troubles` and `doubts`.
/// Requires  a project that `readProject` accepts (references resolve, no cycles).
[[nodiscard]] Solved solve(const Project& project);

/// The id of the face a place lies in, as a text that stays the same while no line crosses it: "+-+..."
/// by the side of each cut line on the panel. None on a line, on an edge or off the panel.
/// Two places are in one face exactly where their texts are equal.
[[nodiscard]] std::optional<std::string> faceAt(const Project& project, Point place);

/// The convex polygon (anticlockwise) of the face a place lies in; empty where `faceAt` gives none.
[[nodiscard]] std::vector<Point> facePolygon(const Project& project, Point place);

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// A convex polygon cut off at the panel's edges; empty where nothing is left.
[[nodiscard]] std::vector<Point> clippedToPanel(std::vector<Point> polygon, const Panel& panel);

/// The band of a kerf between two places along its line, clipped to the panel. A span that reaches the
/// line's end goes on to the panel's edge over its whole width.
[[nodiscard]] std::vector<Point> kerfBand(const Panel& panel, const SolvedLine& line, const Kerf& kerf, double from, double to);

/// Unit, from a line to where its kerf lies.
[[nodiscard]] Point kerfSide(const SolvedLine& line, const Kerf& kerf);

}  // namespace kerfwall

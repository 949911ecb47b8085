// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/drawing/drawing.h"
#include "core/geometry/solved.h"

namespace kerfwall {

inline constexpr double kStripFlap = 12;  ///< mm of a strip that lie on either face

/// A strip to wrap over one panel edge, printed side out, as long as the edge. x runs along the edge from its start corner,
/// y up: the back's flap from 0, the edge itself from kStripFlap, the layout face's flap above it. Each line that meets the
/// edge is marked square across it and runs on over the flap the way it runs over the face; its waste side is ticked. Clamp
/// holes stand where they are drilled.
[[nodiscard]] Drawing edgeStrip(const Project& project, const Solved& solved, Edge edge);

/// A piece of a strip on a page: `from` to `to` along the edge lie at `place`, the piece's bottom-left, mm from the page's
/// bottom-left.
struct StripPiece {
    Edge edge = Edge::Bottom;
    std::size_t page = 0;
    double from = 0;
    double to = 0;
    Point place;
    bool operator==(const StripPiece&) const = default;
};

struct StripPages {
    double width = 0;  ///< mm, of a page as it lies
    double height = 0;
    std::size_t pages = 0;
    std::vector<StripPiece> pieces;
};

/// All four strips on pages of that size, each in as few pieces as the page is wide, neighbours sharing the printing's
/// overlap; upright or lying, whichever takes fewer pages, then fewer pieces.
/// Requires  the page is at least 100 mm wide and high.
[[nodiscard]] StripPages stripPages(const Project& project, double width, double height);

}  // namespace kerfwall

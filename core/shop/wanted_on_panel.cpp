// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/wanted_on_panel.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/geometry/edge_place.h"

namespace kerfwall {
namespace {

constexpr double kOnEdge = 1e-9;  // mm

bool runsAlongEdge(const Panel& panel, Point from, Point to) {
    const auto both = [](double a, double b, double edge) {
        return std::abs(a - edge) <= kOnEdge && std::abs(b - edge) <= kOnEdge;
    };
    return both(from.x, to.x, 0) || both(from.x, to.x, panel.width) || both(from.y, to.y, 0) ||
           both(from.y, to.y, panel.height);
}

// The share of from -> to on the panel, as parameters; an empty one has first >= second.
std::pair<double, double> shareOnPanel(const Panel& panel, Point from, Point to) {
    const Point along = to - from;
    double first = 0;
    double second = 1;
    // Each side as "rise * t <= room".
    const std::array sides{std::pair{-along.x, from.x}, std::pair{along.x, panel.width - from.x},
                           std::pair{-along.y, from.y}, std::pair{along.y, panel.height - from.y}};
    for (const auto& [rise, room] : sides) {
        if (rise > 0) {
            second = std::min(second, room / rise);
        } else if (rise < 0) {
            first = std::max(first, room / rise);
        } else if (room < 0) {
            return {1, 0};
        }
    }
    return {first, second};
}

}  // namespace

bool liesInsidePanel(const Panel& panel, Point place) {
    return place.x > kOnEdge && place.y > kOnEdge && place.x < panel.width - kOnEdge &&
           place.y < panel.height - kOnEdge;
}

std::vector<OutlinePiece> clippedToPanel(const Panel& panel, const OutlineLoop& loop) {
    std::vector<OutlinePiece> pieces;
    for (const OutlinePiece& piece : loop) {
        if (piece.isArc) {
            if (liesOnPanel(panel, piece.from, kOnEdge) && liesOnPanel(panel, piece.to, kOnEdge)) {
                pieces.push_back(piece);
            }
            continue;
        }
        const auto [first, second] = shareOnPanel(panel, piece.from, piece.to);
        if (first >= second || runsAlongEdge(panel, piece.from, piece.to)) {
            continue;
        }
        const Point along = piece.to - piece.from;
        OutlinePiece kept = piece;
        kept.from = piece.from + first * along;
        kept.to = second < 1 ? piece.from + second * along : piece.to;
        pieces.push_back(kept);
    }
    return pieces;
}

}  // namespace kerfwall

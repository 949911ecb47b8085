// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/pieces.h"

#include <limits>

#include "core/geometry/curve.h"

namespace kerfwall {
namespace {

/// What a piece adds to how often its loop turns round a place: its chord by a ray to the right, and the slice
/// between chord and arc.
int turnOf(const OutlinePiece& piece, Point p) {
    const Point& a = piece.from;
    const Point& b = piece.to;
    const double side = cross(b - a, p - a);
    const bool rises = a.y <= p.y;
    int turns = 0;
    if (rises != (b.y <= p.y) && (rises ? side > 0 : side < 0)) turns += rises ? 1 : -1;
    if (!piece.isArc) return turns;
    const bool isLeft = piece.turn == Turn::Left;
    const Point out = p - piece.centre;
    const bool inSlice = (isLeft ? side < 0 : side > 0) && dot(out, out) < piece.radius * piece.radius;
    if (inSlice) turns += isLeft ? 1 : -1;
    return turns;
}

std::vector<const OutlinePiece*> allOf(const Outline& outline) {
    std::vector<const OutlinePiece*> pieces;
    for (const OutlineLoop& loop : outline.loops) {
        for (const OutlinePiece& piece : loop) pieces.push_back(&piece);
    }
    return pieces;
}

std::vector<Box> boxesOf(const std::vector<const OutlinePiece*>& pieces) {
    std::vector<Box> boxes;
    boxes.reserve(pieces.size());
    for (const OutlinePiece* piece : pieces) boxes.push_back(curveOf(*piece).bounds());
    return boxes;
}

}  // namespace

Point middleOf(const OutlinePiece& piece) {
    const Point half = 0.5 * (piece.from + piece.to);
    if (!piece.isArc) return half;
    // Over the chord on the arc's side, which for half a turn and less is away from the centre.
    const Point chord = piece.to - piece.from;
    const Point out = piece.turn == Turn::Left ? -1.0 * leftOf(chord) : leftOf(chord);
    return piece.centre + (piece.radius / length(out)) * out;
}

int turnsRound(const OutlineLoop& loop, Point place) {
    int turns = 0;
    for (const OutlinePiece& piece : loop) turns += turnOf(piece, place);
    return turns;
}

Pieces::Pieces(const Outline& outline) : m_all(allOf(outline)), m_rows(boxesOf(m_all)) {}

int Pieces::turnsRound(Point place) const {
    int turns = 0;
    // Only what meets the ray to the right counts.
    m_rows.meeting({place, {std::numeric_limits<double>::infinity(), place.y}},
                   [&](std::size_t i) { turns += turnOf(*m_all[i], place); });
    return turns;
}

bool Pieces::isOnBorder(Point place, double reach) const {
    const Point margin{reach, reach};
    bool isOn = false;
    m_rows.meeting({place - margin, place + margin}, [&](std::size_t i) {
        isOn = isOn || distanceTo(curveOf(*m_all[i]), place) <= reach;
    });
    return isOn;
}

}  // namespace kerfwall

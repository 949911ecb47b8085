// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/clearance.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "core/geometry/distance.h"
#include "core/geometry/rows.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

constexpr double kFar = std::numeric_limits<double>::infinity();
constexpr const char* kNearer = "a wall comes nearer to the bearing than its radius here.";
constexpr const char* kAway = "the bearing does not touch here what it was rolled along.";

OutlinePiece pieceOf(const Curve& curve) {
    OutlinePiece piece;
    piece.from = curve.from;
    piece.to = curve.to;
    piece.isArc = curve.isArc;
    piece.centre = curve.centre;
    piece.radius = curve.radius;
    piece.turn = curve.anticlockwise ? Turn::Left : Turn::Right;
    return piece;
}

/// Where the disc's centre was while it made a piece: one place, or a way beside the piece.
struct Way {
    std::optional<Curve> run;
    Point middle;
    Box bounds;
    double slack = kClearance;  ///< mm: how far off it can be
};

Way wayOf(const OutlinePiece& piece, std::size_t contacts, double sweep) {
    if (piece.isArc && contacts == 2) return {std::nullopt, piece.centre, {piece.centre, piece.centre}};
    Curve run = curveOf(piece);
    if (piece.isArc) {
        run.radius += piece.turn == Turn::Left ? -sweep : sweep;
        const double share = run.radius / piece.radius;
        run.from = piece.centre + share * (piece.from - piece.centre);
        run.to = piece.centre + share * (piece.to - piece.centre);
        return {run, run.at(run.size / 2), run.bounds()};
    }
    const Point off = sweep * leftOf(unit(piece.to - piece.from));
    run.from = run.from + off;
    run.to = run.to + off;
    // Ends known to kClearance give the heading to that over the length; the rounds at both ends are asked anyway.
    return {run, run.at(run.size / 2), run.bounds(), kClearance * (1 + sweep / run.size)};
}

/// True where both of two straight stretches lie farther apart than `reach` because one lies all on one side.
bool isBeside(const Curve& run, const Curve& wall, double reach) {
    const Point along = (1 / run.size) * (run.to - run.from);
    const double a = cross(along, wall.from - run.from);
    const double b = cross(along, wall.to - run.from);
    if (std::min(a, b) > reach || std::max(a, b) < -reach) return true;
    const double c = dot(along, wall.from - run.from);
    const double d = dot(along, wall.to - run.from);
    return std::min(c, d) > run.size + reach || std::max(c, d) < -reach;
}

double gapTo(const Way& way, const Curve& wall, double room) {
    if (!way.run) return distanceTo(wall, way.middle);
    if (!way.run->isArc && !wall.isArc && isBeside(*way.run, wall, room + way.slack)) return kFar;
    return gapBetween(pieceOf(*way.run), pieceOf(wall)).distance;
}

/// A piece, where its disc was, and what was found near it.
struct Proven {
    const OutlinePiece* piece = nullptr;
    const PieceSource* source = nullptr;
    Way way;
    double nearest = kFar;
    std::vector<double> touches;  ///< beside the source's contacts
};

std::vector<Proven> piecesOf(const Opening& opening, double sweep) {
    std::vector<Proven> pieces;
    for (std::size_t l = 0; l < opening.outline.loops.size(); ++l) {
        for (std::size_t p = 0; p < opening.outline.loops[l].size(); ++p) {
            const OutlinePiece& piece = opening.outline.loops[l][p];
            const PieceSource& source = opening.sources[l][p];
            if (source.contacts.empty()) continue;
            pieces.push_back({&piece, &source, wayOf(piece, source.contacts.size(), sweep), kFar,
                              std::vector<double>(source.contacts.size(), kFar)});
        }
    }
    return pieces;
}

void meet(Proven& proven, const Curve& wall, const VoidSide& side, double room) {
    const double gap = gapTo(proven.way, wall, room);
    proven.nearest = std::min(proven.nearest, gap);
    if (gap > room + proven.way.slack) return;
    for (std::size_t c = 0; c < proven.touches.size(); ++c) {
        if (!isOneSide(side, proven.source->contacts[c].side)) continue;
        proven.touches[c] = std::min(proven.touches[c], distanceTo(wall, proven.way.middle));
    }
}

void conclude(Proven& proven, double room, Doubts& doubts) {
    for (std::size_t c = 0; c < proven.touches.size(); ++c) {
        const Contact& contact = proven.source->contacts[c];
        if (contact.onLip) proven.touches[c] = distance(contact.lip, proven.way.middle);
    }
    const Curve piece = curveOf(*proven.piece);
    const Point place = piece.at(piece.size / 2);
    if (!(proven.nearest >= room - proven.way.slack)) doubts.add(place, kNearer);
    const bool isTouching = std::ranges::all_of(
        proven.touches, [&](double touch) { return std::abs(touch - room) <= proven.way.slack; });
    if (!isTouching) doubts.add(place, kAway);
}

}  // namespace

void proveClearance(const Claim& claim, Doubts& doubts) {
    std::vector<Proven> pieces = piecesOf(claim.opening, claim.sweep);
    const double reach = claim.room + kClearance;
    const Point margin{reach, reach};
    std::vector<Box> boxes;
    for (const Proven& piece : pieces) boxes.push_back({piece.way.bounds.low - margin, piece.way.bounds.high + margin});
    const Rows rows(boxes);
    for (const Curve& wall : claim.rim.rim.curves) {
        rows.meeting(wall.bounds(),
                     [&](std::size_t i) { meet(pieces[i], wall, claim.rim.sides[wall.tag], claim.room); });
    }
    for (Proven& piece : pieces) conclude(piece, claim.room, doubts);
}

}  // namespace kerfwall

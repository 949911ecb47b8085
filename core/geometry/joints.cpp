// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/joints.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/geometry/pieces.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

constexpr const char* kKink = "a round does not run on into its wall here.";
constexpr const char* kSharp = "the outline has a corner here that no bit leaves.";
constexpr const char* kRadius = "a round has not the radius of what made it here.";

struct SourcedPiece {
    const OutlinePiece& piece;
    const PieceSource& source;

    [[nodiscard]] bool isEdge() const { return source.contacts.empty(); }
    [[nodiscard]] bool isRound() const { return piece.isArc && source.contacts.size() == 2; }
    [[nodiscard]] Point headingAt(Point place) const {
        if (!piece.isArc) return unit(piece.to - piece.from);
        const Point out = unit(place - piece.centre);
        return piece.turn == Turn::Left ? leftOf(out) : -1.0 * leftOf(out);
    }
    /// How far the heading at an end can be off, radians: what the end can be off along an arc, over its radius;
    /// square to a straight stretch, over its length.
    [[nodiscard]] double slack() const {
        return piece.isArc ? alongSlack(piece.radius) / piece.radius : kClearance / distance(piece.from, piece.to);
    }
    /// Two contacts that part almost tangentially: within kBite of both over sqrt(2 r kBite) on either side of where
    /// they meet, and as much again where the next piece begins.
    static double alongSlack(double radius) { return std::min(kJoin, 2 * std::sqrt(2 * radius * kBite)); }
};

/// True where a round begins or ends on the wall beside it. At a lip, and where two rounds cross, it may turn right.
bool runsOn(const SourcedPiece& before, const SourcedPiece& after) {
    if (before.isRound() == after.isRound()) return false;
    const Contact& a = before.source.contacts.back();
    const Contact& b = after.source.contacts.front();
    return !a.onLip && !b.onLip && isOneSide(a.side, b.side);
}

void proveJoint(const SourcedPiece& before, const SourcedPiece& after, Doubts& doubts) {
    if (before.isEdge() || after.isEdge()) return;
    const Point place = before.piece.to;
    const Point in = before.headingAt(place);
    const Point out = after.headingAt(place);
    const double turn = std::atan2(cross(in, out), dot(in, out));
    const double allowed = before.slack() + after.slack();
    constexpr double kDoublesBack = std::numbers::pi - 1e-6;  // about the tip of a sliver: left or right is rounding
    if (turn > allowed && turn < kDoublesBack) doubts.add(place, kSharp);
    else if (runsOn(before, after) && !(std::abs(turn) <= allowed)) doubts.add(place, kKink);
}

/// True where the void has a round about that centre which the disc made into one of this radius.
bool isFromBore(const OutlinePiece& piece, const Claim& claim) {
    const double bore = piece.radius - claim.sweep + claim.room;
    return piece.turn == Turn::Left && std::ranges::any_of(claim.rim.rim.curves, [&](const Curve& wall) {
        return wall.isArc && std::abs(wall.radius - bore) <= kClearance &&
               distance(wall.centre, piece.centre) <= kClearance;
    });
}

void proveRound(const SourcedPiece& sourced, const Claim& claim, Doubts& doubts) {
    const OutlinePiece& piece = sourced.piece;
    if (!piece.isArc) return;
    const auto isOn = [&](Point end) {
        return std::abs(distance(end, piece.centre) - piece.radius) <= kClearance;
    };
    bool isSound = isOn(piece.from) && isOn(piece.to);
    if (sourced.isRound()) {
        isSound = isSound && piece.turn == Turn::Left && std::abs(piece.radius - claim.sweep) <= kBite;
    } else if (!sourced.isEdge() && sourced.source.contacts.front().onLip) {
        isSound = isSound && piece.turn == Turn::Right &&
                  std::abs(piece.radius - (claim.room - claim.sweep)) <= kClearance;
    } else {
        isSound = isSound && isFromBore(piece, claim);
    }
    if (!isSound) doubts.add(middleOf(piece), kRadius);
}

}  // namespace

void proveJoints(const Claim& claim, Doubts& doubts) {
    const Opening& opening = claim.opening;
    for (std::size_t l = 0; l < opening.outline.loops.size(); ++l) {
        const OutlineLoop& loop = opening.outline.loops[l];
        for (std::size_t p = 0; p < loop.size(); ++p) {
            const std::size_t next = (p + 1) % loop.size();
            const SourcedPiece here{loop[p], opening.sources[l][p]};
            proveRound(here, claim, doubts);
            proveJoint(here, {loop[next], opening.sources[l][next]}, doubts);
        }
    }
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/opening.h"

#include <algorithm>
#include <numbers>

#include "core/geometry/edge_name.h"
#include "core/geometry/panel_clip.h"
#include "core/geometry/rolling.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

Contact contactOf(const Track& track, const Curve& piece, const VoidRim& rim) {
    const Track::Rest& rest = track.rests[piece.tag];
    Contact contact;
    contact.side = rim.sides[rim.rim.curves[rest.curve].tag];
    contact.onLip = rest.onLip;
    if (rest.onLip) {
        contact.lip = rim.rim.curves[rest.curve].to;
        contact.lipSide = rim.sides[rim.rim.curves[rim.rim.next[rest.curve]].tag];
    }
    return contact;
}

std::string nameOn(const PieceSource& source, const Project& project, const Arranged& arranged) {
    if (source.contacts.size() != 1 || source.contacts.front().onLip) return "";
    const VoidSide& side = source.contacts.front().side;
    const bool onLine = side.kind == VoidSide::Kind::Wall || side.kind == VoidSide::Kind::Mouth;
    return onLine ? lineId(project, arranged, side.line) : "";
}

/// A round of more than half a turn as two, so that the ends of a piece never meet.
std::vector<Curve> inHalves(const Curve& curve) {
    if (!curve.isArc || curve.size <= std::numbers::pi) return {curve};
    return {curve.part(0, curve.size / 2), curve.part(curve.size / 2, curve.size)};
}

OutlinePiece pieceOf(const Curve& curve) {
    OutlinePiece piece;
    piece.isArc = curve.isArc;
    piece.from = curve.from;
    piece.to = curve.to;
    if (curve.isArc) {
        piece.centre = curve.centre;
        piece.radius = curve.radius;
        piece.turn = curve.anticlockwise ? Turn::Left : Turn::Right;
    }
    return piece;
}

/// True where `after` only carries `before` on: one stretch of a line, or one round.
bool goesOn(const OutlinePiece& before, const OutlinePiece& after) {
    if (before.isArc != after.isArc) return false;
    if (before.isArc) {
        if (sweepOf(before) + sweepOf(after) > std::numbers::pi + kBite) return false;
        return before.turn == after.turn && std::abs(before.radius - after.radius) < kBite &&
               distance(before.centre, after.centre) < kBite;
    }
    const Point u = before.to - before.from;
    const Point v = after.to - after.from;
    return before.on == after.on && !before.on.empty() && dot(u, v) > 0 &&
           std::abs(cross(u, v)) <= kBite * (length(u) + length(v));
}

struct SourcedLoop {
    OutlineLoop pieces;
    std::vector<PieceSource> sources;
};

/// Lets every piece begin where the one before ends. An arc that this turns inside out was dust.
void closeGaps(SourcedLoop& loop) {
    for (std::size_t i = 0; i < loop.pieces.size();) {
        OutlinePiece& after = loop.pieces[(i + 1) % loop.pieces.size()];
        after.from = loop.pieces[i].to;
        constexpr double kTurnedInsideOut = std::numbers::pi + 1e-3;
        if (after.isArc && sweepOf(after) > kTurnedInsideOut) {
            const auto dust = static_cast<std::ptrdiff_t>((i + 1) % loop.pieces.size());
            loop.pieces.erase(loop.pieces.begin() + dust);
            loop.sources.erase(loop.sources.begin() + dust);
            if (dust == 0) return closeGaps(loop);
        } else {
            ++i;
        }
    }
}

/// Joins pieces that only carry one another on, drops dust, and closes the gaps that leaves.
SourcedLoop tidied(SourcedLoop loop) {
    SourcedLoop tidy;
    for (std::size_t i = 0; i < loop.pieces.size(); ++i) {
        const OutlinePiece& piece = loop.pieces[i];
        if (distance(piece.from, piece.to) < 10 * kBite) continue;
        if (!tidy.pieces.empty() && goesOn(tidy.pieces.back(), piece)) {
            tidy.pieces.back().to = piece.to;
            continue;
        }
        tidy.pieces.push_back(piece);
        tidy.sources.push_back(loop.sources[i]);
    }
    if (tidy.pieces.size() > 2 && goesOn(tidy.pieces.back(), tidy.pieces.front())) {
        tidy.pieces.front().from = tidy.pieces.back().from;
        tidy.pieces.pop_back();
        tidy.sources.pop_back();
    }
    closeGaps(tidy);
    return tidy;
}

}  // namespace

Room roomOf(const VoidRim& rim, double radius, const std::vector<ArrangedFace>& faces, const Panel& panel) {
    Room room;
    room.track = roll(rim.rim, radius);
    const std::vector<std::vector<Curve>> loops = room.track.rim.closedRuns();
    for (const auto& region : regionsOf(loops)) {
        if (!isOver(loops, region, faces)) continue;
        for (const std::size_t loop : region) {
            room.area += signedArea(loops[loop]);
            const std::size_t first = room.chosen.curves.size();
            for (const Curve& curve : loops[loop]) {
                const VoidSide& side = rim.sides[rim.rim.curves[room.track.rests[curve.tag].curve].tag];
                const bool onPanel = isOnPanel(panel, curve.from);
                room.perimeter += curve.lengthInMm();
                room.leaves = room.leaves || !onPanel;
                room.reachedFrame = room.reachedFrame || side.kind == VoidSide::Kind::Frame;
                room.chosen.curves.push_back(curve);
                room.chosen.next.push_back(room.chosen.curves.size());
            }
            room.chosen.next.back() = first;
        }
    }
    for (ClippedLoop& loop : clipToPanel(room.chosen, panel)) {
        const std::vector<std::vector<Curve>> one{std::move(loop.curves)};
        const auto regions = regionsOf(one);
        if (!regions.empty() && isOver(one, regions.front(), faces)) ++room.parts;
    }
    return room;
}

Opening openingOf(const VoidRim& rim, double room, double sweep, const std::vector<ArrangedFace>& faces,
                  const Project& project, const Arranged& arranged) {
    Opening opening;
    opening.doubts = rim.doubts;
    opening.room = roomOf(rim, room, faces, project.panel);
    const Track& track = opening.room.track;
    for (const Point& gap : track.gaps) {
        opening.doubts.push_back({gap, "the way of the bearing could not be closed here."});
    }

    const Rim outside = reversed(opening.room.chosen);
    const Track grown = roll(outside, sweep);
    for (const Point& gap : grown.gaps) {
        opening.doubts.push_back({gap, "the outline of the opening could not be closed here."});
    }
    opening.swept = reversed(grown.rim);
    for (const Point& touch : touchesOf(opening.swept, project.panel)) {
        opening.doubts.push_back({touch, "the opening comes to a point at the panel's edge here; move one of the lines by 0.1 mm."});
    }

    const auto sourceOf = [&](const Curve& piece) {
        const Track::Rest& rest = grown.rests[piece.tag];
        PieceSource source;
        if (rest.onLip) {
            // Seen with the opening on the left the order is the other way round.
            source.contacts.push_back(contactOf(track, outside.curves[outside.next[rest.curve]], rim));
        }
        source.contacts.push_back(contactOf(track, outside.curves[rest.curve], rim));
        return source;
    };

    const std::vector<ClippedLoop> clipped = clipToPanel(opening.swept, project.panel);
    std::vector<std::vector<Curve>> loops;
    for (const ClippedLoop& loop : clipped) loops.push_back(loop.curves);
    std::vector<OutlineLoop> kept;
    for (const auto& region : regionsOf(loops)) {
        if (!isOver(loops, region, faces)) continue;
        for (const std::size_t i : region) {
            SourcedLoop loop;
            for (std::size_t c = 0; c < clipped[i].curves.size(); ++c) {
                PieceSource source;
                if (!clipped[i].edges[c]) source = sourceOf(clipped[i].curves[c]);
                for (const Curve& curve : inHalves(clipped[i].curves[c])) {
                    OutlinePiece piece = pieceOf(curve);
                    if (clipped[i].edges[c]) piece.on = edgeName(*clipped[i].edges[c]);
                    else if (!piece.isArc) piece.on = nameOn(source, project, arranged);
                    loop.pieces.push_back(std::move(piece));
                    loop.sources.push_back(source);
                }
            }
            loop = tidied(std::move(loop));
            if (loop.pieces.size() < 2) continue;
            kept.push_back(std::move(loop.pieces));
            opening.sources.push_back(std::move(loop.sources));
        }
    }
    opening.outline = makeOutline(std::move(kept));
    if (opening.room.parts > 0 && opening.outline.loops.empty()) {
        opening.doubts.push_back({opening.room.chosen.curves.front().from, "the outline of the opening was lost here."});
    }
    return opening;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/proof.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/geometry/clearance.h"
#include "core/geometry/doubts.h"
#include "core/geometry/joints.h"
#include "core/geometry/panel_clip.h"
#include "core/geometry/pieces.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

constexpr const char* kOpenLoop = "the outline does not close here.";
constexpr const char* kWrongWay = "the outline runs the wrong way round here.";
constexpr const char* kNoSource = "the outline has pieces here that nothing made.";
constexpr const char* kWood = "wood was left inside the opening here.";
constexpr const char* kArea = "the areas of the opening do not add up near here.";
constexpr const char* kDrawn = "the areas of the drawn cutout do not add up near here.";
constexpr const char* kLost = "a wall of the cutout that the bit reaches is not in the outline here.";
constexpr const char* kUnopened = "the bit has room here and opens nothing.";

// --- measures, written apart from the engine's own ---

double areaOf(const OutlineLoop& loop) {
    double twice = 0;
    for (const OutlinePiece& piece : loop) {
        // Seen from the loop itself: on a large panel rounding would grow with the distance from its corner.
        twice += cross(piece.from - loop.front().from, piece.to - loop.front().from);
        if (!piece.isArc) continue;
        const Point a = piece.from - piece.centre;
        const Point b = piece.to - piece.centre;
        const double swept = std::abs(std::atan2(cross(a, b), dot(a, b)));
        const double slice = piece.radius * piece.radius * (swept - std::sin(swept));
        twice += piece.turn == Turn::Left ? slice : -slice;
    }
    return twice / 2;
}

/// Any place of it.
Point placeIn(const Outline& outline) {
    return outline.loops.empty() || outline.loops.front().empty() ? Point{} : outline.loops.front().front().from;
}

Point placeIn(const Opening& opening) {
    const std::vector<Curve>& ways = opening.room.chosen.curves;
    return opening.outline.loops.empty() && !ways.empty() ? ways.front().from : placeIn(opening.outline);
}

// --- loops ---

void proveLoops(const Outline& outline, Doubts& doubts) {
    double area = 0;
    for (std::size_t l = 0; l < outline.loops.size(); ++l) {
        const OutlineLoop& loop = outline.loops[l];
        if (loop.empty()) continue;
        for (std::size_t p = 0; p < loop.size(); ++p) {
            // Not equal to itself: not a number.
            if (!(loop[p].to == loop[(p + 1) % loop.size()].from)) doubts.add(loop[p].to, kOpenLoop);
        }
        const double own = areaOf(loop);
        const Point place = middleOf(*std::ranges::max_element(loop, {}, [](const OutlinePiece& piece) {
            return distance(piece.from, piece.to);
        }));
        int others = 0;
        for (std::size_t o = 0; o < outline.loops.size(); ++o) {
            if (o != l) others += turnsRound(outline.loops[o], place);
        }
        if (others != (own > 0 ? 0 : 1)) doubts.add(place, kWrongWay);
        area += own;
    }
    if (!(std::abs(area - outline.area) <= kSameArea)) doubts.add(placeIn(outline), kArea);
}

bool hasSources(const Opening& opening) {
    if (opening.sources.size() != opening.outline.loops.size()) return false;
    for (std::size_t l = 0; l < opening.sources.size(); ++l) {
        if (opening.sources[l].size() != opening.outline.loops[l].size()) return false;
    }
    return true;
}

// --- what lies inside ---

/// No wall comes nearer to a disc than its radius (clearance.h), so no wall crosses the outline, and a run of walls
/// has wood inside the opening wholly or not at all: one place of each tells.
void proveNoWood(const Claim& claim, const Pieces& pieces, Doubts& doubts) {
    if (claim.sweep > claim.room) return;  // a larger cutter reaches past the walls
    const Rim& rim = claim.rim.rim;
    const Box& box = claim.opening.outline.bounds;
    const auto isNear = [&](Point p) {
        return p.x > box.low.x && p.x < box.high.x && p.y > box.low.y && p.y < box.high.y;
    };
    std::vector<bool> seen(rim.curves.size(), false);
    for (std::size_t first = 0; first < rim.curves.size(); ++first) {
        bool isSettled = false;
        for (std::size_t i = first; i != Rim::kOpenEnd && !seen[i]; i = rim.next[i]) {
            seen[i] = true;
            if (isSettled) continue;
            const Point place = rim.curves[i].at(rim.curves[i].size / 2);
            const bool isInside = isNear(place) && pieces.turnsRound(place) != 0;
            if (isInside && pieces.isOnBorder(place, kJoin)) continue;
            if (isInside) doubts.add(place, kWood);
            isSettled = true;
        }
    }
}

/// A wall of the cutout itself that the bit touches bounds the opening.
void proveWallsReached(const Claim& claim, const Pieces& pieces, Doubts& doubts) {
    const Room& room = claim.opening.room;
    if (claim.room != claim.sweep) return;
    for (const Curve& way : room.chosen.curves) {
        const Track::Rest& rest = room.track.rests[way.tag];
        const VoidSide& side = claim.rim.sides[claim.rim.rim.curves[rest.curve].tag];
        if (rest.onLip || side.kind != VoidSide::Kind::Wall || way.size <= kJoin) continue;
        const Point place = way.at(way.size / 2) - claim.sweep * leftOf(way.tangentAt(way.size / 2));
        if (isOnPanel(claim.panel, place, kJoin) && !pieces.isOnBorder(place, kClearance)) doubts.add(place, kLost);
    }
}

// --- areas ---

/// A region's size, as its rim has it; where two of its curves part by a little the gap is closed straight.
struct RegionSize {
    double area = 0;
    double perimeter = 0;
    double gaps = 0;
    int outerLessIslands = 0;
};

RegionSize sizeOf(const Rim& rim) {
    RegionSize size;
    for (const auto& loop : rim.loops()) {
        double own = 0;
        const Point origin = rim.curves[loop.front()].from;
        for (const std::size_t i : loop) {
            const Curve& curve = rim.curves[i];
            const Point next = rim.curves[rim.next[i]].from;
            const double slice = curve.radius * curve.radius * (curve.size - std::sin(curve.size));
            own += cross(curve.from - origin, curve.to - origin) + cross(curve.to - origin, next - origin);
            if (curve.isArc) own += curve.anticlockwise ? slice : -slice;
            size.perimeter += curve.lengthInMm();
            size.gaps += distance(curve.to, next);
        }
        size.area += own / 2;
        size.outerLessIslands += own > 0 ? 1 : -1;
    }
    return size;
}

/// Source    Steiner: a region grown by s gains s P + π s² (outer loops - islands). The walls keep all of that apart
///           but the rounds of discs that reach for one another over a neck: each neck bridged so takes one from
///           (outer loops - islands) and at most a disc from the area.
void proveSweptArea(const Claim& claim, Doubts& doubts) {
    if (claim.sweep > claim.room) return;  // lips come inside out
    const Outline& outline = claim.opening.outline;
    const RegionSize room = sizeOf(claim.opening.room.chosen);
    const double s = claim.sweep;
    const double disc = std::numbers::pi * s * s;
    const double most = room.area + s * room.perimeter + room.outerLessIslands * disc;
    int necks = room.outerLessIslands;
    for (const OutlineLoop& loop : outline.loops) necks -= areaOf(loop) > 0 ? 1 : -1;
    const bool isClosed = std::ranges::all_of(claim.opening.sources, [](const std::vector<PieceSource>& loop) {
        return std::ranges::none_of(loop, [](const PieceSource& source) { return source.contacts.empty(); });
    });
    const double allowed = kSameArea + 2 * s * room.gaps + kClearance * room.perimeter;
    const bool isSound = outline.area <= most + allowed &&
                         (!isClosed || (necks >= 0 && outline.area >= most - necks * disc - allowed));
    if (!isSound) doubts.add(placeIn(claim.opening), kArea);
}

}  // namespace

std::vector<Doubt> doubtsAbout(const Claim& claim) {
    Doubts doubts(claim.opening.doubts, 2 * claim.sweep);
    proveLoops(claim.opening.outline, doubts);
    if (!hasSources(claim.opening)) {
        doubts.add(placeIn(claim.opening), kNoSource);
        return doubts.added();
    }
    proveJoints(claim, doubts);
    proveClearance(claim, doubts);
    const Pieces pieces(claim.opening.outline);
    proveNoWood(claim, pieces, doubts);
    proveWallsReached(claim, pieces, doubts);
    proveSweptArea(claim, doubts);
    return doubts.added();
}

std::vector<Doubt> doubtsAbout(const SolvedCutout& cutout, double bitRadius) {
    Doubts doubts(cutout.doubts, 2 * bitRadius);
    proveLoops(cutout.drawn, doubts);
    proveLoops(cutout.work, doubts);
    double faces = 0;
    for (const std::vector<Point>& face : cutout.faces) {
        for (std::size_t i = 0; i < face.size(); ++i) faces += cross(face[i], face[(i + 1) % face.size()]) / 2;
    }
    // Runs of border shorter than kShortestWall are left out of the drawn outline.
    const double leftOut = kShortestWall * cutout.drawn.perimeter;
    const bool addsUp = std::abs(faces - cutout.drawnArea) <= kSameArea &&
                        std::abs(cutout.drawn.area - cutout.drawnArea) <= kSameArea + leftOut;
    if (!addsUp) doubts.add(cutout.widestAt, kDrawn);
    const bool isBored = std::ranges::any_of(cutout.corners, [](const Corner& corner) {
        return corner.regime == Regime::Bored;
    });
    const bool fits = cutout.widest > 2 * (bitRadius + kDoubt) && !isBored;
    if (fits && Pieces(cutout.opening).turnsRound(cutout.widestAt) != 1) doubts.add(cutout.widestAt, kUnopened);
    return doubts.added();
}

}  // namespace kerfwall

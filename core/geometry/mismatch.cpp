// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/mismatch.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/geometry/distance.h"

namespace kerfwall {
namespace {

constexpr double kAlike = 1e-6;  // mm: along walls that run parallel the first place looked at stands

// A part of a piece and the distances of its ends to every piece of the other run.
struct Part {
    OutlinePiece piece;
    std::vector<double> atFrom;
    std::vector<double> atTo;
};

std::vector<double> distancesTo(const std::vector<OutlinePiece>& pieces, Point place) {
    std::vector<double> all;
    all.reserve(pieces.size());
    for (const OutlinePiece& piece : pieces) {
        all.push_back(gapBetween(place, piece).distance);
    }
    return all;
}

double least(const std::vector<double>& all) { return *std::min_element(all.begin(), all.end()); }

Point middleOf(const OutlinePiece& piece) {
    const Point half = 0.5 * (piece.from + piece.to);
    if (!piece.isArc) {
        return half;
    }
    const double turned = (piece.turn == Turn::Left ? 0.5 : -0.5) * sweepOf(piece);
    const Point start = piece.from - piece.centre;
    return piece.centre + std::cos(turned) * start + std::sin(turned) * leftOf(start);
}

// How far the piece bulges beyond its chord.
double bulgeOf(const OutlinePiece& piece) {
    return piece.isArc ? piece.radius * (1 - std::cos(std::min(sweepOf(piece) / 2, std::acos(-1.0)))) : 0;
}

// No place on the part's chord is further from `other` than this.
double mostFrom(const OutlinePiece& other, const OutlinePiece& part, double atFrom, double atTo) {
    if (!other.isArc) {
        return std::max(atFrom, atTo);
    }
    // The nearer of its two ends is a point, and a point is convex too.
    const double toStart = std::max(distance(part.from, other.from), distance(part.to, other.from));
    const double toEnd = std::max(distance(part.from, other.to), distance(part.to, other.to));
    double most = std::min(toStart, toEnd);
    const Point a = part.from - other.centre;
    const Point b = part.to - other.centre;
    const Point start = other.from - other.centre;
    const Point end = other.to - other.centre;
    const double hand = other.turn == Turn::Left ? 1 : -1;
    const auto inSector = [&](Point ray) {
        return hand * cross(start, ray) >= 0 && hand * cross(ray, end) >= 0;
    };
    if (sweepOf(other) < std::acos(-1.0) && inSector(a) && inSector(b)) {
        const double foot = gapBetween(other.centre, straight(part.from, part.to)).distance;
        const double far = std::max(length(a), length(b));
        most = std::min(most, std::max(std::abs(far - other.radius), std::abs(foot - other.radius)));
    }
    return most;
}

double mostOn(const Part& part, const std::vector<OutlinePiece>& to) {
    double most = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < to.size(); ++i) {
        most = std::min(most, mostFrom(to[i], part.piece, part.atFrom[i], part.atTo[i]));
    }
    return most + bulgeOf(part.piece);
}

}  // namespace

std::optional<Mismatch> greatestMismatch(const std::vector<OutlinePiece>& from,
                                         const std::vector<OutlinePiece>& to) {
    if (from.empty() || to.empty()) {
        return std::nullopt;
    }
    Mismatch best{-1, {}};
    const auto look = [&](Point place, const std::vector<double>& all) {
        if (least(all) > best.distance + kAlike) {
            best = {least(all), place};
        }
    };
    std::vector<Part> open;
    // Middles of straight pieces first: a wall that is off all along is told of there, not at its end.
    for (const bool arcs : {false, true}) {
        for (const OutlinePiece& piece : from) {
            const Point middle = middleOf(piece);
            if (piece.isArc == arcs) {
                look(middle, distancesTo(to, middle));
            }
        }
    }
    for (const OutlinePiece& piece : from) {
        open.push_back({piece, distancesTo(to, piece.from), distancesTo(to, piece.to)});
        look(piece.from, open.back().atFrom);
        look(piece.to, open.back().atTo);
    }
    while (!open.empty()) {
        const Part part = open.back();
        open.pop_back();
        if (mostOn(part, to) <= best.distance + kMismatchSlack) {
            continue;
        }
        const Point middle = middleOf(part.piece);
        const std::vector<double> atMiddle = distancesTo(to, middle);
        look(middle, atMiddle);
        Part first{part.piece, part.atFrom, atMiddle};
        first.piece.to = middle;
        Part second{part.piece, atMiddle, part.atTo};
        second.piece.from = middle;
        open.push_back(first);
        open.push_back(second);
    }
    return best;
}

}  // namespace kerfwall

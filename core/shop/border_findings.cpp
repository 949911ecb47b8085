// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/geometry/distance.h"
#include "core/geometry/edge_name.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"
#include "core/shop/panel_edges.h"

namespace kerfwall {
namespace {

constexpr double kRunsOut = 1e-6;  // mm: a piece that ends this near an edge meets it

bool meets(const OutlinePiece& piece, const OutlinePiece& edge) {
    return gapBetween(piece.from, edge).distance < kRunsOut || gapBetween(piece.to, edge).distance < kRunsOut;
}

struct Border {
    Gap gap;
    std::vector<LineId> lines;
};

constexpr double kAlike = 1e-9;  // mm: a wall along the edge is as near all along as where its corner begins

void keepNearer(std::optional<Border>& best, const OutlinePiece& piece, const OutlinePiece& other) {
    Gap gap = gapBetween(piece, other);
    const Gap middle = gapBetween(0.5 * (piece.from + piece.to), other);
    const bool allAlong = !piece.isArc && middle.distance < gap.distance + kAlike;
    gap = allAlong ? middle : gap;
    if (best && gap.distance > best->gap.distance - (allAlong ? -kAlike : kAlike)) {
        return;
    }
    best = Border{gap, {}};
    for (const OutlinePiece& side : {piece, other}) {
        if (!side.isArc && !side.on.empty() && !liesOnEdge(side)) {
            best->lines.push_back(side.on);
        }
    }
}

std::optional<Border> toEdge(const SolvedCutout& cutout, const OutlinePiece& edge) {
    std::optional<Border> best;
    for (const OutlineLoop& loop : cutout.opening.loops) {
        for (const OutlinePiece& piece : loop) {
            if (cutout.open && (liesOnEdge(piece) || meets(piece, edge))) {
                continue;
            }
            const Gap gap = gapBetween(piece, edge);
            // Between a wall and the edge its own cutout is open to there is air, not wood; where the way between
            // them runs along a wall, on one side of it.
            constexpr double kBeside = 1e-6;  // mm
            const Point middle = 0.5 * (gap.first + gap.second);
            const Point beside = kBeside * unit(edge.to - edge.from);
            const bool air =
                cutout.open && (isInside(cutout.opening, middle + beside) || isInside(cutout.opening, middle - beside));
            if (!air) {
                keepNearer(best, piece, edge);
            }
        }
    }
    return best;
}

/// At least this far apart, by their bounds alone.
double apartAtLeast(const Box& a, const Box& b) {
    const double across = std::max({a.low.x - b.high.x, b.low.x - a.high.x, 0.0});
    const double up = std::max({a.low.y - b.high.y, b.low.y - a.high.y, 0.0});
    return length({across, up});
}

/// None where they are farther apart than `wish` anyway.
std::optional<Border> toOpening(const SolvedCutout& first, const SolvedCutout& second, double wish) {
    std::optional<Border> best;
    if (apartAtLeast(first.opening.bounds, second.opening.bounds) > wish) {
        return best;
    }
    for (const OutlineLoop& loop : first.opening.loops) {
        for (const OutlinePiece& piece : loop) {
            for (const OutlineLoop& otherLoop : second.opening.loops) {
                for (const OutlinePiece& other : otherLoop) {
                    keepNearer(best, piece, other);
                }
            }
        }
    }
    return best;
}

// Where a corner's arc or a hollow stands nearest: the wall it belongs to.
std::vector<LineId> wallNearest(const SolvedCutout& cutout, Point place) {
    const auto off = [&](const Wall& wall) {
        return gapBetween(place, straight(wall.from, wall.to)).distance;
    };
    const auto nearest = std::ranges::min_element(cutout.walls, {}, off);
    return nearest == cutout.walls.end() ? std::vector<LineId>{} : std::vector<LineId>{nearest->line};
}

std::optional<Finding> thin(const Project& project, const SolvedCutout& cutout,
                            const std::optional<Border>& border, const std::string& neighbour,
                            bool betweenOpenings) {
    const LimitPair limits = limitsOf("border-thin", project, betweenOpenings);
    const auto crossed = border ? crossedBelow(border->gap.distance, limits) : std::nullopt;
    if (!crossed) {
        return std::nullopt;
    }
    const double left = border->gap.distance;
    Finding finding = measuredFinding("border-thin", crossed->severity, left, crossed->limit);
    finding.at = 0.5 * (border->gap.first + border->gap.second);
    finding.lines = border->lines.empty() ? wallNearest(cutout, border->gap.first) : border->lines;
    finding.cutout = cutout.id;
    const double wish = std::max(limits.care.value_or(0), limits.stop.value_or(0));
    finding.text = "Only " + lengthWords(project, left) + " of panel is left between cutout " + cutout.id +
                   " and " + neighbour + ", less than " + lengthWords(project, crossed->limit) +
                   ". Move it " + atLeastWords(project, wish - left) + " or more away" +
                   (betweenOpenings ? "." : ", or take a larger panel.");
    return finding;
}

}  // namespace

std::vector<Finding> borderFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    const LimitPair limits = limitsOf("border-thin", project, true);
    const double wish = std::max(limits.care.value_or(0), limits.stop.value_or(0));
    for (std::size_t i = 0; i < solved.cutouts.size(); ++i) {
        const SolvedCutout& cutout = solved.cutouts[i];
        for (const Edge edge : kEdges) {
            addFinding(all, thin(project, cutout, toEdge(cutout, edgePiece(project.panel, edge)),
                      "the " + std::string(edgeName(edge)) + " edge", false));
        }
        for (std::size_t j = i + 1; j < solved.cutouts.size(); ++j) {
            const SolvedCutout& other = solved.cutouts[j];
            addFinding(all, thin(project, cutout, toOpening(cutout, other, wish), "cutout " + other.id, true));
        }
    }
    return all;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/geometry/distance.h"
#include "core/geometry/mismatch.h"
#include "core/geometry/tolerance.h"
#include "core/geometry/wanted_outline.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"
#include "core/shop/panel_edges.h"
#include "core/shop/wanted_on_panel.h"

namespace kerfwall {
namespace {

// The radius the cutter leaves in the work at a corner of the template: its own, and what the corner's
// round has over the bush's or bearing's.
double radiusLeft(const Solved& solved, const Corner& corner) {
    return solved.use.cutter / 2 + std::max(0.0, corner.radius - solved.use.guide / 2);
}

const Corner* nearestCorner(const SolvedCutout& cutout, Point place) {
    const Corner* nearest = nullptr;
    for (const Corner& corner : cutout.corners) {
        if (nearest == nullptr || distance(corner.point, place) < distance(nearest->point, place)) {
            nearest = &corner;
        }
    }
    return nearest;
}

// The wanted outline as far as the cutter can be asked for it: a corner rounder than wanted is not held
// against its place and size.
std::vector<OutlinePiece> askedFor(const Project& project, const Solved& solved, const SolvedCutout& cutout,
                                   const Wanted& wanted) {
    const std::vector<Point> polygon = anticlockwise(wanted.outline);
    std::vector<double> radii;
    for (const Point& point : polygon) {
        const Corner* corner = nearestCorner(cutout, point);
        const bool rounded = corner != nullptr && corner->angle < 180;
        const double left =
            rounded ? std::max(wanted.cornerRadius, radiusLeft(solved, *corner)) : wanted.cornerRadius;
        radii.push_back(liesInsidePanel(project.panel, point) ? left : 0);
    }
    return clippedToPanel(project.panel, roundedLoop(polygon, radii));
}

std::vector<OutlinePiece> cutInWork(const SolvedCutout& cutout) {
    std::vector<OutlinePiece> pieces;
    for (const OutlineLoop& loop : cutout.work.loops) {
        std::ranges::copy_if(loop, std::back_inserter(pieces),
                             [](const OutlinePiece& piece) { return !liesOnEdge(piece); });
    }
    return pieces;
}

const OutlinePiece& nearestPiece(const std::vector<OutlinePiece>& pieces, Point place) {
    return *std::ranges::min_element(
        pieces, {}, [&](const OutlinePiece& piece) { return gapBetween(place, piece).distance; });
}

const Wall* nearestWall(const SolvedCutout& cutout, Point place) {
    const Wall* nearest = nullptr;
    double least = 0;
    for (const Wall& wall : cutout.walls) {
        const double off = gapBetween(place, straight(wall.from, wall.to)).distance;
        if (nearest == nullptr || off < least) {
            nearest = &wall;
            least = off;
        }
    }
    return nearest;
}

struct Worst {
    Mismatch mismatch;
    bool tooSmall = false;
};

std::optional<Worst> worstOf(const std::vector<OutlinePiece>& work, const std::vector<OutlinePiece>& asked,
                             const SolvedCutout& cutout) {
    const auto ofWork = greatestMismatch(work, asked);
    const auto ofAsked = greatestMismatch(asked, work);
    if (!ofWork || !ofAsked) {
        return std::nullopt;
    }
    // A place asked for that the cutter does not clear lies outside what it cuts.
    const Mismatch& worst = ofAsked->distance >= ofWork->distance ? *ofAsked : *ofWork;
    if (&worst == &*ofAsked) {
        return Worst{worst, !isInside(cutout.work, worst.at)};
    }
    Outline wanted;
    wanted.loops = {asked};
    return Worst{worst, isInside(wanted, worst.at)};
}

std::string sizeRemedy(const Project& project, const Solved& solved, const SolvedCutout& cutout,
                       const Worst& worst, const OutlinePiece& piece, Finding& finding) {
    const double offset = (solved.use.guide - solved.use.cutter) / 2;
    if (piece.isArc) {
        return "There the cutter leaves a corner of " + lengthWords(project, piece.radius) +
               "; ask for that radius, or bore the template's corner to suit.";
    }
    const Wall* wall = nearestWall(cutout, worst.mismatch.at);
    if (wall == nullptr) {
        return "Each wall must stand " + lengthWords(project, offset) + " outside the edge it cuts.";
    }
    finding.lines = {wall->line};
    std::string text = "Move " + wall->line + " " + lengthWords(project, worst.mismatch.distance) +
                       (worst.tooSmall ? " away from the opening" : " into the opening");
    if (std::abs(offset) > kOnLimit) {
        text += std::string("; a wall must stand ") + lengthWords(project, std::abs(offset)) +
                (offset > 0 ? " outside" : " inside") + " the edge it cuts";
    }
    return text + ".";
}

std::optional<Finding> workSize(const Project& project, const Solved& solved, const SolvedCutout& cutout,
                                const Wanted& wanted) {
    const std::vector<OutlinePiece> work = cutInWork(cutout);
    const std::vector<OutlinePiece> asked = askedFor(project, solved, cutout, wanted);
    const auto worst = worstOf(work, asked, cutout);
    const auto crossed =
        worst ? crossedAbove(worst->mismatch.distance, limitsOf("work-size", project)) : std::nullopt;
    if (!crossed) {
        return std::nullopt;
    }
    Finding finding;
    finding.code = "work-size";
    finding.severity = crossed->severity;
    finding.at = worst->mismatch.at;
    finding.cutout = cutout.id;
    finding.value = worst->mismatch.distance;
    finding.limit = crossed->limit;
    finding.unit = "mm";
    finding.text = "What cutout " + cutout.id + " cuts in the work is up to " +
                   lengthWords(project, worst->mismatch.distance) +
                   (worst->tooSmall ? " smaller" : " larger") + " on a side than wanted, more than " +
                   lengthWords(project, crossed->limit) + ". ";
    finding.text +=
        sizeRemedy(project, solved, cutout, *worst, nearestPiece(work, worst->mismatch.at), finding);
    return finding;
}

const Corner* leastLikeWanted(const Solved& solved, const SolvedCutout& cutout, double wanted) {
    const Corner* worst = nullptr;
    double most = kSameRadius;
    for (const Corner& corner : cutout.corners) {
        const double off = corner.angle < 180 ? std::abs(radiusLeft(solved, corner) - wanted) : 0;
        if (off > most) {
            worst = &corner;
            most = off;
        }
    }
    return worst;
}

std::optional<Finding> bushCorner(const Project& project, const Solved& solved, const SolvedCutout& cutout,
                                  const Wanted& wanted) {
    const Corner* corner = leastLikeWanted(solved, cutout, wanted.cornerRadius);
    // A sharp corner that a bearing follows as it is trimmed is corner-short's to say.
    if (corner == nullptr ||
        (wanted.cornerRadius == 0 && solved.use.guide / 2 <= corner->radius + kOnLimit)) {
        return std::nullopt;
    }
    const double left = radiusLeft(solved, *corner);
    Finding finding;
    finding.code = "bush-corner";
    finding.severity = Severity::Note;
    finding.at = corner->point;
    finding.lines = {corner->first, corner->second};
    finding.cutout = cutout.id;
    finding.value = left;
    finding.limit = wanted.cornerRadius;
    finding.unit = "mm";
    finding.text = "At the corner of " + corner->first + " and " + corner->second +
                   " the work gets a radius of " + lengthWords(project, left) + ", wanted is " +
                   lengthWords(project, wanted.cornerRadius) + ". ";
    const double offset = (solved.use.guide - solved.use.cutter) / 2;
    if (wanted.cornerRadius > left) {
        const double bore = std::max(wanted.cornerRadius + offset, solved.use.guide / 2);
        finding.text += "Bore the template's corner to a radius of " + lengthWords(project, bore) +
                        ", or take a cutter of " + lengthWords(project, 2 * wanted.cornerRadius) +
                        " and lay the lines for it.";
    } else if (wanted.cornerRadius > 0) {
        finding.text += "Take a cutter of " + lengthWords(project, 2 * wanted.cornerRadius) +
                        " or less and lay the lines for it, or finish the corner by hand.";
    } else {
        finding.text +=
            "Square the corner by hand, or ask for corners of " + lengthWords(project, left) + ".";
    }
    return finding;
}

}  // namespace

std::vector<Finding> workFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    for (const SolvedCutout& cutout : solved.cutouts) {
        const auto& wanted = project.cutouts[cutout.index].wanted;
        if (!wanted || wanted->outline.size() < 3 || cutout.work.loops.empty()) {
            continue;
        }
        for (auto finding :
             {workSize(project, solved, cutout, *wanted), bushCorner(project, solved, cutout, *wanted)}) {
            if (finding) {
                all.push_back(std::move(*finding));
            }
        }
    }
    return all;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/geometry/distance.h"
#include "core/geometry/edge_name.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/kerf_over_hole.h"
#include "core/shop/limits.h"
#include "core/shop/panel_edges.h"
#include "core/shop/word_list.h"

namespace kerfwall {
namespace {

Finding about(const Project& project, std::size_t index, const char* code, Severity severity) {
    Finding finding;
    finding.code = code;
    finding.severity = severity;
    finding.hole = index;
    finding.unit = "mm";
    finding.at = axisOf(project.panel, project.clampHoles[index]).to;
    return finding;
}

std::string holeName(const Project& project, std::size_t index) {
    const ClampHole& hole = project.clampHoles[index];
    const std::string name = hole.id.empty() ? std::to_string(index + 1) : hole.id;
    return "Clamp hole " + name + " (" + std::string(edgeName(hole.edge)) + " edge)";
}

// --- hole-through -------------------------------------------------------------------------------

std::optional<Finding> through(const Project& project, const Solved& solved, std::size_t index) {
    const ClampHole& hole = project.clampHoles[index];
    const OutlinePiece axis = axisOf(project.panel, hole);
    const double across =
        hole.edge == Edge::Left || hole.edge == Edge::Right ? project.panel.width : project.panel.height;
    double ahead = std::max(0.0, across - hole.depth);
    std::string what = "the opposite edge";
    std::string cutoutId;
    for (const SolvedCutout& cutout : solved.cutouts) {
        const auto run = gapBetween(axis, cutout.opening);
        const auto point = gapBetween(straight(axis.to, axis.to), cutout.opening);
        if (!run || !point) {
            continue;
        }
        const bool into = run->distance == 0 || isInside(cutout.opening, axis.to);
        const double left = into ? 0 : point->distance;
        if (left < ahead) {
            ahead = left;
            what = "cutout " + cutout.id;
            cutoutId = cutout.id;
        }
    }
    const LimitPair limits = limitsOf("hole-through", project);
    const auto crossed = crossedBelow(ahead, limits);
    if (!crossed) {
        return std::nullopt;
    }
    Finding finding = about(project, index, "hole-through", crossed->severity);
    finding.cutout = cutoutId;
    finding.value = ahead;
    finding.limit = crossed->limit;
    const double wish = std::max(limits.care.value_or(0), limits.stop.value_or(0));
    const double shallower = wish - ahead;
    finding.text = holeName(project, index) +
                   (ahead > 0 ? " ends " + lengthWords(project, ahead) + " from " + what + ", less than " +
                                    lengthWords(project, crossed->limit)
                              : " runs into " + what + ", with less than " +
                                    lengthWords(project, crossed->limit) + " of wood at its point") +
                   ". " +
                   (ahead > 0 && shallower < hole.depth
                        ? "Drill it " + atMostWords(project, hole.depth - shallower) + " deep or less."
                        : "Drill it shallower, or move it along the edge, so that " +
                              lengthWords(project, wish) + " of wood is left.");
    return finding;
}

// --- hole-kerf ----------------------------------------------------------------------------------

// The kerfs that run into the hole.
std::vector<KerfOver> kerfsInto(const Project& project, const Solved& solved, const ClampHole& hole) {
    const double begins = heightOf(project.panel, hole) - hole.diameter / 2;
    std::vector<KerfOver> into;
    for (const SolvedLine& line : solved.lines) {
        for (const Kerf& kerf : line.kerfs) {
            const KerfOver over{&line, &kerf, widthAtFloor(project.panel, hole, kerf.depth)};
            if (kerf.depth > begins + kOnLimit && crossesHole(project.panel, hole, hole.depth, over)) {
                into.push_back(over);
            }
        }
    }
    return into;
}

std::string kerfRemedy(const Project& project, const ClampHole& hole, const KerfOver& first, double clear) {
    const double wood = startingLimits("hole-wall", project).care.value_or(0);
    const double lower = first.kerf->depth + wood + hole.diameter / 2;
    if (lower + hole.diameter / 2 + wood <= project.panel.thickness) {
        return "Drill it with its axis " + atLeastWords(project, lower) +
               " below the layout face, or move it clear of the kerf.";
    }
    if (clear > hole.diameter) {
        return "Drill it " + atMostWords(project, clear) + " deep or less, to end short of the kerf.";
    }
    return "Move it along the edge by up to " + atLeastWords(project, hole.diameter + first.kerf->width) +
           ", clear of the kerf.";
}

std::optional<Finding> kerfed(const Project& project, const Solved& solved, std::size_t index) {
    const ClampHole& hole = project.clampHoles[index];
    const double begins = heightOf(project.panel, hole) - hole.diameter / 2;
    const std::vector<KerfOver> into = kerfsInto(project, solved, hole);
    if (into.empty()) {
        return std::nullopt;
    }
    const auto depthOf = [&](const KerfOver& over) { return clearDepth(project.panel, hole, over); };
    const KerfOver first = *std::ranges::min_element(into, {}, depthOf);
    const OutlinePiece axis = axisOf(project.panel, hole);
    Finding finding = about(project, index, "hole-kerf", Severity::Care);
    finding.at = axis.from + depthOf(first) * unit(axis.to - axis.from);
    for (const KerfOver& over : into) {
        if (std::ranges::find(finding.lines, over.line->id) == finding.lines.end()) {
            finding.lines.push_back(over.line->id);
        }
    }
    finding.value = first.kerf->depth;
    finding.limit = begins;
    finding.text = "The kerf of " + listText(finding.lines) + ", " +
                   lengthWords(project, first.kerf->depth) + " deep, runs into clamp hole " +
                   (hole.id.empty() ? std::to_string(index + 1) : hole.id) + ", which begins " +
                   lengthWords(project, begins) + " below the layout face. " +
                   kerfRemedy(project, hole, first, depthOf(first));
    return finding;
}

// --- hole-wall ----------------------------------------------------------------------------------

struct Wood {
    double left = 0;
    std::string where;  // "above", "below", "beside ..."
    bool overOrUnder = false;
};

void keepLess(Wood& least, const Wood& other) {
    if (other.left < least.left) {
        least = other;
    }
}

// A kerf over the hole that does not reach it takes from the wood above.
void keepUnderKerfs(Wood& least, const Project& project, const Solved& solved, const ClampHole& hole) {
    const double begins = heightOf(project.panel, hole) - hole.diameter / 2;
    for (const SolvedLine& line : solved.lines) {
        for (const Kerf& kerf : line.kerfs) {
            if (kerf.depth <= begins + kOnLimit &&
                crossesHole(project.panel, hole, hole.depth, {&line, &kerf, hole.diameter})) {
                keepLess(least, {begins - kerf.depth, "between it and the kerf of " + line.id, false});
            }
        }
    }
}

// A place on the axis that is not the drill's point: there the hole has its flank around it.
bool isBeforePoint(const OutlinePiece& axis, Point place) { return distance(place, axis.to) > kOnLimit; }

void keepBesideOpenings(Wood& least, const Project& project, const Solved& solved, const ClampHole& hole) {
    const OutlinePiece axis = axisOf(project.panel, hole);
    for (const SolvedCutout& cutout : solved.cutouts) {
        const auto gap = gapBetween(axis, cutout.opening);
        // One that the axis runs into, or that lies ahead of the point, is hole-through's.
        if (gap && gap->distance > 0 && isBeforePoint(axis, gap->first)) {
            keepLess(least, {gap->distance - hole.diameter / 2, "between it and cutout " + cutout.id, false});
        }
    }
}

void keepBesideHoles(Wood& least, const Project& project, std::size_t index) {
    const ClampHole& hole = project.clampHoles[index];
    const OutlinePiece axis = axisOf(project.panel, hole);
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) {
        const ClampHole& other = project.clampHoles[i];
        if (i == index || other.depth <= 0) {
            continue;
        }
        const OutlinePiece otherAxis = axisOf(project.panel, other);
        const Gap gap = gapBetween(axis, otherAxis);
        const double apart =
            std::hypot(gap.distance, heightOf(project.panel, hole) - heightOf(project.panel, other));
        const std::string name = other.id.empty() ? std::to_string(i + 1) : other.id;
        const double flanks = (isBeforePoint(axis, gap.first) ? hole.diameter / 2 : 0) +
                              (isBeforePoint(otherAxis, gap.second) ? other.diameter / 2 : 0);
        keepLess(least, {apart - flanks, "between it and clamp hole " + name, false});
    }
}

Wood leastWood(const Project& project, const Solved& solved, std::size_t index) {
    const ClampHole& hole = project.clampHoles[index];
    const double radius = hole.diameter / 2;
    const double height = heightOf(project.panel, hole);
    const OutlinePiece edge = edgePiece(project.panel, hole.edge);
    Wood least{height - radius, "above it", true};
    const double below = project.panel.thickness - height - radius;
    if (std::abs(below - least.left) < kOnLimit) {
        least.where = "above and below it";
    }
    keepLess(least, {below, "below it", true});
    keepLess(least, {hole.at - radius, "beside it at the edge's start", false});
    keepLess(least, {length(edge.to - edge.from) - hole.at - radius, "beside it at the edge's end", false});
    keepUnderKerfs(least, project, solved, hole);
    keepBesideOpenings(least, project, solved, hole);
    keepBesideHoles(least, project, index);
    return least;
}

std::string wallRemedy(const Project& project, const ClampHole& hole, const Wood& wood, double wish) {
    if (!wood.overOrUnder) {
        return "Move it " + atLeastWords(project, wish - wood.left) + " or more away.";
    }
    const double height = heightOf(project.panel, hole);
    const double room = 2 * (std::min(height, project.panel.thickness - height) - wish);
    const double thicker = hole.diameter + 2 * wish;
    const std::string panel = "a panel of " + atLeastWords(project, thicker) + " or more";
    if (project.panel.thickness >= thicker) {
        return "Put its axis " + lengthWords(project, project.panel.thickness / 2) +
               " below the layout face.";
    }
    return room > 0 ? "Take a drill of " + atMostWords(project, room) + " or less, or " + panel + "."
                    : "Take " + panel + ".";
}

std::optional<Finding> thinWall(const Project& project, const Solved& solved, std::size_t index) {
    const Wood wood = leastWood(project, solved, index);
    const LimitPair limits = limitsOf("hole-wall", project);
    const auto crossed = crossedBelow(wood.left, limits);
    if (!crossed) {
        return std::nullopt;
    }
    const ClampHole& hole = project.clampHoles[index];
    Finding finding = about(project, index, "hole-wall", crossed->severity);
    finding.at = axisOf(project.panel, hole).from;
    finding.value = std::max(0.0, wood.left);
    finding.limit = crossed->limit;
    const double wish = std::max(limits.care.value_or(0), limits.stop.value_or(0));
    finding.text = holeName(project, index) + " of " + lengthWords(project, hole.diameter) + " leaves " +
                   lengthWords(project, *finding.value) + " of wood " + wood.where + ", less than " +
                   lengthWords(project, crossed->limit) + ". " + wallRemedy(project, hole, wood, wish);
    return finding;
}

}  // namespace

std::vector<Finding> holeFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) {
        if (project.clampHoles[i].depth <= 0) {
            continue;
        }
        for (const auto look : {through, kerfed, thinWall}) {
            if (auto finding = look(project, solved, i)) {
                all.push_back(std::move(*finding));
            }
        }
    }
    return all;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/geometry/distance.h"
#include "core/geometry/edge_name.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/hole_wood.h"
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
    return "Clamp hole " + holeNumber(project, index) + " (" +
           std::string(edgeName(project.clampHoles[index].edge)) + " edge)";
}

// --- hole-through -------------------------------------------------------------------------------

// From the drill's point to the nearest opening, or to the opposite edge where that is no farther.
WoodLeft leastAhead(const Project& project, const Solved& solved, std::size_t index) {
    const std::vector<WoodLeft> all = woodRound(project, solved, index);
    const WoodLeft* least = &all.back();
    for (const WoodLeft& wood : all) {
        if (wood.at == WoodAt::AheadCutout && wood.left < least->left) least = &wood;
    }
    return *least;
}

std::optional<Finding> through(const Project& project, const Solved& solved, std::size_t index) {
    const ClampHole& hole = project.clampHoles[index];
    const WoodLeft least = leastAhead(project, solved, index);
    const double ahead = least.left;
    const bool toCutout = least.at == WoodAt::AheadCutout;
    const std::string what = toCutout ? "cutout " + least.what : "the opposite edge";
    const LimitPair limits = limitsOf("hole-through", project);
    const auto crossed = crossedBelow(ahead, limits);
    if (!crossed) {
        return std::nullopt;
    }
    Finding finding = about(project, index, "hole-through", crossed->severity);
    finding.cutout = toCutout ? least.what : "";
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
                   holeNumber(project, index) + ", which begins " +
                   lengthWords(project, begins) + " below the layout face. " +
                   kerfRemedy(project, hole, first, depthOf(first));
    return finding;
}

// --- hole-wall ----------------------------------------------------------------------------------

struct Wood {
    double left = 0;
    std::string where;  // "above it", "beside ..."
    bool overOrUnder = false;
};

std::string whereText(const WoodLeft& wood) {
    switch (wood.at) {
        case WoodAt::Above: return "above it";
        case WoodAt::Below: return "below it";
        case WoodAt::EdgeStart: return "beside it at the edge's start";
        case WoodAt::EdgeEnd: return "beside it at the edge's end";
        case WoodAt::UnderKerf: return "between it and the kerf of " + wood.what;
        case WoodAt::BesideCutout: return "between it and cutout " + wood.what;
        case WoodAt::BesideHole: return "between it and clamp hole " + wood.what;
        case WoodAt::AheadCutout:
        case WoodAt::AheadEdge: break;  // no walls of the hole
    }
    return {};
}

// What lies ahead of the point is hole-through's to say, a kerf that runs into the hole hole-kerf's.
bool isWall(const WoodLeft& wood) {
    if (wood.at == WoodAt::AheadCutout || wood.at == WoodAt::AheadEdge) return false;
    return wood.at != WoodAt::UnderKerf || wood.left >= -kOnLimit;
}

Wood leastWood(const Project& project, const Solved& solved, std::size_t index) {
    const std::vector<WoodLeft> all = woodRound(project, solved, index);
    const WoodLeft* least = nullptr;
    for (const WoodLeft& wood : all) {
        if (isWall(wood) && (!least || wood.left < least->left)) least = &wood;
    }
    const bool overOrUnder = least->at == WoodAt::Above || least->at == WoodAt::Below;
    const auto below = std::ranges::find(all, WoodAt::Below, &WoodLeft::at);
    const bool both = overOrUnder && std::abs(below->left - all.front().left) < kOnLimit;
    return {least->left, both ? "above and below it" : whereText(*least), overOrUnder};
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

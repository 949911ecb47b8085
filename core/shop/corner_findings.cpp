// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"
#include "core/shop/word_list.h"

namespace kerfwall {
namespace {

constexpr double kLargestBit = 60;     // mm: larger ones are no trimming bits to propose
constexpr double kThinnestKerf = 0.5;  // mm: no saw cuts less

double cosOf(double angle) { return std::cos(radians(angle)); }

double widestKerf(const Solved& solved, const Corner& corner) {
    double widest = 0;
    for (const LineId& id : {corner.first, corner.second}) {
        if (const SolvedLine* line = findLine(solved, id)) {
            for (const Kerf& kerf : line->kerfs) {
                widest = std::max(widest, kerf.width);
            }
        }
    }
    return widest;
}

Finding atCorner(const SolvedCutout& cutout, const Corner& corner, const char* code, Severity severity) {
    Finding finding;
    finding.code = code;
    finding.severity = severity;
    finding.at = corner.point;
    finding.lines = {corner.first, corner.second};
    finding.cutout = cutout.id;
    finding.unit = "mm";
    return finding;
}

std::string cornerName(const Corner& corner) { return "corner of " + corner.first + " and " + corner.second; }

// The hollow's other lips, where the corner's own two kerfs alone would leave it clean.
std::string strangersRemedy(const Project& project, const Solved& solved, const Corner& corner,
                            const Hollow* hollow) {
    std::vector<std::string> strangers;
    if (hollow != nullptr) {
        std::ranges::copy_if(hollow->lips, std::back_inserter(strangers),
                             [&](const LineId& id) { return id != corner.first && id != corner.second; });
    }
    const std::string kerf =
        strangers.empty() ? "the kerf that crosses here" : "the kerf of " + listText(strangers);
    return "Stop " + kerf + " before this corner, or move it " + atLeastWords(project, 2 * solved.bitRadius) +
           " or more away.";
}

std::string grooveRemedy(const Project& project, const Solved& solved, const Corner& corner,
                         const Hollow* hollow) {
    const double width = widestKerf(solved, corner);
    const double share = 1 + cosOf(corner.angle);
    const bool bored = corner.regime == Regime::Bored;
    if (width <= corner.radius * share) {
        return strangersRemedy(project, solved, corner, hollow);
    }
    const double size = 2 * width / share;
    const double kerf = corner.radius * share;
    std::string text;
    if (bored) {
        text = "A bore of " + atLeastWords(project, size) + " across or more leaves this corner clean";
    } else if (size <= kLargestBit) {
        text = "A bit of " + atLeastWords(project, size) + " or more leaves this corner clean";
    }
    if (kerf >= kThinnestKerf) {
        text += text.empty() ? "A" : "; or a";
        text += " kerf of " + atMostWords(project, kerf) + " or less" +
                (text.size() < 40 ? " leaves this corner clean" : "");
    }
    if (text.empty()) {
        const double widest =
            degrees(std::acos(std::clamp(width / solved.bitRadius - 1, -1.0, 1.0)));
        return "With this bit and kerf corners of up to " + angleWords(widest) +
               " come out clean: lay the two lines at such an angle, or trim each wall to its own kerf and "
               "finish by hand.";
    }
    return text + ".";
}

std::optional<Finding> groove(const Project& project, const Solved& solved, const SolvedCutout& cutout,
                              std::size_t index) {
    const Corner& corner = cutout.corners[index];
    const Hollow* deepest = nullptr;
    for (const Hollow& hollow : cutout.hollows) {
        if (hollow.corner == index && (deepest == nullptr || hollow.depth > deepest->depth)) {
            deepest = &hollow;
        }
    }
    const double width = widestKerf(solved, corner);
    const bool fallsIn = corner.angle < 180 && corner.regime == Regime::FallsIn;
    const LimitPair limits = limitsOf("corner-groove", project);
    const auto crossed = deepest != nullptr ? crossedAbove(deepest->depth, limits) : std::nullopt;
    if (crossed) {
        Finding finding =
            atCorner(cutout, corner, "corner-groove", fallsIn ? Severity::Stop : crossed->severity);
        finding.at = deepest->at;
        finding.value = deepest->depth;
        finding.limit = crossed->limit;
        finding.text =
            "At the " + cornerName(corner) + " the bearing drops into the crossing kerf: the bit bites " +
            lengthWords(project, deepest->depth) + " past the line, more than " +
            lengthWords(project, crossed->limit) + ". " + grooveRemedy(project, solved, corner, deepest);
        return finding;
    }
    const bool overrun = corner.angle < 180 && corner.regime == Regime::Bored && corner.boreRadius &&
                         width > *corner.boreRadius * (1 + cosOf(corner.angle)) + kOnLimit;
    if (!fallsIn && !overrun) {
        return std::nullopt;
    }
    Finding finding = atCorner(cutout, corner, "corner-groove", fallsIn ? Severity::Stop : Severity::Care);
    finding.value = width;
    finding.limit = fallsIn ? 2 * solved.bitRadius : *corner.boreRadius * (1 + cosOf(corner.angle));
    finding.text = "At the " + cornerName(corner) + " a kerf of " + lengthWords(project, width) +
                   (fallsIn ? " lets the bearing fall in; it must be narrower than the bit's "
                            : " reaches past the bore's tangent points; there is room for ") +
                   lengthWords(project, *finding.limit) + ". " +
                   grooveRemedy(project, solved, corner, nullptr);
    return finding;
}

double setBack(const SolvedCutout& cutout, const Wall& wall, bool atStart) {
    const Corner& corner = cutout.corners[atStart ? *wall.startCorner : *wall.endCorner];
    if (corner.angle >= 180) {
        return 0;
    }
    return distance(corner.point, atStart ? corner.secondTangent : corner.firstTangent);
}

std::optional<Finding> overlap(const Project& project, const Solved& solved, const SolvedCutout& cutout,
                               const Wall& wall) {
    if (!wall.startCorner || !wall.endCorner) {
        return std::nullopt;
    }
    const double start = setBack(cutout, wall, true);
    const double end = setBack(cutout, wall, false);
    const double whole = distance(wall.from, wall.to);
    if (start == 0 || end == 0 || start + end <= whole + kOnLimit) {
        return std::nullopt;
    }
    const Corner& first = cutout.corners[*wall.startCorner];
    const Corner& second = cutout.corners[*wall.endCorner];
    Finding finding = atCorner(cutout, first, "corner-overlap", Severity::Care);
    finding.at = 0.5 * (wall.from + wall.to);
    finding.lines = {wall.line};
    finding.value = start + end;
    finding.limit = whole;
    finding.text = "The arcs of both corners need " + lengthWords(project, start + end) + " of the wall on " +
                   wall.line + ", which is " + lengthWords(project, whole) + " long. ";
    const bool byBit = first.regime != Regime::Bored && second.regime != Regime::Bored;
    finding.text +=
        byBit ? "A bit of " + atMostWords(project, 2 * solved.bitRadius * whole / (start + end)) +
                    " or less lets both fit; or make this wall " + atLeastWords(project, start + end) +
                    " or longer."
              : "Make this wall " + atLeastWords(project, start + end) + " or longer, or the bores smaller.";
    return finding;
}

std::optional<Finding> pointed(const Project& project, const Solved& solved, const SolvedCutout& cutout,
                               const Corner& corner) {
    const auto crossed = crossedAbove(corner.shortBy, limitsOf("corner-short", project));
    // A corner that is bored is wanted as round as it is.
    if (corner.angle >= 180 || corner.regime == Regime::Bored || !crossed) {
        return std::nullopt;
    }
    Finding finding = atCorner(cutout, corner, "corner-short", crossed->severity);
    finding.value = corner.shortBy;
    finding.limit = crossed->limit;
    const double size = 2 * solved.bitRadius * crossed->limit / corner.shortBy;
    finding.text = "The " + cornerName(corner) + " is sharp, " + angleWords(corner.angle) +
                   ": its arc stops " + lengthWords(project, corner.shortBy) +
                   " short of the drawn point, more than " + lengthWords(project, crossed->limit) +
                   ". Cut the point by hand, or take a bit of " + atMostWords(project, size) + " or less.";
    return finding;
}

std::optional<Finding> wantedSharp(const Project& project, const SolvedCutout& cutout) {
    const auto& wanted = project.cutouts[cutout.index].wanted;
    if (!wanted || wanted->cornerRadius > 0) {
        return std::nullopt;
    }
    const Corner* worst = nullptr;
    for (const Corner& corner : cutout.corners) {
        const bool below =
            corner.angle < 180 && !crossedAbove(corner.shortBy, limitsOf("corner-short", project));
        if (below && corner.shortBy > 0 && (worst == nullptr || corner.shortBy > worst->shortBy)) {
            worst = &corner;
        }
    }
    if (worst == nullptr) {
        return std::nullopt;
    }
    Finding finding = atCorner(cutout, *worst, "corner-short", Severity::Note);
    finding.value = worst->shortBy;
    finding.text = "Cutout " + cutout.id + " is wanted with sharp corners, but its arcs stop up to " +
                   lengthWords(project, worst->shortBy) +
                   " short of the drawn points. Square them by hand, or ask for corners of " +
                   lengthWords(project, worst->radius) + ".";
    return finding;
}

}  // namespace

std::vector<Finding> cornerFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (cutout.parts == 0) {
            continue;
        }
        for (std::size_t i = 0; i < cutout.corners.size(); ++i) {
            addFinding(all, groove(project, solved, cutout, i));
        }
        for (const Wall& wall : cutout.walls) {
            addFinding(all, overlap(project, solved, cutout, wall));
        }
        for (const Corner& corner : cutout.corners) {
            addFinding(all, pointed(project, solved, cutout, corner));
        }
        addFinding(all, wantedSharp(project, cutout));
    }
    return all;
}

}  // namespace kerfwall

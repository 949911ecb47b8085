// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"
#include "core/shop/wall_kerf.h"
#include "core/shop/word_list.h"

namespace kerfwall {
namespace {

/// The lines along the cutout with a kerf below that width.
std::vector<LineId> linesBelow(const Solved& solved, const SolvedCutout& cutout, double width) {
    std::vector<LineId> lines;
    for (const Wall& wall : cutout.walls) {
        const auto kerf = kerfOf(solved, wall);
        const bool isTold = std::ranges::find(lines, wall.line) != lines.end();
        if (kerf && kerf->width < width - kOnLimit && !isTold) lines.push_back(wall.line);
    }
    return lines;
}

std::string widerSawWords(const Project& project, double width) {
    std::string words = "Saw with a kerf of " + atLeastWords(project, width) + " or more";
    for (const Saw& saw : benchOf(project).saws) {
        if (saw.kerf >= width) return words + ", like saw " + saw.id + "'s " + lengthWords(project, saw.kerf);
    }
    return words;
}

std::optional<Finding> littleRoom(const Project& project, const Solved& solved, const SolvedCutout& cutout) {
    const double narrowest = *narrowestKerf(solved, cutout);
    const auto crossed = crossedBelow(narrowest, limitsOf("rough-room", project));
    if (!crossed) return std::nullopt;
    Finding finding;
    finding.code = "rough-room";
    finding.severity = crossed->severity;
    finding.lines = linesBelow(solved, cutout, crossed->limit);
    const auto wall = std::ranges::find(cutout.walls, finding.lines.front(), &Wall::line);
    finding.at = 0.5 * (wall->from + wall->to);
    finding.cutout = cutout.id;
    finding.value = narrowest;
    finding.limit = crossed->limit;
    finding.unit = "mm";
    finding.text = "The kerf of " + listText(finding.lines) + " is " + lengthWords(project, narrowest) +
                   " wide, less than " + lengthWords(project, crossed->limit) +
                   ": little room to saw the waste of " + cutout.id +
                   " out inside it, and nothing may stand beyond it where the bearing runs. " +
                   widerSawWords(project, crossed->limit) +
                   ", or make a second cut beside it on the waste side before sawing out.";
    return finding;
}

double pastTheLines(double drill, double bitRadius, double angle) {
    return (drill / 2 - bitRadius) * (1 - std::sin(radians(angle) / 2));
}

std::optional<Finding> wideDrill(const Project& project, const Solved& solved, const SolvedCutout& cutout) {
    const Corner* worst = nullptr;
    double most = 0;
    for (const Corner& corner : cutout.corners) {
        const double past = corner.drill ? pastTheLines(corner.drill->diameter, solved.bitRadius, corner.angle) : 0;
        if (past > most) {
            worst = &corner;
            most = past;
        }
    }
    const auto crossed = crossedAbove(most, limitsOf("drill-wide", project));
    if (worst == nullptr || !crossed) return std::nullopt;
    Finding finding;
    finding.code = "drill-wide";
    finding.severity = crossed->severity;
    finding.at = worst->point;
    finding.lines = {worst->first, worst->second};
    finding.cutout = cutout.id;
    finding.value = most;
    finding.limit = crossed->limit;
    finding.unit = "mm";
    finding.text = "The relief drill of " + lengthWords(project, worst->drill->diameter) +
                   " is larger than the trimming bit of " + lengthWords(project, 2 * solved.bitRadius) +
                   " and would cut up to " + lengthWords(project, most) + " past the lines at the corner of " +
                   worst->first + " and " + worst->second + ". Take a drill of " +
                   atMostWords(project, 2 * solved.bitRadius) + " or less, or bore no relief holes.";
    return finding;
}

}  // namespace

std::vector<Finding> roughFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (!isWorkable(solved, cutout)) continue;
        addFinding(all, littleRoom(project, solved, cutout));
        addFinding(all, wideDrill(project, solved, cutout));
    }
    return all;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/geometry/kerf_layout.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"
#include "core/shop/saw_reach.h"
#include "core/shop/word_list.h"

namespace kerfwall {
namespace {

constexpr double kBetweenOpenings = 15;  // mm of panel between two openings; common practice, no source

std::string nickRemedy(const Project& project, const Solved& solved, const std::vector<LineId>& crossing) {
    if (crossing.empty()) {
        return "Stop the kerf that crosses here, or move it " + atLeastWords(project, 2 * solved.bitRadius) +
               " away.";
    }
    const std::string kerf = "the kerf of " + listText(crossing);
    const Bench& bench = benchOf(project);
    const auto saw = std::ranges::find_if(bench.saws, canStop, &Saw::kind);
    if (saw == bench.saws.end()) {
        return "No saw on the bench can stop short: lay " + listText(crossing) +
               " so that it passes this cutout by " + atLeastWords(project, 2 * solved.bitRadius) +
               " or more.";
    }
    return "Stop " + kerf + " with saw " + saw->id + " at least " +
           atLeastWords(project, reachOfRound(saw->blade, solved.kerfDepth, 0)) +
           " before this wall, the length its blade's round takes.";
}

Finding nick(const Project& project, const Solved& solved, const SolvedCutout& cutout, const Hollow& hollow,
             const Crossed& crossed) {
    Finding finding;
    finding.code = "wall-nick";
    finding.severity = crossed.severity;
    finding.at = hollow.at;
    finding.cutout = cutout.id;
    finding.value = hollow.depth;
    finding.limit = crossed.limit;
    finding.unit = "mm";
    std::vector<LineId> crossing;
    for (const LineId& lip : hollow.lips) {
        if (lip != hollow.wall && std::ranges::find(crossing, lip) == crossing.end()) {
            crossing.push_back(lip);
        }
    }
    if (!hollow.wall.empty()) {
        finding.lines.push_back(hollow.wall);
    }
    finding.lines.insert(finding.lines.end(), crossing.begin(), crossing.end());
    finding.text =
        (crossing.empty() ? "A kerf" : "The kerf of " + listText(crossing)) + " crosses " +
        (hollow.wall.empty() ? "the border of cutout " + cutout.id : "the wall on " + hollow.wall) +
        ": the bearing dips " + lengthWords(project, hollow.depth) + " into it, more than " +
        lengthWords(project, crossed.limit) + ". " + nickRemedy(project, solved, crossing);
    return finding;
}

Finding lostWall(const Project& project, const SolvedCutout& cutout, const LostWall& lost) {
    Finding finding;
    finding.code = "wall-lost";
    finding.severity = Severity::Stop;
    finding.at = 0.5 * (lost.from + lost.to);
    finding.cutout = cutout.id;
    finding.lines = {lost.line};
    finding.value = distance(lost.from, lost.to);
    finding.unit = "mm";
    finding.text = "Kerfs lie on both sides of " + lost.line + ", so " +
                   lengthWords(project, *finding.value) +
                   " of it keeps no wall for the bearing to ride on. Give each opening a line of its own, " +
                   lengthWords(project, kBetweenOpenings) + " or more apart, or stop one of the kerfs.";
    return finding;
}

}  // namespace

std::vector<Finding> wallFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    const LimitPair limits = limitsOf("wall-nick", project);
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const Hollow& hollow : cutout.hollows) {
            const auto crossed = crossedAbove(hollow.depth, limits);
            if (!hollow.corner && cutout.parts > 0 && crossed) {
                all.push_back(nick(project, solved, cutout, hollow, *crossed));
            }
        }
        for (const LostWall& lost : cutout.lost) {
            all.push_back(lostWall(project, cutout, lost));
        }
    }
    return all;
}

}  // namespace kerfwall

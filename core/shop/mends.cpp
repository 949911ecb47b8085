// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/mends.h"

#include <algorithm>

#include "core/geometry/carrying.h"
#include "core/geometry/marking.h"
#include "core/geometry/solve.h"
#include "core/shop/bore.h"
#include "core/shop/finding_words.h"
#include "core/shop/measured.h"
#include "core/shop/word_list.h"

namespace kerfwall {

namespace {

/// A wall past its line, and the shift that lays its line where the wall stands.
struct PastWall {
    const Project& project;
    const Solved& solved;
    LineId line;
    Point shift;
    double by;
};

/// Past its line the wall stands on the side away from its kerf.
Point shiftOf(const SolvedLine& line, double by) {
    const Point left = unit(leftOf(line.to - line.from));
    return line.kerfs.front().side == Side::Left ? -by * left : by * left;
}

std::vector<LineId> linesOf(const SolvedCutout& cutout) {
    std::vector<LineId> lines;
    for (const Wall& wall : cutout.walls) {
        lines.push_back(wall.line);
    }
    return lines;
}

bool holdsLine(const std::vector<LineId>& lines, const LineId& id) { return std::ranges::find(lines, id) != lines.end(); }

bool isPast(double shortBy) { return shortBy < -kOnLine; }

/// Whether another wall of the record would lie past its line that does not now, or one that does would lie farther.
bool spoilsAnother(const PastWall& past, const Project& after, const Solved& solved) {
    for (std::size_t i = 0; i < after.record.size(); ++i) {
        if (isPassed(after.record, i)) {
            continue;
        }
        const auto now = shortBy(after, solved, after.record[i]);
        const auto before = shortBy(past.project, past.solved, past.project.record[i]);
        if (before && (!now || (isPast(*now) && *now < *before - kOnLine / 2))) {
            return true;
        }
    }
    return false;
}

std::ptrdiff_t stopsIn(const Project& project, const Solved& solved) {
    return std::ranges::count(findings(project, solved), Severity::Stop, &Finding::severity);
}

bool keepsFaces(const Project& before, const Project& after) {
    return std::ranges::equal(before.cutouts, after.cutouts, [](const Cutout& one, const Cutout& other) {
        return one.id == other.id && one.seeds.size() == other.seeds.size();
    });
}

std::vector<Point> boresOf(const Solved& solved) {
    std::vector<Point> centres;
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const Corner& corner : cutout.corners) {
            if (isBored(corner, solved)) centres.push_back(centreOf(corner, *corner.boreRadius));
        }
    }
    return centres;
}

/// Corners are bored before their kerfs are cut, so where a wall was found the bores stand already.
bool keepsBores(const Solved& before, const Solved& after) {
    constexpr double kSamePlace = 0.01;  // mm
    return std::ranges::equal(boresOf(before), boresOf(after), [](Point one, Point other) { return distance(one, other) < kSamePlace; });
}

std::optional<Remedy> attempt(const PastWall& past, std::size_t record, const std::string& words, Project after) {
    if (!keepsFaces(past.project, after)) {
        return std::nullopt;
    }
    Solved solved = solve(after);
    const auto now = shortBy(after, solved, after.record[record]);
    if (!now || isPast(*now) || !keepsBores(past.solved, solved) || spoilsAnother(past, after, solved) ||
        stopsIn(after, solved) > stopsIn(past.project, past.solved)) {
        return std::nullopt;
    }
    return Remedy{words, std::move(after), std::move(solved), true};
}

std::optional<Remedy> wholeOpening(const PastWall& past, std::size_t record) {
    Picked openings;
    for (const SolvedCutout& cutout : past.solved.cutouts) {
        if (holdsLine(linesOf(cutout), past.line)) {
            openings.cutouts.push_back(cutout.id);
        }
    }
    if (openings.isEmpty()) {
        return std::nullopt;
    }
    const auto after = carried(past.project, past.solved, openings, shiftBy(past.shift));
    return after ? attempt(past, record,
                           "Move all of " + listText(openings.cutouts) + " by " + lengthWords(past.project, past.by) +
                               " to where wall " + past.line + " stands; its sizes stay",
                           *after)
                 : std::nullopt;
}

std::optional<Remedy> facingWalls(const PastWall& past, std::size_t record) {
    std::vector<LineId> facing;
    for (const SolvedCutout& cutout : past.solved.cutouts) {
        for (const FacingSize& size : cutout.sizes) {
            const bool isFirst = size.first == past.line;
            if (!isFirst && size.second != past.line) {
                continue;
            }
            const LineId& other = isFirst ? size.second : size.first;
            if (!holdsLine(facing, other)) {
                facing.push_back(other);
            }
        }
    }
    if (facing.empty()) {
        return std::nullopt;
    }
    Picked picked;
    picked.lines = facing;
    picked.lines.push_back(past.line);
    const Project after = nudged(past.project, past.solved, picked, past.shift);
    return attempt(past, record,
                   "Move " + std::string(facing.size() == 1 ? "line " : "lines ") + listText(facing) + " by " +
                       lengthWords(past.project, past.by) + " along with " + past.line + ", which is laid where its wall stands",
                   carryCutouts(past.project, past.solved, after));
}

}  // namespace

std::vector<Remedy> mends(const Project& project, const Solved& solved, std::size_t record) {
    const Record& entry = project.record.at(record);
    const auto by = shortBy(project, solved, entry);
    if (!by || !isPast(*by) || isPassed(project.record, record)) {
        return {};
    }
    const LineId& id = entry.line->first;
    const PastWall past{project, solved, id, shiftOf(*findLine(solved, id), -*by), -*by};
    std::vector<Remedy> offers;
    for (const auto way : {wholeOpening, facingWalls}) {
        if (auto offer = way(past, record)) {
            offers.push_back(std::move(*offer));
            break;
        }
    }
    return offers;
}

}  // namespace kerfwall

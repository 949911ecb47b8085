// SPDX-License-Identifier: GPL-3.0-or-later
// Remedies on the drawing: lines moved, wishes changed, what cannot be solved taken away; declared in remedy_ways.h.
#include <algorithm>
#include <cctype>
#include <cmath>
#include <set>

#include "core/geometry/distance.h"
#include "core/geometry/marking.h"
#include "core/geometry/moving.h"
#include "core/geometry/solve.h"
#include "core/geometry/wanted_outline.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"
#include "core/shop/remedy_ways.h"
#include "core/shop/word_list.h"

namespace kerfwall {
namespace {

constexpr double kFine = 1e-6;           // mm: moved by what is said, on decimals a file shows as they are meant
constexpr double kAlong = 1e-6;          // sine under which a wall runs along an edge of what is wanted
constexpr double kFarthestAsked = 50;    // mm: a wall farther from the edge it cuts is another's
constexpr std::size_t kMostMoved = 8;    // walls moved in one remedy

/// The line moved square to itself by `by`, away from `from`.
Change movedAway(const Minded& minded, const SolvedLine& line, Point from, double by) {
    const Gap gap = gapBetween(from, straight(line.from, line.to));
    const Point way = leftOf(unit(line.to - line.from));
    const double side = dot(gap.second - from, way) >= 0 ? 1 : -1;
    Change change{"Move line " + line.id + " by " + lengthWords(minded.project, by),
                  moveLine(minded.project, minded.solved, line.id, Grip::Whole, gap.second,
                           gap.second + side * by * way, kFine)};
    change.movesLines = true;
    return change;
}

/// One way for each line of the finding, by each of `amounts`.
std::vector<Way> eachMovedAway(const Minded& minded, const std::vector<double>& amounts) {
    std::vector<Way> ways;
    std::set<LineId> seen;
    for (const LineId& id : minded.finding.lines) {
        const SolvedLine* line = findLine(minded.solved, id);
        if (!line || !minded.finding.at || !seen.insert(id).second) continue;
        Way way;
        for (const double amount : amounts) way.push_back(movedAway(minded, *line, *minded.finding.at, amount));
        ways.push_back(std::move(way));
    }
    return ways;
}

std::vector<double> amountsForBorder(const Minded& minded) {
    const Finding& finding = minded.finding;
    std::vector<double> amounts;
    for (const bool between : {true, false}) {
        const LimitPair limits = limitsOf("border-thin", minded.project, between);
        const double wish = std::max(limits.care.value_or(0), limits.stop.value_or(0));
        const double by = setAtLeast(minded.project, wish - finding.value.value_or(0));
        if (by > 0 && finding.limit && *finding.limit <= wish) amounts.push_back(by);
    }
    return amounts;
}

std::vector<double> amountsForNeck(const Minded& minded) {
    const double now = minded.finding.value.value_or(2 * minded.solved.bitRadius - 1);
    // A little over the size, or the disc lies on the border of fitting.
    constexpr double kOver = 0.2;
    std::vector<double> amounts;
    for (const double size : {2 * minded.solved.bitRadius, minded.solved.use.guide}) {
        if (size > now) amounts.push_back(setAtLeast(minded.project, size - now + kOver));
    }
    return amounts;
}

std::vector<Way> awayFromDoubt(const Minded& minded) {
    constexpr double kNear = 1.0;  // bit's diameters
    std::vector<Way> ways;
    for (const SolvedLine& line : minded.solved.lines) {
        const double off = gapBetween(*minded.finding.at, straight(line.from, line.to)).distance;
        if (!line.cut || off > kNear * 2 * minded.solved.bitRadius || ways.size() == 2) continue;
        const double by = setAtLeast(minded.project, 0.1);
        const Point aside = leftOf(unit(line.to - line.from));
        const Point at = gapBetween(*minded.finding.at, straight(line.from, line.to)).second;
        ways.push_back({movedAway(minded, line, at - aside, by), movedAway(minded, line, at + aside, by)});
    }
    return ways;
}

/// How far a wall stands from where it cuts what is wanted, positive into the waste; none where no edge is its own.
std::optional<double> strayOf(const Wall& wall, const std::vector<Point>& wanted, double offset) {
    const Point along = unit(wall.to - wall.from);
    const Point middle = 0.5 * (wall.from + wall.to);
    std::optional<double> least;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        const Point from = wanted[i];
        const Point run = wanted[(i + 1) % wanted.size()] - from;
        if (length(run) == 0 || std::abs(cross(unit(run), along)) > kAlong || dot(run, along) < 0) continue;
        // Both have the waste on their left: a wall stands `offset` to the right of its edge.
        const double stray = cross(along, middle - from) + offset;
        if (!least || std::abs(stray) < std::abs(*least)) least = stray;
    }
    return least && std::abs(*least) < kFarthestAsked ? least : std::nullopt;
}

/// The wall as its line lies in another answer.
Wall onLine(Wall wall, const SolvedLine& line) {
    wall.from = gapBetween(wall.from, straight(line.from, line.to)).second;
    wall.to = gapBetween(wall.to, straight(line.from, line.to)).second;
    return wall;
}

std::string lowered(std::string words) {
    words.front() = static_cast<char>(std::tolower(static_cast<unsigned char>(words.front())));
    return words;
}

/// Every wall of the cutout moved to where it cuts the edge that is wanted, one after the other: a line may carry others.
Way wallsForWish(const Minded& minded) {
    const auto cutout = std::ranges::find(minded.solved.cutouts, minded.finding.cutout, &SolvedCutout::id);
    if (cutout == minded.solved.cutouts.end() || !minded.project.cutouts[cutout->index].wanted) return {};
    const std::vector<Point> wanted = anticlockwise(minded.project.cutouts[cutout->index].wanted->outline);
    const double offset = (minded.solved.use.guide - minded.solved.use.cutter) / 2;
    Change change{"", minded.project};
    change.movesLines = true;
    std::vector<LineId> moved;
    Solved solved = minded.solved;
    double most = 0;
    for (const Wall& each : cutout->walls) {
        const SolvedLine* line = findLine(solved, each.line);
        if (!line || std::ranges::find(moved, each.line) != moved.end()) continue;
        const Wall wall = onLine(each, *line);
        const auto stray = wall.from == wall.to ? std::nullopt : strayOf(wall, wanted, offset);
        if (!stray || std::abs(*stray) < kOnLimit) continue;
        if (moved.size() == kMostMoved) return {};
        const Point way = -*stray * leftOf(unit(wall.to - wall.from));
        change.project = moveLine(change.project, solved, wall.line, Grip::Whole, {}, way, kFine);
        solved = solve(change.project);
        moved.push_back(wall.line);
        most = std::max(most, std::abs(*stray));
    }
    if (moved.empty()) return {};
    change.words = (moved.size() > 1 ? "Move lines " : "Move line ") + listText(moved) + " by up to " +
                   lengthWords(minded.project, most) + " to the size wanted";
    Way way{change};
    const Project carried = carryCutouts(minded.project, minded.solved, change.project);
    const Solved answer = solve(carried);
    for (Change& bored : boresForWish({carried, answer, minded.finding})) {
        way.push_back({change.words + "; " + lowered(bored.words), std::move(bored.project)});
    }
    return way;
}

bool isAt(Point seed, const Minded& minded) { return minded.finding.at && seed == *minded.finding.at; }

Change withoutSeed(const Minded& minded) {
    Change change{"Unmark the waste of cutout " + minded.finding.cutout + " at " +
                      placeWords(minded.project, *minded.finding.at),
                  minded.project};
    change.losesFaces = true;
    for (Cutout& cutout : change.project.cutouts) {
        if (cutout.id == minded.finding.cutout) std::erase_if(cutout.seeds, [&](Point p) { return isAt(p, minded); });
    }
    std::erase_if(change.project.cutouts, [](const Cutout& cutout) { return cutout.seeds.empty(); });
    return change;
}

Change withoutBore(const Minded& minded) {
    const std::vector<LineId>& lines = minded.finding.lines;
    Change change{"", minded.project};
    for (Cutout& cutout : change.project.cutouts) {
        if (cutout.id != minded.finding.cutout) continue;
        std::erase_if(cutout.corners, [&](const BoredCorner& bore) {
            const bool named = lines.size() == 2 && ((bore.first == lines[0] && bore.second == lines[1]) ||
                                                     (bore.first == lines[1] && bore.second == lines[0]));
            if (named) {
                change.words = "Leave out the bore of " + lengthWords(minded.project, bore.radius) + " radius at " +
                               listText({bore.first, bore.second});
            }
            return named;
        });
    }
    return change;
}

}  // namespace

std::vector<Way> moveWays(const Minded& minded) {
    const std::string& code = minded.finding.code;
    if (code == "border-thin") return eachMovedAway(minded, amountsForBorder(minded));
    if (code == "narrow") return eachMovedAway(minded, amountsForNeck(minded));
    if (code == "work-size") return {wallsForWish(minded)};
    if (code == "unsure" && minded.finding.at) return awayFromDoubt(minded);
    return {};
}

std::vector<Way> wishWays(const Minded& minded) {
    const Finding& finding = minded.finding;
    if (finding.severity != Severity::Note || (finding.code != "bush-corner" && finding.code != "corner-short")) return {};
    const auto cutout = std::ranges::find(minded.solved.cutouts, finding.cutout, &SolvedCutout::id);
    if (cutout == minded.solved.cutouts.end() || cutout->corners.empty()) return {};
    const auto corner = std::ranges::find_if(cutout->corners, [&](const Corner& each) { return each.point == finding.at; });
    if (corner == cutout->corners.end()) return {};
    const UseAnswer& use = minded.solved.use;
    const double left = use.cutter / 2 + std::max(0.0, corner->radius - use.guide / 2);
    Change change{"Ask for corners of " + lengthWords(minded.project, left) + " radius in the work", minded.project};
    change.project.cutouts[cutout->index].wanted->cornerRadius = left;
    return {{std::move(change)}};
}

std::vector<Way> dropWays(const Minded& minded) {
    if (minded.finding.code != "drawing") return {};
    std::vector<Way> ways;
    if (!minded.finding.cutout.empty() && minded.finding.at) {
        Change bore = withoutBore(minded);
        ways.push_back({bore.words.empty() ? withoutSeed(minded) : std::move(bore)});
        return ways;
    }
    const std::vector<LineId>& lines = minded.finding.lines;
    for (auto id = lines.rbegin(); id != lines.rend(); ++id) {
        Change change{"Take line " + *id + " away", withoutLine(minded.project, minded.solved, *id)};
        change.movesLines = true;
        change.losesFaces = true;
        ways.push_back({std::move(change)});
    }
    return ways;
}

}  // namespace kerfwall

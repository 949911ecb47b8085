// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/lay_outline.h"

#include <algorithm>
#include <utility>

#include "core/geometry/clip.h"
#include "core/geometry/solve.h"
#include "core/geometry/use_of.h"
#include "core/geometry/wanted_sides.h"
#include "core/shop/finding.h"
#include "core/shop/finding_words.h"
#include "core/shop/outline_draft.h"
#include "core/shop/wall_lines.h"

namespace kerfwall {
namespace {

using Refused = std::unexpected<WishRefusal>;

Refused refused(NoWish why, WishPart part, std::string sentence) {
    return Refused(WishRefusal{why, part, std::move(sentence), std::nullopt});
}

std::vector<std::optional<WallToLay>> wallsOf(const OutlineDraft& draft) {
    std::vector<std::optional<WallToLay>> walls;
    for (std::size_t i = 0; i < draft.walls.size(); ++i) {
        const WallToLay wall{draft.walls[i], draft.walls[(i + 1) % draft.walls.size()]};
        const bool isOff = draft.wish.isOpenBelow && wall.p.y < 0 && wall.q.y < 0;
        walls.push_back(isOff ? std::nullopt : std::optional(wall));
    }
    return walls;
}

WishPart directionOf(const WallToLay& wall) { return isLevel(wall) ? WishPart::Up : WishPart::Across; }

std::optional<Refused> wallClash(const OutlineDraft& draft, const Solved& solved, const WallToLay& wall) {
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const auto& face : cutout.faces) {
            if (!runsThroughFace(wall.p, wall.q, face)) continue;
            return refused(NoWish::RunsThrough, directionOf(wall),
                           "This " + draft.wish.name + "'s lines would run through cutout " + cutout.id +
                               "; place it clear of that, or level with it.");
        }
    }
    for (const SolvedLine& line : solved.lines) {
        const auto isOther = [&](const Kerf& kerf) { return kerf.side != wasteSide(line, wall); };
        if (!liesAt(line, wall) || !std::ranges::any_of(line.kerfs, isOther)) continue;
        return refused(NoWish::RunsThrough, directionOf(wall),
                       "Line " + line.id + " has its kerf on the other side; with one on both no wall is left. "
                       "Place the " + draft.wish.name + " a border further off.");
    }
    return std::nullopt;
}

std::optional<Refused> clash(const OutlineDraft& draft, const Solved& solved, const std::vector<std::vector<Point>>& faces) {
    const auto crosses = [&](const SolvedLine& line) {
        return line.cut && std::ranges::any_of(faces, [&](const auto& face) { return runsThroughFace(line.from, line.to, face); });
    };
    for (const SolvedLine& line : solved.lines) {
        if (!crosses(line)) continue;
        return refused(NoWish::RunsThrough, WishPart::Across,
                       "Line " + line.id + " would run through this " + draft.wish.name + "; place it clear of that line.");
    }
    for (const SolvedCutout& cutout : solved.cutouts) {
        const auto isIn = [&](const auto& face) { return isInside(cutout.drawn, polygonCentre(face)); };
        if (!std::ranges::any_of(faces, isIn)) continue;
        return refused(NoWish::RunsThrough, WishPart::Across,
                       "This " + draft.wish.name + " would lie in cutout " + cutout.id + "; place it beside that.");
    }
    for (const auto& wall : wallsOf(draft)) {
        if (!wall) continue;
        if (auto no = wallClash(draft, solved, *wall)) return no;
    }
    return std::nullopt;
}

std::string freeCutoutId(const Project& project, const std::string& first) {
    for (int number = 1;; ++number) {
        const std::string id = number == 1 ? first : first + std::to_string(number);
        if (std::ranges::none_of(project.cutouts, [&](const Cutout& cutout) { return cutout.id == id; })) return id;
    }
}

Cutout cutoutOf(const std::string& id, const OutlineDraft& draft, const std::vector<std::vector<Point>>& faces,
                const std::vector<LineId>& lines) {
    Cutout cutout;
    cutout.id = id;
    for (const auto& face : faces) cutout.seeds.push_back(onGrid(polygonCentre(face)));
    Wanted wanted;
    for (const Point corner : draft.wish.corners) wanted.outline.push_back(onGrid(corner));
    wanted.cornerRadius = draft.wish.cornerRadius;
    cutout.wanted = wanted;
    const std::size_t n = lines.size();
    for (std::size_t i = 0; draft.bore && i < n; ++i) {
        if (shareOfArc(draft, i) > 0) cutout.corners.push_back({lines[(i + n - 1) % n], lines[i], onGrid(*draft.bore), {}});
    }
    return cutout;
}

double widestKerf(const Solved& solved, const LineId& id) {
    double widest = 0;
    const SolvedLine* line = findLine(solved, id);
    for (const Kerf& kerf : line ? line->kerfs : std::vector<Kerf>{}) widest = std::max(widest, kerf.width);
    return widest;
}

// What solving the laid opening doubts; none: it is as it should be.
std::optional<Refused> doubtOf(const OutlineDraft& draft, const LaidWish& laid, std::size_t troublesBefore) {
    const Solved solved = solve(laid.project);
    if (solved.troubles.size() > troublesBefore) {
        return refused(NoWish::Unsure, WishPart::Across, "It cannot be laid here: " + solved.troubles.back().sentence);
    }
    const auto cutout = std::ranges::find(solved.cutouts, laid.cutout, &SolvedCutout::id);
    if (cutout == solved.cutouts.end()) {
        return refused(NoWish::Unsure, draft.wish.narrowPart, "What this " + draft.wish.name + " would become cannot be told.");
    }
    if (!cutout->lost.empty()) {
        return refused(NoWish::TooNarrow, draft.wish.narrowPart,
                       "Two sides lie on line " + cutout->lost.front().line + " with the waste on either side, and their "
                       "kerfs leave no wall; move one of them by more than " +
                           lengthWords(draft.project, widestKerf(solved, cutout->lost.front().line)) + ".");
    }
    if (!cutout->doubts.empty()) return refused(NoWish::Unsure, draft.wish.narrowPart, cutout->doubts.front().what);
    if (cutout->parts == 1 && !cutout->work.loops.empty()) return std::nullopt;
    return refused(NoWish::TooNarrow, draft.wish.narrowPart,
                   "The template would open by no more than " + lengthWords(draft.project, cutout->widest) +
                       " at its widest, or closes between; the trimming bit needs more than " +
                       lengthWords(draft.project, 2 * draft.trimRadius) + " all along.");
}

}  // namespace

double cornerLeft(const Project& project) {
    const UseAnswer use = useOf(project);
    return use.cutter / 2 + std::max(0.0, (trimBitOf(project).diameter - use.guide) / 2);
}

double wallOffset(const Project& project) {
    const UseAnswer use = useOf(project);
    return (use.guide - use.cutter) / 2;
}

std::expected<LaidWish, WishRefusal> layOutline(const Project& project, const WantedOutline& wish, int highest) {
    const OutlineDraft draft = draftOf(project, wish);
    if (auto no = cannotBeCut(draft)) return std::unexpected(*no);
    const auto faces = facesWithin(project.panel, draft.walls);
    const Solved solved = solve(project);
    if (const auto no = clash(draft, solved, faces)) return *no;

    const auto walls = wallsOf(draft);
    LaidWish laid{project, freeCutoutId(project, wish.cutout), draft.walls, {}, draft.opening, draft.goodBlank, draft.bore, draft.cornerLeft};
    const std::vector<LineId> ofSide = layWalls(laid.project, solved, walls, wish.isSymmetric, highest);
    for (const std::size_t i : layingOrder(walls)) laid.lines.push_back(ofSide[i]);
    laid.project.cutouts.push_back(cutoutOf(laid.cutout, draft, faces, ofSide));
    if (const auto no = doubtOf(draft, laid, solved.troubles.size())) return *no;
    return laid;
}

}  // namespace kerfwall

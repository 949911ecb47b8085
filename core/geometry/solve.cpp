// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/solve.h"

#include <algorithm>

#include "core/geometry/bites.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/facing_sizes.h"
#include "core/geometry/reach.h"
#include "core/geometry/proof.h"
#include "core/geometry/tolerance.h"
#include "core/geometry/use_of.h"
#include "core/geometry/widest_disc.h"
#include "core/geometry/work_opening.h"
#include "core/shop/laid_cuts.h"

namespace kerfwall {
namespace {

/// What is said where a gap lies on the border of a decision: which tool's diameter it is as wide as.
void doubtNearBorders(const World& world, const ArrangedCutout& cutout, double radius, const RolledOpening& rolled,
                      const std::string& tool, SolvedCutout& solved) {
    const auto gap = gapNearBorder(world, cutout, radius, rolled);
    if (!gap) return;
    solved.doubts.push_back({*gap, "a gap is within a millionth of a millimetre of " + tool +
                                       " diameter here; widen it or narrow it by 0.1 mm."});
}

std::vector<LostWall> lostWalls(const SolvedCutout& solved, const Arranged& arranged, const Project& project,
                                const std::vector<LaidKerf>& kerfs) {
    std::vector<LostWall> lost;
    for (const Wall& wall : solved.walls) {
        for (const LaidKerf& kerf : kerfs) {
            const ArrangedLine& line = arranged.lines[kerf.line];
            if (lineId(project, arranged, kerf.line) != wall.line || kerf.kerf.side == wall.waste) continue;
            double from = dot(wall.from - line.from, line.direction);
            double to = dot(wall.to - line.from, line.direction);
            if (from > to) std::swap(from, to);
            for (const auto& [a, b] : kerf.below) {
                const double low = std::max(from, a);
                const double high = std::min(to, b);
                if (high - low < kShortestWall) continue;
                lost.push_back({wall.line, line.from + low * line.direction, line.from + high * line.direction});
            }
        }
    }
    return lost;
}

void solveWork(const World& world, const ArrangedCutout& cutout, const Border& border, const UseAnswer& use,
               double bitRadius, SolvedCutout& solved) {
    const RolledOpening work = workOpening(world, cutout, border, use, bitRadius);
    solved.work = work.opening.outline;
    for (const Doubt& doubt : work.opening.doubts) {
        if (std::ranges::find(solved.doubts, doubt) == solved.doubts.end()) solved.doubts.push_back(doubt);
    }
    if (use.guide != 2 * bitRadius) {
        doubtNearBorders(world, cutout, use.guide / 2, work, "the bush's or bearing's", solved);
    }
}

SolvedCutout solveCutout(const World& world, const ArrangedCutout& cutout, const Border& border,
                         const UseAnswer& use, double bitRadius) {
    SolvedCutout solved;
    solved.index = cutout.index;
    solved.id = world.project.cutouts[cutout.index].id;
    solved.open = border.open;
    solved.drawnArea = cutout.area;
    solved.drawn = border.drawn;
    for (const ArrangedFace& face : cutout.faces) solved.faces.push_back(face.corners);
    solved.walls = border.walls;
    solved.corners = border.corners;
    const WidestDisc widest = widestDisc(border.drawn);
    solved.widest = widest.diameter;
    solved.widestAt = widest.centre;
    solved.sizes = facingSizes(solved);
    solved.lost = lostWalls(solved, world.arranged, world.project, world.kerfs);

    const RolledOpening rolled = openingWithin(world, cutout, border, bitRadius, bitRadius);
    const Opening& opening = rolled.opening;
    solved.opening = opening.outline;
    solved.parts = opening.room.parts;
    solved.mouthClosed = solved.open && opening.room.parts > 0 && !opening.room.leaves;
    solved.doubts = opening.doubts;
    readBites(solved, opening, world.project, world.arranged, world.kerfs, bitRadius);
    doubtNearBorders(world, cutout, bitRadius, rolled, "the bit's", solved);
    if (worksAsTrimmed(use, bitRadius)) {
        solved.work = opening.outline;
    } else {
        solveWork(world, cutout, border, use, bitRadius, solved);
    }
    std::ranges::copy(doubtsAbout(solved, bitRadius), std::back_inserter(solved.doubts));
    return solved;
}

std::vector<LineMark> lineMarks(const ArrangedLine& line, const std::vector<LaidKerf>& kerfs, std::size_t index) {
    std::vector<LineMark> marks;
    for (const EdgeMark& mark : line.marks) {
        LineMark made{mark, false, false};
        const Point along = edgeHeading(mark.edge);
        for (const LaidKerf& kerf : kerfs) {
            if (kerf.line != index) continue;
            const Point waste = kerf.kerf.side == Side::Left ? leftOf(line.direction) : -1.0 * leftOf(line.direction);
            (dot(waste, along) > 0 ? made.wasteToEnd : made.wasteToStart) = true;
        }
        marks.push_back(made);
    }
    return marks;
}

std::vector<SolvedLine> solvedLines(const Project& project, const Arranged& arranged,
                                    const std::vector<LaidKerf>& kerfs) {
    std::vector<SolvedLine> lines;
    for (std::size_t i = 0; i < arranged.lines.size(); ++i) {
        const ArrangedLine& line = arranged.lines[i];
        SolvedLine solved{project.lines[line.index].id, line.index, line.from, line.to, line.cut,
                          lineMarks(line, kerfs, i), {}};
        for (const LaidKerf& kerf : kerfs) {
            if (kerf.line == i) solved.kerfs.push_back(kerf.kerf);
        }
        lines.push_back(std::move(solved));
    }
    return lines;
}

/// Everything that hangs on how the kerfs are cut.
void answerWith(const LaidCuts& cuts, Solved& solved, const Project& project, const Arranged& arranged,
                const std::vector<Border>& borders) {
    World world{project, arranged, cuts.kerfs, 0};
    for (const LaidKerf& kerf : cuts.kerfs) world.widestKerf = std::max(world.widestKerf, kerf.kerf.width);
    solved.lines = solvedLines(project, arranged, cuts.kerfs);
    solved.leastSetups = cuts.leastSetups;
    solved.cutouts.clear();
    for (std::size_t i = 0; i < arranged.cutouts.size(); ++i) {
        solved.cutouts.push_back(solveCutout(world, arranged.cutouts[i], borders[i], solved.use, solved.bitRadius));
    }
}

/// Solved with all kerfs through that the project leaves to the program; then again with those stopped that do
/// harm, as long as there are such. Each round stops one more, so it ends.
void answer(Solved& solved, const Project& project, const Arranged& arranged, const std::vector<Border>& borders) {
    Stops stops{saidToStop(project, arranged), {}};
    while (true) {
        const LaidCuts cuts = layCuts(project, arranged, borders, stops, solved);
        answerWith(cuts, solved, project, arranged, borders);
        const std::set<LineSide> more = sidesToStop(project, arranged, borders, stops, cuts, solved);
        if (more.empty()) return;
        stops.byItself.insert(more.begin(), more.end());
    }
}

}  // namespace

Solved solve(const Project& project) {
    Solved solved;
    solved.kerfDepth = kerfDepthOf(project);
    solved.bitRadius = trimBitOf(project).diameter / 2;
    solved.use = useOf(project);

    Arranged arranged = arrange(project);
    solved.troubles = std::move(arranged.troubles);
    solved.strays = std::move(arranged.strays);
    std::vector<Border> borders;
    std::vector<ArrangedCutout> sound;
    for (ArrangedCutout& cutout : arranged.cutouts) {
        Border border = borderOf(project, arranged, cutout, solved.bitRadius);
        std::ranges::copy(border.troubles, std::back_inserter(solved.troubles));
        if (!border.troubles.empty()) continue;
        borders.push_back(std::move(border));
        sound.push_back(std::move(cutout));
    }
    arranged.cutouts = std::move(sound);

    answer(solved, project, arranged, borders);
    return solved;
}

std::optional<std::pair<Point, Point>> runOf(const Solved& solved, const LineId& id) {
    if (const SolvedLine* line = findLine(solved, id)) return std::pair{line->from, line->to};
    const auto stray = std::ranges::find(solved.strays, id, &StrayLine::id);
    if (stray == solved.strays.end()) return std::nullopt;
    return std::pair{stray->from, stray->to};
}

const DrawingTrouble* troubleOf(const Solved& solved, const LineId& id) {
    if (findLine(solved, id)) return nullptr;
    const auto found = std::ranges::find_if(solved.troubles, [&](const DrawingTrouble& trouble) {
        return trouble.cutout.empty() && std::ranges::find(trouble.lines, id) != trouble.lines.end();
    });
    return found == solved.troubles.end() ? nullptr : &*found;
}

const SolvedLine* findLine(const Solved& solved, const LineId& id) {
    const auto found = std::ranges::find(solved.lines, id, &SolvedLine::id);
    return found == solved.lines.end() ? nullptr : &*found;
}

}  // namespace kerfwall

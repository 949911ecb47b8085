// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/solve.h"

#include <algorithm>

#include "core/geometry/bites.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/facing_sizes.h"
#include "core/geometry/opening.h"
#include "core/geometry/tolerance.h"
#include "core/geometry/use_of.h"
#include "core/geometry/widest_disc.h"
#include "core/shop/saw_choice.h"

namespace kerfwall {
namespace {

/// The world round a cutout that is looked at. From inside it a disc comes no farther out than its radius
/// and meets nothing farther than its diameter, unless a kerf is wide enough to roll away in.
Box frameRound(const Outline& drawn, const Panel& panel, double radius, bool whole) {
    // An odd fraction keeps the frame off everything that is drawn on a grid.
    constexpr double kOffGrid = 1.0731913;
    const double margin = 2 * radius + kOffGrid;
    Box box = whole ? Box{{0, 0}, {panel.width, panel.height}} : drawn.bounds;
    box.low = box.low - Point{margin, margin};
    box.high = box.high + Point{margin, margin};
    // Past an edge a disc must be able to pass along it.
    if (box.low.x < 0) box.low.x = -margin;
    if (box.low.y < 0) box.low.y = -margin;
    if (box.high.x > panel.width) box.high.x = panel.width + margin;
    if (box.high.y > panel.height) box.high.y = panel.height + margin;
    return box;
}

struct World {
    const Project& project;
    const Arranged& arranged;
    const std::vector<LaidKerf>& kerfs;
    double widestKerf = 0;
};

/// An opening with the rim its disc rolled along.
struct RolledOpening {
    VoidRim rim;
    Opening opening;
};

/// The opening that a disc of radius `room` leaves, looked at as far as it needs: where a disc of radius
/// `farther` is to roll in that opening next, by so much farther.
RolledOpening openingWithin(const World& world, const ArrangedCutout& cutout, const Border& border, KerfHeight height,
                            double room, double sweep, double farther = 0) {
    const double narrowest = farther > 0 ? std::min(room, farther) : room;
    const bool rollsAway = world.widestKerf > 2 * (narrowest - kDoubt);
    // Out of an open cutout the disc goes round the panel and comes in wherever there is a mouth.
    for (const bool whole : {rollsAway || border.open, true}) {
        const Box frame = frameRound(border.drawn, world.project.panel, room + farther, whole);
        RolledOpening rolled;
        rolled.rim = voidRim(world.project, world.arranged, cutout, border, world.kerfs, height, frame);
        rolled.opening = openingOf(rolled.rim, room, sweep, cutout.faces, world.project, world.arranged);
        if (whole || !(rolled.opening.room.reachedFrame || rolled.opening.room.leaves)) return rolled;
    }
    return {};
}

/// The opening in the work. Where the guide is smaller than the trimming bit it follows what that left.
Opening workOf(const World& world, const ArrangedCutout& cutout, const Border& border, const UseAnswer& use,
               double bitRadius) {
    const double guide = use.guide / 2;
    const double cutter = use.cutter / 2;
    const KerfHeight height = use.rides == Rides::Kerfs ? KerfHeight::InBand : KerfHeight::Below;
    if (guide >= bitRadius || height == KerfHeight::InBand) {
        return openingWithin(world, cutout, border, height, guide, cutter).opening;
    }
    const Opening trimmed = openingWithin(world, cutout, border, height, bitRadius, bitRadius, guide).opening;
    // Roll again, in what is trimmed. Its rounds are nobody's wall: they count as bores.
    VoidRim again;
    again.rim = trimmed.swept;
    again.doubts = trimmed.doubts;
    again.sides = {{VoidSide::Kind::Bore, 0, 0, Edge::Bottom}};
    for (Curve& curve : again.rim.curves) curve.tag = 0;
    return openingOf(again, guide, cutter, cutout.faces, world.project, world.arranged);
}

/// Rolls discs a nanometre smaller and larger: where that changes the room they have by more than its rim
/// times the nanometre, or its rim by a thousandth of a millimetre (a slot as wide as the bit gives room without
/// area), a gap lies on the border of a decision.
void doubtNearBorders(const World& world, const ArrangedCutout& cutout, double bitRadius, const RolledOpening& rolled,
                      SolvedCutout& solved) {
    const Opening& opening = rolled.opening;
    for (const double shift : {-kDoubt, kDoubt}) {
        const Room other = roomOf(rolled.rim, bitRadius + shift, cutout.faces, world.project.panel);
        const double allowed = 1e-4 + 10 * kDoubt * (opening.room.perimeter + other.perimeter);
        constexpr double kRimChange = 0.001;
        const bool steady = std::abs(other.area - opening.room.area) <= allowed &&
                            std::abs(other.perimeter - opening.room.perimeter) <= kRimChange;
        if (steady && other.parts == opening.room.parts) continue;
        solved.doubts.push_back({solved.widestAt,
                                 "a gap in this cutout is within a millionth of a millimetre of the bit's diameter;"
                                 " widen it or narrow it by 0.1 mm."});
        return;
    }
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

    const RolledOpening rolled = openingWithin(world, cutout, border, KerfHeight::Below, bitRadius, bitRadius);
    const Opening& opening = rolled.opening;
    solved.opening = opening.outline;
    solved.parts = opening.room.parts;
    solved.mouthClosed = solved.open && opening.room.parts > 0 && !opening.room.leaves;
    solved.doubts = opening.doubts;
    readBites(solved, opening, world.project, world.arranged, world.kerfs, bitRadius);
    const bool worksAsTrimmed =
        use.rides != Rides::Kerfs && use.guide == use.cutter && use.guide == 2 * bitRadius;
    if (worksAsTrimmed) {
        solved.work = opening.outline;
    } else {
        const Opening work = workOf(world, cutout, border, use, bitRadius);
        solved.work = work.outline;
        std::ranges::copy(work.doubts, std::back_inserter(solved.doubts));
    }
    doubtNearBorders(world, cutout, bitRadius, rolled, solved);
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

}  // namespace

Solved solve(const Project& project) {
    Solved solved;
    solved.kerfDepth = kerfDepthOf(project);
    solved.bitRadius = trimBitOf(project).diameter / 2;
    solved.use = useOf(project);

    Arranged arranged = arrange(project);
    solved.troubles = std::move(arranged.troubles);
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

    std::vector<LineRun> runs;
    for (const ArrangedLine& line : arranged.lines) runs.push_back({line.index, line.from, line.to});
    const std::vector<LaidKerf> kerfs = layKerfs(project, arranged, borders, chooseSaws(project, runs));
    World world{project, arranged, kerfs, 0};
    for (const LaidKerf& kerf : kerfs) world.widestKerf = std::max(world.widestKerf, kerf.kerf.width);

    solved.lines = solvedLines(project, arranged, kerfs);
    for (std::size_t i = 0; i < arranged.cutouts.size(); ++i) {
        solved.cutouts.push_back(solveCutout(world, arranged.cutouts[i], borders[i], solved.use, solved.bitRadius));
    }
    return solved;
}

const SolvedLine* findLine(const Solved& solved, const LineId& id) {
    const auto found = std::ranges::find(solved.lines, id, &SolvedLine::id);
    return found == solved.lines.end() ? nullptr : &*found;
}

}  // namespace kerfwall

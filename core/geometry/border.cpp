// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/border.h"

#include <algorithm>

#include "core/geometry/angle.h"
#include "core/geometry/edge_name.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

/// The direction of a border run: its line's own, sharp however short the run is.
Point directionOf(const BorderRun& run, const Arranged& arranged) {
    if (!run.on.line) return unit(run.to - run.from);
    const Point along = arranged.lines[*run.on.line].direction;
    return run.alongLine ? along : -1.0 * along;
}

const BoredCorner* boreAt(const Cutout& cutout, const LineId& a, const LineId& b) {
    const auto found = std::ranges::find_if(cutout.corners, [&](const BoredCorner& bore) {
        return (bore.first == a && bore.second == b) || (bore.first == b && bore.second == a);
    });
    return found == cutout.corners.end() ? nullptr : &*found;
}

/// Where two runs meet. With a run too short to count between them that is where their lines cross, or, if those
/// run so flat that they cross elsewhere, the middle of that run.
Point meetingOf(Point end, Point in, Point start, Point out) {
    if (end == start) return end;
    const Point middle = 0.5 * (end + start);
    const double turned = cross(in, out);
    if (turned == 0) return middle;
    const Point met = end + (cross(start - end, out) / turned) * in;
    return distance(met, middle) < 10 * kShortestWall ? met : middle;
}

Corner cornerBetween(const Project& project, const Arranged& arranged, const BorderRun& first,
                     const BorderRun& second, const Cutout& cutout, double bitRadius) {
    Corner corner;
    corner.first = lineId(project, arranged, *first.on.line);
    corner.second = lineId(project, arranged, *second.on.line);
    const Point in = directionOf(first, arranged);
    const Point out = directionOf(second, arranged);
    const double turned = cross(in, out);
    corner.point = meetingOf(first.to, in, second.from, out);
    corner.angle = 180 - degrees(std::atan2(turned, dot(in, out)));
    if (corner.angle >= 180) return corner;
    corner.radius = bitRadius;
    if (const BoredCorner* bore = boreAt(cutout, corner.first, corner.second)) {
        corner.boreRadius = bore->radius;
        if (bore->radius > bitRadius) {
            corner.radius = bore->radius;
            corner.regime = Regime::Bored;
        }
    }
    const double back = tangentLength(corner.radius, corner.angle);
    corner.firstTangent = corner.point - back * in;
    corner.secondTangent = corner.point + back * out;
    corner.shortBy = corner.radius / std::sin(radians(corner.angle) / 2) - corner.radius;
    return corner;
}

OutlineLoop drawnLoop(const Project& project, const Arranged& arranged, const std::vector<BorderRun>& runs) {
    OutlineLoop loop;
    for (const BorderRun& run : runs) {
        OutlinePiece piece;
        piece.from = run.from;
        piece.to = run.to;
        piece.on = run.on.line ? lineId(project, arranged, *run.on.line) : std::string(edgeName(run.on.edge));
        loop.push_back(std::move(piece));
    }
    // A run too short to count leaves a gap: the neighbours meet at its middle.
    for (std::size_t i = 0; i < loop.size(); ++i) {
        OutlinePiece& after = loop[(i + 1) % loop.size()];
        if (loop[i].to == after.from) continue;
        const Point middle = 0.5 * (loop[i].to + after.from);
        loop[i].to = middle;
        after.from = middle;
    }
    return loop;
}

void addLoop(Border& border, const Project& project, const Arranged& arranged, const std::vector<BorderRun>& runs,
             const Cutout& cutout, double bitRadius) {
    const std::size_t firstWall = border.walls.size();
    std::vector<std::optional<std::size_t>> wallOf(runs.size());
    for (std::size_t i = 0; i < runs.size(); ++i) {
        if (!runs[i].on.line) {
            border.open = true;
            continue;
        }
        wallOf[i] = border.walls.size();
        border.walls.push_back({lineId(project, arranged, *runs[i].on.line), runs[i].from, runs[i].to,
                                runs[i].alongLine ? Side::Left : Side::Right, {}, {}});
    }
    for (std::size_t i = 0; i < runs.size() && border.walls.size() > firstWall; ++i) {
        const std::size_t after = (i + 1) % runs.size();
        if (!wallOf[i] || !wallOf[after] || i == after) continue;
        border.walls[*wallOf[i]].endCorner = border.corners.size();
        border.walls[*wallOf[after]].startCorner = border.corners.size();
        border.corners.push_back(cornerBetween(project, arranged, runs[i], runs[after], cutout, bitRadius));
    }
}

}  // namespace

double tangentLength(double radius, double angle) { return radius / std::tan(radians(angle) / 2); }

Border borderOf(const Project& project, const Arranged& arranged, const ArrangedCutout& arrangedCutout,
                double bitRadius) {
    const Cutout& cutout = project.cutouts[arrangedCutout.index];
    Border border;
    std::vector<OutlineLoop> loops;
    for (const auto& runs : arrangedCutout.loops) {
        if (runs.size() > 1) loops.push_back(drawnLoop(project, arranged, runs));
        addLoop(border, project, arranged, runs, cutout, bitRadius);
    }
    border.drawn = makeOutline(std::move(loops));
    for (std::size_t i = 0; i < cutout.corners.size(); ++i) {
        const BoredCorner& bore = cutout.corners[i];
        const bool met = std::ranges::any_of(border.corners, [&](const Corner& corner) {
            return corner.angle < 180 && boreAt(cutout, corner.first, corner.second) == &bore;
        });
        if (met) continue;
        border.troubles.push_back({"/cutouts/" + std::to_string(arrangedCutout.index) + "/corners/" + std::to_string(i),
                                   "lines " + bore.first + " and " + bore.second + " do not meet at an outward corner of"
                                   " cutout " + cutout.id + "; name two walls that meet there under 180 degrees.",
                                   cutout.seeds.empty() ? Point{} : cutout.seeds.front(), {bore.first, bore.second},
                                   cutout.id});
    }
    return border;
}

}  // namespace kerfwall

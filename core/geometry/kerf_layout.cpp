// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/kerf_layout.h"

#include <algorithm>

#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

double along(const ArrangedLine& line, Point place) { return dot(place - line.from, line.direction); }

WallEnd endAt(const Border& border, const ArrangedLine& line, const std::optional<std::size_t>& corner,
              Point wallEnd, bool arrives) {
    if (!corner) return {along(line, wallEnd), true, false};
    const Corner& met = border.corners[*corner];
    if (met.angle >= 180) return {along(line, wallEnd), false, false};
    return {along(line, arrives ? met.firstTangent : met.secondTangent), false, met.regime == Regime::Bored};
}

std::vector<WallOnLine> wallsOn(std::size_t lineIndex, Side side, const Project& project, const Arranged& arranged,
                                const std::vector<Border>& borders) {
    const ArrangedLine& line = arranged.lines[lineIndex];
    const LineId& id = project.lines[line.index].id;
    std::vector<WallOnLine> found;
    for (std::size_t c = 0; c < borders.size(); ++c) {
        for (const Wall& wall : borders[c].walls) {
            if (wall.line != id || wall.waste != side) continue;
            WallOnLine on{c, along(line, wall.from), along(line, wall.to),
                          endAt(borders[c], line, wall.startCorner, wall.from, false),
                          endAt(borders[c], line, wall.endCorner, wall.to, true)};
            // With the waste on its right the border runs against the line.
            if (side == Side::Right) {
                std::swap(on.from, on.to);
                std::swap(on.low, on.high);
            }
            found.push_back(on);
        }
    }
    std::ranges::sort(found, {}, &WallOnLine::from);
    return found;
}

/// True where the line stays inside the cutout from one wall's end to the next one's beginning.
bool staysInside(const WallOnLine& a, const WallOnLine& b, std::size_t lineIndex, const Arranged& arranged) {
    if (a.cutout != b.cutout) return false;
    Spans gap{{a.to, b.from}};
    for (const InnerRun& run : arranged.cutouts[a.cutout].inner) {
        if (run.line != lineIndex) continue;
        const ArrangedLine& line = arranged.lines[lineIndex];
        takeOut(gap, along(line, run.from) - kDoubt, along(line, run.to) + kDoubt);
    }
    return gap.empty();
}

LaidKerf throughKerf(const std::vector<WallOnLine>& walls, double length) {
    LaidKerf laid;
    laid.kerf.fullTo = laid.kerf.surfaceTo = length;
    laid.inBand = {{-kPastThePanel, kPastThePanel}};
    for (const WallOnLine& wall : walls) {
        addSpan(laid.below, wall.low.bored ? wall.low.at : -kPastThePanel,
                wall.high.bored ? wall.high.at : kPastThePanel);
    }
    // From a bored corner's point to its tangent the round stays whole, whatever another wall of the line asks.
    for (const WallOnLine& wall : walls) {
        if (wall.low.bored) takeOut(laid.below, wall.from, wall.low.at);
        if (wall.high.bored) takeOut(laid.below, wall.high.at, wall.to);
    }
    return laid;
}

LaidKerf stoppedKerf(const WallEnd& low, const WallEnd& high, double length, double depth, double blade) {
    constexpr double kBearingAboveFloor = 1;
    const double runOut = reachOfRound(blade, depth, 0);
    const double reach = reachOfRound(blade, depth, std::max(0.0, depth - kBearingAboveFloor));
    double from = low.open ? 0 : low.at;
    double to = high.open ? length : high.at;
    if (from > to) {
        // Arcs that overlap share the middle; at the panel's edge there is no arc to share with.
        const double met = low.open ? to : high.open ? from : (from + to) / 2;
        from = to = met;
    }
    LaidKerf laid;
    laid.kerf.stopped = true;
    laid.kerf.fullFrom = std::clamp(from, 0.0, length);
    laid.kerf.fullTo = std::clamp(to, 0.0, length);
    laid.kerf.surfaceFrom = low.open ? 0 : std::clamp(from - runOut, 0.0, length);
    laid.kerf.surfaceTo = high.open ? length : std::clamp(to + runOut, 0.0, length);
    const auto counts = [&](bool stopAtBores) {
        const double a = low.open ? -kPastThePanel : from - (low.bored && stopAtBores ? 0 : reach);
        const double b = high.open ? kPastThePanel : to + (high.bored && stopAtBores ? 0 : reach);
        return Spans{{a, b}};
    };
    laid.below = counts(true);
    laid.inBand = counts(false);
    return laid;
}

/// The walls of one side, parted where the line leaves the cutout between them.
std::vector<std::vector<WallOnLine>> partedWalls(const std::vector<WallOnLine>& walls, std::size_t line,
                                                 const Arranged& arranged) {
    std::vector<std::vector<WallOnLine>> runs;
    for (const WallOnLine& wall : walls) {
        if (runs.empty() || !staysInside(runs.back().back(), wall, line, arranged)) runs.emplace_back();
        runs.back().push_back(wall);
    }
    return runs;
}

}  // namespace

double reachOfRound(double bladeDiameter, double kerfDepth, double z) {
    const double radius = bladeDiameter / 2;
    const double level = radius - kerfDepth + z;
    return std::sqrt(std::max(0.0, (radius - level) * (radius + level)));
}

std::set<LineSide> saidToStop(const Project& project, const Arranged& arranged) {
    std::set<LineSide> stopped;
    for (std::size_t i = 0; i < arranged.lines.size(); ++i) {
        if (project.lines[arranged.lines[i].index].extent != Extent::Stopped) continue;
        stopped.insert({i, Side::Left});
        stopped.insert({i, Side::Right});
    }
    return stopped;
}

std::vector<KerfRun> kerfRuns(const Project& project, const Arranged& arranged, const std::vector<Border>& borders,
                              const std::set<LineSide>& stopped) {
    std::vector<KerfRun> runs;
    for (std::size_t i = 0; i < arranged.lines.size(); ++i) {
        const ArrangedLine& line = arranged.lines[i];
        if (!line.cut) continue;
        for (const Side side : {Side::Left, Side::Right}) {
            const LineSide on{i, side};
            const auto walls = wallsOn(i, side, project, arranged, borders);
            if (walls.empty()) continue;
            const double length = distance(line.from, line.to);
            if (!stopped.contains(on)) {
                runs.push_back({on, false, length, walls});
                continue;
            }
            for (auto& parted : partedWalls(walls, i, arranged)) {
                const bool goesThrough = parted.front().low.open && parted.back().high.open;
                runs.push_back({on, !goesThrough, length, std::move(parted)});
            }
        }
    }
    return runs;
}

LaidKerf laidKerf(const Project& project, const KerfRun& run, std::optional<std::size_t> saw) {
    constexpr double kKerfWithoutSaw = 3.2;
    const Bench& bench = benchOf(project);
    const double depth = kerfDepthOf(project);
    const Saw* like = saw ? &bench.saws[*saw] : bench.saws.empty() ? nullptr : &bench.saws.front();
    const double blade = like ? like->blade : stockSaw(SawKind::GuideRail).blade;
    LaidKerf laid = run.stopped ? stoppedKerf(run.walls.front().low, run.walls.back().high, run.length, depth, blade)
                                : throughKerf(run.walls, run.length);
    laid.line = run.on.line;
    laid.kerf.side = run.on.side;
    laid.kerf.saw = saw;
    laid.kerf.width = like ? like->kerf : kKerfWithoutSaw;
    laid.kerf.depth = depth;
    return laid;
}

std::vector<LaidKerf> layKerfs(const Project& project, const std::vector<KerfRun>& runs,
                               const std::vector<std::optional<std::size_t>>& saws) {
    std::vector<LaidKerf> laid;
    laid.reserve(runs.size());
    for (std::size_t i = 0; i < runs.size(); ++i) laid.push_back(laidKerf(project, runs[i], saws[i]));
    return laid;
}

}  // namespace kerfwall

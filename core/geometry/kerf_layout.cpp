// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/kerf_layout.h"

#include <algorithm>

#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

/// What one end of a wall asks of its kerf.
struct WallEnd {
    double at = 0;    ///< where its full depth must reach, mm along the line
    bool open = false;   ///< at the panel's edge
    bool bored = false;  ///< at a bore larger than the bit: the kerf counts no further in an outline
};

/// A wall seen along its line: `low` before `high`.
struct WallOnLine {
    std::size_t cutout = 0;
    double from = 0;
    double to = 0;
    WallEnd low;
    WallEnd high;
};

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

std::vector<LaidKerf> kerfsOfSide(const std::vector<WallOnLine>& walls, std::size_t lineIndex, const Project& project,
                                  const Arranged& arranged, double depth, double blade) {
    const ArrangedLine& line = arranged.lines[lineIndex];
    const double length = distance(line.from, line.to);
    if (project.lines[line.index].extent != Extent::Stopped) return {throughKerf(walls, length)};
    std::vector<LaidKerf> laid;
    for (std::size_t first = 0; first < walls.size();) {
        std::size_t last = first;
        while (last + 1 < walls.size() && staysInside(walls[last], walls[last + 1], lineIndex, arranged)) ++last;
        const bool through = walls[first].low.open && walls[last].high.open;
        const auto shared = std::vector<WallOnLine>(walls.begin() + static_cast<std::ptrdiff_t>(first),
                                                    walls.begin() + static_cast<std::ptrdiff_t>(last) + 1);
        laid.push_back(through ? throughKerf(shared, length)
                               : stoppedKerf(walls[first].low, walls[last].high, length, depth, blade));
        first = last + 1;
    }
    return laid;
}

}  // namespace

double reachOfRound(double bladeDiameter, double kerfDepth, double z) {
    const double radius = bladeDiameter / 2;
    const double level = radius - kerfDepth + z;
    return std::sqrt(std::max(0.0, (radius - level) * (radius + level)));
}

std::vector<LaidKerf> layKerfs(const Project& project, const Arranged& arranged, const std::vector<Border>& borders,
                               const std::vector<std::optional<std::size_t>>& saws) {
    const Bench& bench = benchOf(project);
    const double depth = kerfDepthOf(project);
    constexpr double kKerfWithoutSaw = 3.2;
    std::vector<LaidKerf> laid;
    for (std::size_t i = 0; i < arranged.lines.size(); ++i) {
        if (!arranged.lines[i].cut) continue;
        const Saw* saw = saws[i] ? &bench.saws[*saws[i]] : nullptr;
        const Saw* first = bench.saws.empty() ? nullptr : &bench.saws.front();
        const Saw* like = saw ? saw : first;
        for (const Side side : {Side::Left, Side::Right}) {
            const auto walls = wallsOn(i, side, project, arranged, borders);
            if (walls.empty()) continue;
            const double blade = like ? like->blade : stockSaw(SawKind::GuideRail).blade;
            for (LaidKerf& kerf : kerfsOfSide(walls, i, project, arranged, depth, blade)) {
                kerf.line = i;
                kerf.kerf.side = side;
                kerf.kerf.saw = saws[i];
                kerf.kerf.width = like ? like->kerf : kKerfWithoutSaw;
                kerf.kerf.depth = depth;
                laid.push_back(std::move(kerf));
            }
        }
    }
    return laid;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/bench_layouts.h"

#include <cmath>
#include <numbers>
#include <random>

#include "tests/oracle/rough_faces.h"

namespace kerfwall::bench {
namespace {

double tenth(double mm) { return std::round(mm * 10) / 10; }

Project emptyProject(double width, double height) {
    Project project;
    project.panel.width = width;
    project.panel.height = height;
    project.panel.thickness = 18;
    project.kerfDepth = 6;
    Saw saw;
    saw.id = "rail";
    saw.kind = SawKind::GuideRail;
    saw.kerf = 2.2;
    saw.blade = 160;
    saw.railLength = 3200;
    Bench tools;
    tools.saws.push_back(saw);
    tools.trimBit = TrimBit{};
    project.bench = tools;
    return project;
}

// A line `far` mm from `c` in direction `turn` (radians), square to it.
std::size_t lay(Project& project, Point c, double far, double turn) {
    const Point p{tenth(c.x + far * std::cos(turn)), tenth(c.y + far * std::sin(turn))};
    LayoutLine line;
    line.id = "L" + std::to_string(project.lines.size() + 1);
    line.saw = "rail";
    line.extent = Extent::Through;
    line.place = ByPoints{p, {tenth(p.x - 200 * std::sin(turn)), tenth(p.y + 200 * std::cos(turn))}};
    project.lines.push_back(line);
    return project.lines.size() - 1;
}

void mark(Project& project, Point c, const std::vector<std::size_t>& own, std::size_t most) {
    Cutout cutout;
    cutout.id = "cut" + std::to_string(project.cutouts.size() + 1);
    cutout.seeds = oracle::seedsGrown(project, c, own, most);
    project.cutouts.push_back(cutout);
}

}  // namespace

Project windows(int lines) {
    const int count = lines / 4;
    const int columns = static_cast<int>(std::ceil(std::sqrt(count)));
    const int rows = (count + columns - 1) / columns;
    Project project = emptyProject(120.0 * columns + 60, 120.0 * rows + 60);
    std::mt19937_64 engine(7);
    std::vector<std::pair<Point, std::vector<std::size_t>>> all;
    for (int i = 0; i < count; ++i) {
        const Point c{tenth(90 + 120.0 * (i % columns)), tenth(90 + 120.0 * (i / columns))};
        std::vector<std::size_t> own;
        for (int side = 0; side < 4; ++side) {
            const double askew = static_cast<double>(engine() % 61) / 10 - 3;
            const double far = 28 + static_cast<double>(engine() % 120) / 10;
            own.push_back(lay(project, c, far, side * std::numbers::pi / 2 + askew * std::numbers::pi / 180));
        }
        all.emplace_back(c, own);
    }
    for (const auto& [c, own] : all) mark(project, c, own, 400);
    return project;
}

Project roundCutout(int lines) {
    const double radius = 40 + 6.0 * lines;
    Project project = emptyProject(tenth(2 * radius + 200), tenth(2 * radius + 200));
    std::mt19937_64 engine(11);
    const Point c{tenth(radius + 100), tenth(radius + 100)};
    for (int i = 0; i < lines; ++i) {
        const double wander = static_cast<double>(engine() % 21) / 10 - 1;
        lay(project, c, radius + 0.1 * wander, 2 * std::numbers::pi * (i + 0.1 * wander) / lines);
    }
    mark(project, c, {}, 1);
    return project;
}

Project dragged(const Project& project, int step) {
    Project result = project;
    ByPoints& place = std::get<ByPoints>(result.lines.front().place);
    const Point by = (0.1 * step) * leftOf(unit(place.q - place.p));
    place = {{tenth(place.p.x + by.x), tenth(place.p.y + by.y)},
             {tenth(place.q.x + by.x), tenth(place.q.y + by.y)}};
    return result;
}

}  // namespace kerfwall::bench

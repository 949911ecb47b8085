// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/commands/crowded_projects.h"

#include <cmath>
#include <numbers>
#include <random>

namespace kerfwall {
namespace {

constexpr int kMostLines = 500;
constexpr double kTurn = 2 * std::numbers::pi;

class Crowd {
  public:
    Crowd(double panel, double kerf) {
        project.panel.width = panel;
        project.panel.height = panel;
        project.panel.thickness = 18;
        project.kerfDepth = 6;
        Saw saw;
        saw.id = "rail";
        saw.kind = SawKind::GuideRail;
        saw.kerf = kerf;
        saw.blade = 160;
        saw.railLength = 3200;
        Bench bench;
        bench.saws.push_back(saw);
        bench.trimBit = TrimBit{};
        project.bench = bench;
    }

    double tenths(double low, double high) {
        const auto steps = static_cast<std::uint64_t>((high - low) * 10) + 1;
        return low + static_cast<double>(m_engine() % steps) / 10;
    }
    void lay(Point p, Point q) {
        LayoutLine line;
        line.id = "L" + std::to_string(project.lines.size() + 1);
        line.saw = "rail";
        line.place = ByPoints{p, q};
        project.lines.push_back(line);
    }
    void lay(Point p, double turn) { lay(p, p + 1000.0 * Point{std::cos(turn), std::sin(turn)}); }
    void mark(std::vector<Point> seeds) {
        Cutout cutout;
        cutout.id = "c" + std::to_string(project.cutouts.size() + 1);
        cutout.seeds = std::move(seeds);
        project.cutouts.push_back(cutout);
    }

    Project project;

  private:
    std::mt19937_64 m_engine{3};
};

Project hundredWindows() {
    Crowd crowd(3000, 3.2);
    for (int i = 0; i < 100; ++i) {
        const Point c{150.0 + 300 * (i % 10), 150.0 + 300 * (i / 10)};
        const double half = crowd.tenths(30, 60);
        for (int side = 0; side < 4; ++side) {
            const double turn = side * kTurn / 4;
            const double askew = crowd.tenths(-3, 3) * kTurn / 360;
            crowd.lay(c + half * Point{std::cos(turn), std::sin(turn)}, turn + kTurn / 4 + askew);
        }
    }
    for (int i = 0; i < 100; ++i) crowd.mark({{150.013 + 300 * (i % 10), 150.007 + 300 * (i / 10)}});
    return crowd.project;
}

Project hundredFaces() {
    Crowd crowd(3000, 3.2);
    for (int i = 0; i < kMostLines; ++i) {
        crowd.lay({crowd.tenths(0, 3000), crowd.tenths(0, 3000)}, crowd.tenths(0, 360) * kTurn / 360);
    }
    for (int i = 0; i < 100; ++i) crowd.mark({{crowd.tenths(10, 2990) + 0.013, crowd.tenths(10, 2990) + 0.007}});
    return crowd.project;
}

Project roundOfWalls() {
    Crowd crowd(3000, 2.2);
    for (int i = 0; i < kMostLines; ++i) {
        const double turn = kTurn * (i + crowd.tenths(-0.1, 0.1)) / kMostLines;
        const Point foot = Point{1500, 1500} + (1380 + crowd.tenths(-0.1, 0.1)) * Point{std::cos(turn), std::sin(turn)};
        crowd.lay(foot, turn + kTurn / 4);
    }
    crowd.mark({{1500.01, 1500.03}});
    return crowd.project;
}

Project throughOneMicrometre() {
    Crowd crowd(3000, 3.2);
    for (int i = 0; i < kMostLines; ++i) {
        crowd.lay({1500 + 1e-9 * (i % 37), 1500 + 1e-9 * (i % 11)}, i * kTurn / 2 / kMostLines);
    }
    crowd.mark({{1900.013, 1500.9}});
    crowd.mark({{1500.013, 1900.9}});
    return crowd.project;
}

Project gridOfCells() {
    Crowd crowd(3000, 3.2);
    for (int i = 0; i < kMostLines / 2; ++i) {
        const double at = 10 + 11.9 * i;
        crowd.lay({at, 0}, Point{at, 3000});
        crowd.lay({0, at}, Point{3000, at});
    }
    for (int i = 0; i < 100; ++i) crowd.mark({{27.9 + 23.8 * i, 27.9 + 23.8 * i}});
    return crowd.project;
}

Project aTenthApart() {
    Crowd crowd(3000, 0.5);
    for (int i = 0; i < kMostLines - 2; ++i) crowd.lay({0, 500 + 0.1 * i}, Point{3000, 500 + 0.1 * i + 1e-6 * (i % 7)});
    crowd.lay({1000, 0}, Point{1000, 3000});
    crowd.lay({1200, 0}, Point{1200, 3000});
    for (int i = 0; i < 100; ++i) crowd.mark({{1100.013, 500.05 + 0.4 * i}});
    return crowd.project;
}

Project onAPanelOfTen() {
    Crowd crowd(10, 0.5);
    crowd.project.bench->trimBit->diameter = 2;
    for (int i = 0; i < kMostLines; ++i) {
        crowd.lay({crowd.tenths(0, 10), crowd.tenths(0, 10)}, crowd.tenths(0, 360) * kTurn / 360);
    }
    crowd.mark({{5.013, 5.007}});
    return crowd.project;
}

Project stopped(Project project) {
    for (LayoutLine& line : project.lines) line.extent = Extent::Stopped;
    return project;
}

Project usedInTheKerfs(Project project) {
    project.use.byBush = true;
    project.use.bush = 10;
    project.use.bit = 6;
    project.use.inKerfs = true;
    return project;
}

}  // namespace

std::vector<CrowdedProject> crowdedProjects() {
    return {{"HundredWindows", hundredWindows()},
            {"HundredWindowsStopped", stopped(hundredWindows())},
            {"HundredFaces", hundredFaces()},
            {"RoundOfWalls", roundOfWalls()},
            {"RoundOfWallsUsedInTheKerfs", usedInTheKerfs(roundOfWalls())},
            {"ThroughOneMicrometre", throughOneMicrometre()},
            {"GridOfCells", gridOfCells()},
            {"ATenthApart", aTenthApart()},
            {"OnAPanelOfTen", onAPanelOfTen()}};
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/laid_cuts.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/geometry/solve.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall::test {
namespace {

Project elbow() {
    Project project = panelOf(400, 300);
    project.lines = {offsetLine("A", Edge::Bottom, 50),  offsetLine("B", Edge::Bottom, 120),
                     offsetLine("C", Edge::Bottom, 250), offsetLine("D", Edge::Left, 60),
                     offsetLine("E", Edge::Left, 140),   offsetLine("F", Edge::Left, 340)};
    project.cutouts = {cutoutAt("elbow", {{100, 80}, {250, 80}, {100, 200}})};
    return project;
}

std::vector<LineId> stoppedLines(const Project& project) {
    std::vector<LineId> stopped;
    for (const SolvedLine& line : solve(project).lines) {
        if (std::ranges::any_of(line.kerfs, &Kerf::stopped)) stopped.push_back(line.id);
    }
    return stopped;
}

// Expected from: pencil. At the elbow's inward corner B and E run on across the far walls, 80 and 70 away; the
// rail's blade of 160 runs out over 30.4. The other four meet no wall beyond their corners.
TEST(LaidCuts, StopsWhatWouldNickAWall) {
    const Solved solved = solve(elbow());
    EXPECT_EQ(stoppedLines(elbow()), (std::vector<LineId>{"B", "E"}));
    EXPECT_TRUE(solved.cutouts.at(0).hollows.empty());
    EXPECT_EQ(findLine(solved, "B")->kerfs.at(0).saw, 3u);
    EXPECT_EQ(findLine(solved, "A")->kerfs.at(0).saw, 0u);
    // E's wall ends at 120, the inward corner, where its depth must be whole; E runs down from 300.
    EXPECT_NEAR(findLine(solved, "E")->kerfs.at(0).fullTo, 180, 1e-9);
}

TEST(LaidCuts, StopsNothingThatIsSaidToRunThrough) {  // Expected from: the project file, version 1.
    Project project = elbow();
    project.lines[1].extent = Extent::Through;
    EXPECT_EQ(stoppedLines(project), std::vector<LineId>{"E"});
}

TEST(LaidCuts, StopsNothingWithoutASawThatCan) {  // Expected from: the table saws cannot.
    Project project = elbow();
    project.bench = stockBench();
    project.bench->saws.resize(3);
    EXPECT_TRUE(stoppedLines(project).empty());
    project = elbow();
    project.lines[1].saw = "gauge";
    EXPECT_EQ(stoppedLines(project), std::vector<LineId>{"E"}) << "B is to be cut with the gauge";
}

// Expected from: pencil. A's side arm is 25 wide: the run-out of 30.4 would cross its far wall, so nothing is
// gained; with 80 mm saws of depth 4, sqrt(4 * 76) = 17.4, it fits.
TEST(LaidCuts, StopsOnlyWhereTheRunOutFits) {
    Project project = elbow();
    std::get<ByOffset>(project.lines[1].place).distance = 75;
    std::get<ByOffset>(project.lines[4].place).distance = 85;
    project.cutouts = {cutoutAt("elbow", {{72, 60}, {250, 60}, {72, 200}})};
    EXPECT_TRUE(stoppedLines(project).empty());
    project.bench = stockBench();
    project.bench->saws[3].blade = 80;
    project.kerfDepth = 4;
    EXPECT_EQ(stoppedLines(project), (std::vector<LineId>{"B", "E"}));
}

// Expected from: pencil. Two windows apart on one line, the waste above it in one and below in the other: run
// through, each kerf takes the wood from behind the other's wall; stopped, neither comes near it.
TEST(LaidCuts, StopsWhatWouldTakeAWallAway) {
    Project project = panelOf(600, 300);
    project.lines = {offsetLine("A", Edge::Bottom, 90),  offsetLine("B", Edge::Bottom, 150),
                     offsetLine("C", Edge::Bottom, 210), offsetLine("D", Edge::Left, 60),
                     offsetLine("E", Edge::Left, 200),   offsetLine("F", Edge::Left, 400),
                     offsetLine("G", Edge::Left, 540)};
    project.cutouts = {cutoutAt("low", {{130, 120}}), cutoutAt("high", {{470, 180}})};
    const Solved solved = solve(project);
    EXPECT_EQ(stoppedLines(project), std::vector<LineId>{"B"});
    for (const SolvedCutout& cutout : solved.cutouts) EXPECT_TRUE(cutout.lost.empty());
    for (LayoutLine& line : project.lines) line.extent = Extent::Through;
    EXPECT_FALSE(solve(project).cutouts.at(0).lost.empty());
}

// Expected from: pencil. Facing one another across one line no stop helps: the kerfs stay through.
TEST(LaidCuts, LeavesThroughWhatStoppingWouldNotHelp) {
    Project project = windowProject();
    project.lines.push_back(offsetLine("E", Edge::Left, 200));
    project.cutouts = {cutoutAt("one", {{150, 120}}), cutoutAt("two", {{250, 120}})};
    EXPECT_TRUE(stoppedLines(project).empty());
}

// Expected from: pencil. The window ends 24 from the top edge, less than the 25 that a border should have. A
// blade of 110 and a depth of 3 runs out over sqrt(3 * 107) = 17.9, from 24 + 6.35 off the
// edge, so 12.4 stays whole; the stock rail's blade, 6 deep, would run over the edge.
TEST(LaidCuts, StopsShortOfAThinBorderWhereTheRunOutEndsOnThePanel) {
    Project project = windowProject();
    project.panel.height = 170;
    EXPECT_TRUE(stoppedLines(project).empty());
    project.bench = stockBench();
    project.bench->saws[3].blade = 110;
    project.kerfDepth = 3;
    EXPECT_EQ(stoppedLines(project), (std::vector<LineId>{"C", "D"}));
}

// Law: the order of the lines changes nothing.
TEST(LaidCuts, TheOrderOfTheLinesChangesNothing) {
    Project project = elbow();
    std::ranges::reverse(project.lines);
    std::vector<LineId> stopped = stoppedLines(project);
    std::ranges::sort(stopped);
    EXPECT_EQ(stopped, (std::vector<LineId>{"B", "E"}));
}

}  // namespace
}  // namespace kerfwall::test

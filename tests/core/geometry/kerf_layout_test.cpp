// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/kerf_layout.h"

#include <gtest/gtest.h>

#include "core/geometry/solve.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall::test {
namespace {

// Expected from: s = sqrt(d (D - d)), the chord of the blade's circle; worked by hand for the usual blades.
TEST(KerfLayout, TheRunOutIsTheChordOfTheBlade) {
    const struct { double blade, depth, runOut; } table[] = {{250, 6, 38.262}, {305, 6, 42.356}, {254, 6, 38.575},
                                                             {315, 6, 43.058}, {160, 6, 30.397}, {216, 5.5, 34.026},
                                                             {165, 6, 30.887}, {184, 5, 29.917}};
    for (const auto& row : table) EXPECT_NEAR(reachOfRound(row.blade, row.depth, 0), row.runOut, 5e-4) << row.blade;
}

// Expected from: sqrt(R² - (R - d + z)²) for a wall at least 3 high: 27.221 (D 250), 21.703 (D 160).
TEST(KerfLayout, AWallOfSomeHeightEndsEarlier) {
    EXPECT_NEAR(reachOfRound(250, 6, 3), 27.221, 5e-4);
    EXPECT_NEAR(reachOfRound(160, 6, 3), 21.703, 5e-4);
}

// Expected from: pencil. In a wall of 180 with bit radius 6.35 at both square ends the full depth runs from
// 6.35 to 173.65 inside it: 116.35 to 283.65 along A. The rail's blade of 160 runs out 30.397 (depth 6).
TEST(KerfLayout, AStoppedKerfIsFullFromTangentToTangent) {
    Project project = windowProject();
    project.lines[0].extent = Extent::Stopped;
    const Solved solved = solve(project);
    const Kerf& kerf = findLine(solved, "A")->kerfs.at(0);
    EXPECT_TRUE(kerf.stopped);
    EXPECT_EQ(kerf.side, Side::Left);
    EXPECT_DOUBLE_EQ(kerf.width, 2.2) << "the rail's kerf";
    EXPECT_NEAR(kerf.fullFrom, 116.35, 1e-9);
    EXPECT_NEAR(kerf.fullTo, 283.65, 1e-9);
    EXPECT_NEAR(kerf.surfaceFrom, 116.35 - 30.397, 1e-3);
    EXPECT_NEAR(kerf.surfaceTo, 283.65 + 30.397, 1e-3);
}

// Expected from: the report: through, both spans are the line's whole run on the panel.
TEST(KerfLayout, AThroughKerfRunsFromEdgeToEdge) {
    const Solved solved = solve(windowProject());
    const Kerf& kerf = findLine(solved, "C")->kerfs.at(0);
    EXPECT_FALSE(kerf.stopped);
    EXPECT_EQ(kerf.fullFrom, 0);
    EXPECT_EQ(kerf.surfaceTo, 250);
    EXPECT_EQ(kerf.side, Side::Left) << "C runs down; the window lies to its left, at larger x";
}

// Expected from: pencil. Two windows side by side: on the line between them one has its waste left, the other right.
TEST(KerfLayout, ALineWithWasteOnBothSidesGetsAKerfOnEach) {
    Project project = windowProject();
    project.lines.push_back(offsetLine("E", Edge::Left, 200));
    project.cutouts = {cutoutAt("one", {{150, 120}}), cutoutAt("two", {{250, 120}})};
    const Solved solved = solve(project);
    ASSERT_EQ(findLine(solved, "E")->kerfs.size(), 2u);
    EXPECT_EQ(solved.cutouts[0].lost.size(), 1u);
    EXPECT_EQ(solved.cutouts[0].lost[0].line, "E");
}

// Expected from: pencil. Walls of one line in two windows have a kerf each when stopped; where the line runs on
// inside one joined cutout they share it.
TEST(KerfLayout, StoppedWallsShareAKerfOnlyWhereTheLineStaysInside) {
    Project project = panelOf(600, 250);
    project.lines = {offsetLine("A", Edge::Bottom, 90), offsetLine("B", Edge::Bottom, 146),
                     offsetLine("C", Edge::Left, 100), offsetLine("D", Edge::Left, 200),
                     offsetLine("E", Edge::Left, 400), offsetLine("F", Edge::Left, 500)};
    project.lines[0].extent = Extent::Stopped;
    project.cutouts = {cutoutAt("one", {{150, 120}}), cutoutAt("two", {{450, 120}})};
    EXPECT_EQ(findLine(solve(project), "A")->kerfs.size(), 2u);
    // A cross: above A left and right, and in the middle above and below, where A runs on inside.
    project.cutouts = {cutoutAt("cross", {{150, 120}, {300, 120}, {450, 120}, {300, 50}})};
    const Solved solved = solve(project);
    ASSERT_EQ(findLine(solved, "A")->kerfs.size(), 1u);
    EXPECT_NEAR(findLine(solved, "A")->kerfs[0].fullFrom, 106.35, 1e-9);
    EXPECT_NEAR(findLine(solved, "A")->kerfs[0].fullTo, 493.65, 1e-9);
}

}  // namespace
}  // namespace kerfwall::test

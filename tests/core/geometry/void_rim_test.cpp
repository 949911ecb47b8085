// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/void_rim.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/core/geometry/projects.h"
#include "tests/core/geometry/rim_measure.h"

namespace kerfwall::test {
namespace {

constexpr double kBitRadius = 6.35;
constexpr std::size_t kRail = 3;  // of the stock bench: blade 160

/// The rim round the first cutout with kerfs of 3.2 all cut by the rail saw, in a frame 50 past the panel.
VoidRim rimRound(Project project) {
    setTools(project, 3.2, 2 * kBitRadius);
    const Arranged arranged = arrange(project);
    const std::vector<Border> borders{borderOf(project, arranged, arranged.cutouts.at(0), kBitRadius)};
    const auto runs = kerfRuns(project, arranged, borders, saidToStop(project, arranged));
    const auto kerfs = layKerfs(project, runs, std::vector<std::optional<std::size_t>>(runs.size(), kRail));
    return voidRim(project, arranged, arranged.cutouts[0], borders[0], kerfs, frameOf({{-50, -50}, {450, 300}}));
}

// The window: A 90 up, B 146 up, C 110 in, D 290 in on 400 x 250. Kerfs of 3.2 lie inside the lines and run
// from edge to edge, so eight blocks stand: four at the panel's corners, one at each side of the window,
// 173.6 wide or 49.6 high where kerfs cut off its ends.
//
//      |  |          |  |
//    __|  |__________|  |__  B
//    __    __________    __
//      |  |          |  |
//    __|  |__________|  |__
//    __    __________    __  A
//      |  |          |  |
//      C                D

// Expected from: pencil. In a frame of 500 x 350 the blocks leave 175000 - (2 · 110 · 90 + 2 · 110 · 104
// + 2 · 110 · 49.6 + 173.6 · 90 + 173.6 · 104) = 87729.6.
TEST(VoidRim, AWindowsVoidIsWhatItsBlocksLeave) {
    const VoidRim made = rimRound(windowProject());
    EXPECT_TRUE(made.doubts.empty());
    EXPECT_TRUE(made.rim.openEnds().empty());
    EXPECT_EQ(made.rim.loops().size(), 9u) << "the frame and eight blocks";
    EXPECT_NEAR(voidArea(made), 87729.6, 1e-6);
}

// Expected from: pencil. Walls 2 · 173.6 + 2 · 49.6; mouths beyond them along A and B 220 each, along C and D
// 194 each, and as much on the kerfs' far sides; the edges less eight mouths of 3.2; the frame.
TEST(VoidRim, EveryStretchKnowsWhatItIs) {
    const VoidRim made = rimRound(windowProject());
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::Wall), 446.4, 1e-9);
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::Mouth), 828, 1e-9);
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::FarSide), 828, 1e-9);
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::PanelEdge), 1300 - 8 * 3.2, 1e-9);
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::Frame), 1700, 1e-9);
    EXPECT_EQ(lengthOf(made, VoidSide::Kind::KerfEnd), 0);
    EXPECT_EQ(lengthOf(made, VoidSide::Kind::Bore), 0);
}

// Expected from: pencil. Stopped, A's kerf is full from 116.35 to 283.65 and its blade of 160 has cut to 1 above
// the floor sqrt(80² - 79²) = sqrt(159) farther on: from 103.7405 on its mouth is there, 6.2595 outside the wall.
TEST(VoidRim, AStoppedKerfEndsSquareWhereItsRoundReaches) {
    Project project = windowProject();
    project.lines[0].extent = Extent::Stopped;
    const VoidRim made = rimRound(project);
    EXPECT_TRUE(made.doubts.empty());
    EXPECT_EQ(made.rim.loops().size(), 7u) << "two pairs of blocks hang together";
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::KerfEnd), 6.4, 1e-9);
    const double mouth = std::sqrt(159.0) - 6.35;
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::Mouth), 828 - 220 + 2 * mouth, 1e-9);
    EXPECT_NEAR(voidArea(made), 87729.6 - 2 * 3.2 * (110 - mouth), 1e-6);
}

// Expected from: pencil. A bore of radius 20 at A and C: below the kerfs its quarter round is whole and both
// kerfs count from its tangent points on, so the left and lower blocks reach to the corner.
TEST(VoidRim, BelowTheKerfsABoresRoundIsWhole) {
    Project project = windowProject();
    project.cutouts[0].corners = {{"A", "C", 20, ""}};
    const VoidRim made = rimRound(project);
    EXPECT_TRUE(made.doubts.empty());
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::Bore), 10 * std::numbers::pi, 1e-9);
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::Mouth), 828 - 110 - 90, 1e-9);
    const double spandrel = 400 - 100 * std::numbers::pi;
    EXPECT_NEAR(voidArea(made), 87729.6 - 3.2 * 110 - 3.2 * 90 - spandrel, 1e-6);
}

}  // namespace
}  // namespace kerfwall::test

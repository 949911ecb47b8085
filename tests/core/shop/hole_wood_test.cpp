// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/hole_wood.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/shop/finding_fixture.h"

namespace kerfwall {
namespace {

using namespace testing_bench;

ClampHole holeOf(Edge edge, double at, double diameter, double depth) {
    ClampHole hole;
    hole.edge = edge;
    hole.at = at;
    hole.diameter = diameter;
    hole.depth = depth;
    return hole;
}

std::vector<double> left(const std::vector<WoodLeft>& wood, WoodAt at) {
    std::vector<double> all;
    for (const WoodLeft& each : wood) {
        if (each.at == at) all.push_back(each.left);
    }
    return all;
}

// Expected from: pencil. A hole of 8 in the middle of 18 keeps 5 above and below; 125 along the left edge of 250 it
// keeps 121 beside it; 60 deep it ends 90 from the window at 150 and 340 from the right edge.
TEST(HoleWood, RoundAHoleBeforeAWindow) {
    Project project = panelOf(400, 250, 18);
    Solved solved = answerFor(project);
    put(project, solved, rectangle("window", {{150, 100}, {250, 150}}, 6.35));
    project.clampHoles = {holeOf(Edge::Left, 125, 8, 60)};
    const std::vector<WoodLeft> wood = woodRound(project, solved, 0);
    EXPECT_EQ(left(wood, WoodAt::Above), std::vector<double>{5});
    EXPECT_EQ(left(wood, WoodAt::Below), std::vector<double>{5});
    EXPECT_EQ(left(wood, WoodAt::EdgeStart), std::vector<double>{121});
    EXPECT_EQ(left(wood, WoodAt::EdgeEnd), std::vector<double>{121});
    ASSERT_EQ(left(wood, WoodAt::AheadCutout).size(), 1U);
    EXPECT_NEAR(left(wood, WoodAt::AheadCutout).front(), 90, 1e-9);
    EXPECT_EQ(left(wood, WoodAt::AheadEdge), std::vector<double>{340});
    EXPECT_TRUE(left(wood, WoodAt::BesideCutout).empty());
    EXPECT_TRUE(left(wood, WoodAt::UnderKerf).empty());
}

// Expected from: pencil. From the bottom edge at x 160, 120 deep, the axis runs into the window over y 100. At x 140 it
// passes 10 beside it, less 4 of radius.
TEST(HoleWood, IntoAWindowAndBesideIt) {
    Project project = panelOf(400, 250, 18);
    Solved solved = answerFor(project);
    put(project, solved, rectangle("window", {{150, 100}, {250, 150}}, 6.35));
    project.clampHoles = {holeOf(Edge::Bottom, 200, 8, 120), holeOf(Edge::Bottom, 140, 8, 140)};
    EXPECT_EQ(left(woodRound(project, solved, 0), WoodAt::AheadCutout), std::vector<double>{0});
    EXPECT_TRUE(left(woodRound(project, solved, 0), WoodAt::BesideCutout).empty());
    const std::vector<double> beside = left(woodRound(project, solved, 1), WoodAt::BesideCutout);
    ASSERT_EQ(beside.size(), 1U);
    EXPECT_NEAR(beside.front(), 6, 1e-9);
}

// Expected from: pencil. A hole of 4 round 9 begins 7 below the face: a kerf of 6 leaves 1 over it, one of 8 cuts 1 in.
TEST(HoleWood, UnderKerfs) {
    Project project = panelOf(400, 250, 18);
    Solved solved = answerFor(project);
    solved.lines = {lineWithKerf("A", {30, 0}, {30, 250}, Side::Left, 3.2, 6), lineWithKerf("B", {40, 0}, {40, 250}, Side::Left, 3.2, 8)};
    project.clampHoles = {holeOf(Edge::Left, 125, 4, 60)};
    const std::vector<WoodLeft> wood = woodRound(project, solved, 0);
    EXPECT_EQ(left(wood, WoodAt::UnderKerf), (std::vector<double>{1, -1}));
    EXPECT_EQ(std::ranges::find(wood, WoodAt::UnderKerf, &WoodLeft::at)->what, "A");
}

// Expected from: pencil. Two holes of 8, 20 apart: 12 between them.
TEST(HoleWood, BetweenTwoHoles) {
    Project project = panelOf(400, 250, 18);
    const Solved solved = answerFor(project);
    project.clampHoles = {holeOf(Edge::Left, 100, 8, 60), holeOf(Edge::Left, 120, 8, 60)};
    project.clampHoles.back().id = "lower";
    const std::vector<WoodLeft> wood = woodRound(project, solved, 0);
    const auto beside = std::ranges::find(wood, WoodAt::BesideHole, &WoodLeft::at);
    ASSERT_NE(beside, wood.end());
    EXPECT_NEAR(beside->left, 12, 1e-9);
    EXPECT_EQ(beside->what, "lower");
}

}  // namespace
}  // namespace kerfwall

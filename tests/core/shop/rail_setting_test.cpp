// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/rail_setting.h"

#include <gtest/gtest.h>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

Way railOf(const SolvedLine& line, double rail = 0, Side railSide = Side::Left) {
    const Project project = hand::panelOf(500, 300);
    Saw saw = project.bench->saws[3];
    saw.rail = rail;
    saw.railSide = railSide;
    return railWay(project.panel, saw, hand::asked(line));
}

SolvedLine across(Point from, Point to, Side waste) {
    return hand::lineOf(hand::panelOf(500, 300), "N", from, to, waste, 3);
}

// Expected from: pencil. From (430, 0) to (230, 300): 200 to the left in 300 up, atan(300 / 200) = 56.310
// from the bottom edge, risen from its far end: the rail is turned clockwise from the edge.
TEST(RailSetting, TellsTheAngleFromTheReferenceEdge) {
    const Way way = railOf(across({430, 0}, {230, 300}, Side::Left));
    EXPECT_NEAR(*way.setting.angle, 56.310, 5e-4);
    EXPECT_EQ(way.turn, Side::Right);
    EXPECT_EQ(railOf(across({230, 0}, {430, 300}, Side::Left)).turn, Side::Left);
    EXPECT_EQ(railOf(across({0, 100}, {500, 100}, Side::Left)).setting.angle, 0);
    EXPECT_EQ(railOf(across({100, 0}, {100, 300}, Side::Left)).setting.angle, 90);
}

// Expected from: pencil. Running up with the waste on the right, a rail on the left of the cut lies on the
// kept side when the saw is pushed up; with the waste on the left it must be pushed down. A rail on the
// right swaps both.
TEST(RailSetting, PushesTheSawSoThatTheRailLiesOnTheKeptSide) {
    EXPECT_EQ(railOf(across({100, 0}, {100, 300}, Side::Right)).leads, Edge::Bottom);
    EXPECT_EQ(railOf(across({100, 0}, {100, 300}, Side::Left)).leads, Edge::Top);
    EXPECT_EQ(railOf(across({100, 0}, {100, 300}, Side::Right), 0, Side::Right).leads, Edge::Top);
    EXPECT_EQ(railOf(across({100, 0}, {100, 300}, Side::Left), 0, Side::Right).leads, Edge::Bottom);
}

TEST(RailSetting, AddsTheRailToTheDepthScale) {  // Expected from: 6 + 5.
    EXPECT_DOUBLE_EQ(*railOf(across({100, 0}, {100, 300}, Side::Left), 5).setting.depth, 11);
    EXPECT_DOUBLE_EQ(*railOf(across({100, 0}, {100, 300}, Side::Left)).setting.depth, 6);
}

TEST(RailSetting, IsCutToMarksFaceUp) {  // Expected from: a rail has neither fence nor stop.
    const Way way = railOf(across({100, 0}, {100, 300}, Side::Left));
    EXPECT_TRUE(way.toMarks);
    EXPECT_TRUE(way.faceUp);
    EXPECT_FALSE(way.against || way.stopEdge || way.stopSide || way.setting.bladeHeight);
}

TEST(RailSetting, CarriesThePlungeMarksOfAStoppedKerf) {  // Expected from: the kerf's own places.
    SolvedLine line = across({430, 0}, {230, 300}, Side::Left);
    Kerf& kerf = line.kerfs[0];
    kerf.stopped = true;
    kerf.fullFrom = 120;
    kerf.fullTo = 180;
    kerf.surfaceFrom = 90;
    kerf.surfaceTo = 210;
    EXPECT_EQ(railOf(line).setting.plunge, (PlungeMarks{120, 180, 90, 210}));
}

// Expected from: pencil. On 500 x 300 a level line at 100 with the waste above has 100 of panel below it, with the
// waste below it 200 above. From (100, 0) to (250, 300), waste on its left, the kept side is on the right: square
// to it, (2, -1) / sqrt 5, a tenth up at (115, 30) the bottom edge is 30 sqrt 5 = 67.08 away.
TEST(RailSetting, KnowsHowMuchPanelCarriesTheRail) {
    const Panel panel = hand::panelOf(500, 300).panel;
    EXPECT_NEAR(panelUnderRail(panel, hand::asked(across({0, 100}, {500, 100}, Side::Left))), 100, 1e-9);
    EXPECT_NEAR(panelUnderRail(panel, hand::asked(across({0, 100}, {500, 100}, Side::Right))), 200, 1e-9);
    EXPECT_NEAR(panelUnderRail(panel, hand::asked(across({100, 0}, {250, 300}, Side::Left))), 67.082, 1e-3);
}

}  // namespace
}  // namespace kerfwall

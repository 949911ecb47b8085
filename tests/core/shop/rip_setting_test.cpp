// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/rip_setting.h"

#include <gtest/gtest.h>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

Way ripOf(double width, double height, const SolvedLine& line, Edge against) {
    const Project project = hand::panelOf(width, height);
    return ripWay(project.panel, project.bench->saws[0], hand::asked(line), against);
}

// Expected from: pencil. Line 100 from the near edge of a panel 400 across, kerf 3.2, waste beyond: the
// blade's nearer face stands at the line. With the far edge on the fence the line is 300 away and the kerf
// lies between: 300 - 3.2.
TEST(RipSetting, IsTheLineItselfWithTheWasteBeyond) {
    const Project project = hand::panelOf(600, 400);
    const SolvedLine line = hand::level(project, "A", 100, Side::Left);
    EXPECT_DOUBLE_EQ(*ripOf(600, 400, line, Edge::Bottom).setting.fence, 100.0);
    EXPECT_DOUBLE_EQ(*ripOf(600, 400, line, Edge::Top).setting.fence, 296.8);
}

// Expected from: pencil. The same line with the waste below: 100 - 3.2 and 300.
TEST(RipSetting, IsTheLineLessTheKerfWithTheWasteBetween) {
    const Project project = hand::panelOf(600, 400);
    const SolvedLine line = hand::level(project, "A", 100, Side::Right);
    EXPECT_DOUBLE_EQ(*ripOf(600, 400, line, Edge::Bottom).setting.fence, 96.8);
    EXPECT_DOUBLE_EQ(*ripOf(600, 400, line, Edge::Top).setting.fence, 300.0);
}

// Expected from: pencil. The direction a line was laid in says nothing about the setting: laid from right to
// left, waste above is on its right.
TEST(RipSetting, DoesNotCareWhichWayTheLineRuns) {
    const Project project = hand::panelOf(600, 400);
    const SolvedLine line = hand::lineOf(project, "A", {600, 100}, {0, 100}, Side::Right, 0);
    EXPECT_DOUBLE_EQ(*ripOf(600, 400, line, Edge::Bottom).setting.fence, 100.0);
}

// Expected from: pencil. An upright line 70 from the left of a 400 panel, waste to its right: 70 from the
// left edge (waste beyond), 330 - 3.2 from the right one. Face down, fence on the right: the left edge's
// start (top) leads; the right edge's start (bottom).
TEST(RipSetting, TakesTheSideEdgesOfAPanelTrueAllRound) {
    const Project project = hand::panelOf(400, 250);
    const SolvedLine line = hand::upright(project, "C", 70, Side::Right, 0);
    const Way left = ripOf(400, 250, line, Edge::Left);
    EXPECT_DOUBLE_EQ(*left.setting.fence, 70.0);
    EXPECT_EQ(left.leads, Edge::Top);
    const Way right = ripOf(400, 250, line, Edge::Right);
    EXPECT_DOUBLE_EQ(*right.setting.fence, 326.8);
    EXPECT_EQ(right.leads, Edge::Bottom);
}

TEST(RipSetting,
     SetsTheBladeToTheKerfsDepthAndLaysTheFaceDown) {  // Expected from: the table saw cuts from below.
    const Project project = hand::panelOf(400, 250);
    const Way way = ripOf(400, 250, hand::level(project, "A", 90, Side::Left), Edge::Bottom);
    EXPECT_EQ(way.setting.bladeHeight, 6.0);
    EXPECT_FALSE(way.faceUp);
    EXPECT_EQ(way.against, Edge::Bottom);
    EXPECT_EQ(way.leads, Edge::Left);
    EXPECT_FALSE(way.stopSide || way.turn || way.toMarks);
}

}  // namespace
}  // namespace kerfwall

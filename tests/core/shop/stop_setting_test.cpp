// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/stop_setting.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

struct Trial {
    SawKind kind = SawKind::CrosscutSled;
    SquareCorner corner = SquareCorner::Start;
    bool fenceFar = false;
    bool stop = true;
};

std::vector<Way> waysOf(const Trial& trial, const SolvedLine& line, double width = 400, double height = 250) {
    Project project = hand::panelOf(width, height);
    project.panel.squareCorner = trial.corner;
    Saw saw;
    saw.kind = trial.kind;
    saw.kerf = 3.2;
    saw.blade = 254;
    saw.base = 12;
    saw.fenceFar = trial.fenceFar;
    saw.stop = trial.stop;
    return stopWays(project.panel, saw, hand::asked(line), Edge::Bottom);
}

SolvedLine uprightAt(double at, Side waste) { return hand::upright(hand::panelOf(400, 250), "C", at, waste); }

/// A line through the bottom edge at `at` which leans by `angle` degrees to the right as it goes up.
SolvedLine leaningAt(double at, double angle, Side waste) {
    const double over = 250 * std::tan(angle * std::numbers::pi / 180);
    return hand::lineOf(hand::panelOf(400, 250), "L", {at, 0}, {at + over, 250}, waste, 2);
}

// Expected from: pencil. 400 panel, waste between lines at 60 and 240, kerf 3.2, true corner at the right
// end, which lies to the operator's left: 400 - 60 = 340, less the kerf that lies towards the stop, 336.8;
// 400 - 240 = 160, the kerf beyond.
TEST(StopSetting, OfASledWithTheRightEndAtAStopOnTheLeft) {
    const Trial trial{.corner = SquareCorner::End};
    const Way first = waysOf(trial, uprightAt(60, Side::Right)).front();
    const Way second = waysOf(trial, uprightAt(240, Side::Left)).front();
    EXPECT_DOUBLE_EQ(*first.setting.stop, 336.8);
    EXPECT_DOUBLE_EQ(*second.setting.stop, 160.0);
    for (const Way& way : {first, second}) {
        EXPECT_EQ(way.stopEdge, Edge::Right);
        EXPECT_EQ(way.stopSide, Side::Left);
        EXPECT_FALSE(way.faceUp);
        EXPECT_EQ(way.leads, Edge::Top);
        EXPECT_FALSE(way.turn);
    }
}

// Expected from: pencil. The same lines from the left end: 60, and 240 - 3.2; it lies to the right.
TEST(StopSetting, OfASledWithTheLeftEndAtAStopOnTheRight) {
    const Way first = waysOf({}, uprightAt(60, Side::Right)).front();
    const Way second = waysOf({}, uprightAt(240, Side::Left)).front();
    EXPECT_DOUBLE_EQ(*first.setting.stop, 60.0);
    EXPECT_DOUBLE_EQ(*second.setting.stop, 236.8);
    EXPECT_EQ(first.stopEdge, Edge::Left);
    EXPECT_EQ(first.stopSide, Side::Right);
}

// Expected from: pencil. A fence on the far side turns the panel half round: the left end now lies to the
// left, the distance stays, and the edge on the fence goes first.
TEST(StopSetting, OfASledWithItsFenceFar) {
    const Way way = waysOf({.fenceFar = true}, uprightAt(60, Side::Right)).front();
    EXPECT_DOUBLE_EQ(*way.setting.stop, 60.0);
    EXPECT_EQ(way.stopSide, Side::Left);
    EXPECT_EQ(way.leads, Edge::Bottom);
}

// Expected from: pencil. Kerf of 6 over a base of 12.
TEST(StopSetting, RaisesTheBladeThroughTheSledsBase) {
    EXPECT_DOUBLE_EQ(*waysOf({}, uprightAt(60, Side::Right)).front().setting.bladeHeight, 18.0);
}

// Expected from: 3.2 / cos a worked with a calculator: 3.202 at 2 degrees, 3.249 at 10, 3.695 at 30, 4.525
// at 45. A line through the bottom edge at 200 with its kerf towards the stop.
TEST(StopSetting, OfAGaugeCountsTheKerfAlongItsFence) {
    const Trial trial{.kind = SawKind::MitreGauge};
    for (const auto& [angle, kerf] : {std::pair{2.0, 3.202}, {10.0, 3.249}, {30.0, 3.695}, {45.0, 4.525}}) {
        const Way way = waysOf(trial, leaningAt(200, angle, Side::Left)).front();
        EXPECT_NEAR(*way.setting.stop, 200 - kerf, 5e-4) << angle;
        EXPECT_NEAR(*way.setting.angle, angle, 1e-9);
        EXPECT_EQ(way.setting.bladeHeight, 6.0);
    }
}

// Expected from: pencil. With the kerf beyond the line nothing is taken off, at any angle.
TEST(StopSetting, OfAGaugeIsTheLinesPlaceOnTheFenceWithTheWasteBeyond) {
    const Way way = waysOf({.kind = SawKind::MitreGauge}, leaningAt(200, 30, Side::Right)).front();
    EXPECT_NEAR(*way.setting.stop, 200.0, 1e-9);
}

// Expected from: a sheet of paper turned over: a line leaning to the right as drawn leans to the left face
// down, anticlockwise from the push, and the gauge must be turned clockwise.
TEST(StopSetting, TurnsTheGaugeAgainstTheLean) {
    const Trial trial{.kind = SawKind::MitreGauge};
    EXPECT_EQ(waysOf(trial, leaningAt(200, 3, Side::Right)).front().turn, Side::Right);
    EXPECT_EQ(waysOf(trial, leaningAt(200, -3, Side::Right)).front().turn, Side::Left);
    EXPECT_FALSE(waysOf(trial, uprightAt(200, Side::Right)).front().turn);
    EXPECT_EQ(waysOf(trial, uprightAt(200, Side::Right)).front().setting.angle, 0.0);
}

// Expected from: the report, version 1: no true corner or no stop on the gauge leaves the marks.
TEST(StopSetting, FallsBackToMarks) {
    const std::vector<Way> noCorner = waysOf({.corner = SquareCorner::None}, uprightAt(60, Side::Right));
    ASSERT_EQ(noCorner.size(), 1u);
    EXPECT_TRUE(noCorner.front().toMarks);
    EXPECT_FALSE(noCorner.front().setting.stop);
    EXPECT_EQ(noCorner.front().against, Edge::Bottom);
    const Trial noStop{.kind = SawKind::MitreGauge, .stop = false};
    EXPECT_TRUE(waysOf(noStop, leaningAt(200, 3, Side::Right)).front().toMarks);
}

// Expected from: pencil. A line 610 from the left end of a 700 panel is out of reach of a stop that comes to
// 600; from the right end, where that corner is true too, it is 90 away, the kerf beyond.
TEST(StopSetting, TakesTheOtherTrueEndWhereTheStopDoesNotReach) {
    const SolvedLine line = hand::upright(hand::panelOf(700, 250), "C", 610, Side::Left);
    EXPECT_TRUE(waysOf({}, line, 700).front().toMarks);
    const Way way = waysOf({.corner = SquareCorner::Both}, line, 700).front();
    EXPECT_EQ(way.stopEdge, Edge::Right);
    EXPECT_DOUBLE_EQ(*way.setting.stop, 90.0);
}

// Expected from: 400 tan 3 degrees = 400 x 0.0524078 = 20.963.
TEST(StopSetting, AWedgeOf3DegreesRises21MillimetresOver400) {
    EXPECT_NEAR(wedgeFor(3, 400).rise, 20.96, 0.005);
    const Way way = waysOf({}, leaningAt(200, 3, Side::Right)).front();
    ASSERT_TRUE(way.setting.wedge);
    EXPECT_NEAR(way.setting.wedge->rise, 20.963, 5e-4);
    EXPECT_EQ(way.setting.wedge->length, 400);
    EXPECT_EQ(way.turn, Side::Right);
    EXPECT_TRUE(way.toMarks);
    EXPECT_FALSE(way.setting.angle);
}

// Expected from: pencil. Face up with the bottom edge to the far fence the panel lies turned half round: the
// left end to the right. A line leaning to the right as drawn keeps its slant when turned half round, so the
// arm turns clockwise. Shallow end at the fence: sqrt(6 (254 - 6)) = 38.575.
TEST(StopSetting, OfASlidingMitreSaw) {
    const Way way = waysOf({.kind = SawKind::SlidingMitre}, leaningAt(200, 30, Side::Left)).front();
    EXPECT_NEAR(*way.setting.stop, 196.305, 5e-4);
    EXPECT_EQ(way.stopSide, Side::Right);
    EXPECT_TRUE(way.faceUp);
    EXPECT_EQ(way.turn, Side::Right);
    EXPECT_EQ(way.setting.depth, 6.0);
    EXPECT_NEAR(*way.setting.spacer, 38.575, 5e-4);
    EXPECT_FALSE(way.setting.bladeHeight);
    EXPECT_EQ(way.leads, Edge::Top);
}

// Expected from: a kerf that ends short of the fence needs no piece there; one that runs up to it does.
TEST(StopSetting, AStoppedKerfNeedsASpacerOnlyWhereItReachesTheFence) {
    SolvedLine line = uprightAt(200, Side::Left);
    line.kerfs[0].stopped = true;
    line.kerfs[0].fullFrom = 50;
    line.kerfs[0].fullTo = 200;
    EXPECT_FALSE(waysOf({.kind = SawKind::SlidingMitre}, line).front().setting.spacer);
    line.kerfs[0].fullFrom = 0;
    EXPECT_TRUE(waysOf({.kind = SawKind::SlidingMitre}, line).front().setting.spacer);
    EXPECT_EQ(waysOf({.kind = SawKind::SlidingMitre}, line).front().setting.plunge->fullTo, 200);
}

}  // namespace
}  // namespace kerfwall

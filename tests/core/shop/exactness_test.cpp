// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/exactness.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/geometry/angle.h"
#include "core/shop/wall_shares.h"
#include "tests/core/shop/hand_built.h"

// A window on a panel of 400 x 250: A at 90 and B at 146 from the rip fence (its setting ± 0.15), C at 110 and D at 290
// from the sled's stop (± 0.1, square within ± 0.1 over a metre). All worked by pencil.
namespace kerfwall {
namespace {

struct Cut : hand::Job {
    OrderOfWork order;

    Cut() : Job(hand::windowJob()) {
        solved.cutouts[0].sizes = {{"A", "B", 56, {}, 0, 2}, {"D", "C", 180, {}, 1, 3}};
        for (Saw& saw : project.bench->saws) saw = said(saw);
        order = plan(project, solved);
    }
    static Saw said(Saw saw) {
        saw.repeatability = saw.kind == SawKind::RipFence ? 0.15 : saw.kind == SawKind::CrosscutSled ? 0.1 : 0.25;
        saw.squareness = 0.1;
        return saw;
    }
    WorkStep& step(const LineId& line) {
        for (WorkStep& each : order.steps) {
            if (each.task == Task::Kerf && each.lines == std::vector<LineId>{line}) return each;
        }
        throw std::logic_error("no step cuts " + line + " alone");
    }
    Exactness size(std::size_t index) const { return exactness(project, solved, order)[0].sizes.at(index).value(); }
    Exactness angle(std::size_t index) const { return exactness(project, solved, order)[0].angles.at(index).value(); }
};

// Two settings of ± 0.15: 0.30, and sqrt(2) x 0.15 = 0.2121. 56 mm may be off by 0.3 in class m.
TEST(Exactness, TwoSettingsOfOneFence) {
    const Cut cut;
    EXPECT_NEAR(cut.size(0).plusMinus.worst, 0.30, 1e-12);
    EXPECT_NEAR(cut.size(0).plusMinus.likely, 0.21213, 5e-6);
    EXPECT_EQ(cut.size(0).keeps, ToleranceClass::Medium);
}

// B's wall is made by the blade's far side: its kerf's ± 0.05 comes in, A's does not. 0.35 and
// sqrt(2 x 0.0225 + 0.0025) = 0.21794.
TEST(Exactness, TheKerfCountsForTheFarWallAlone) {
    Cut cut;
    cut.project.bench->saws[0].kerfPlusMinus = 0.05;
    EXPECT_NEAR(cut.size(0).plusMinus.worst, 0.35, 1e-12);
    EXPECT_NEAR(cut.size(0).plusMinus.likely, 0.21794, 5e-6);
}

// Two stops of ± 0.1. Both walls lean with the sled and stay as far apart: its squareness does not count.
TEST(Exactness, OneSledsLeanLeavesTheSizeAlone) {
    const Cut cut;
    EXPECT_NEAR(cut.size(1).plusMinus.worst, 0.2, 1e-12);
    EXPECT_NEAR(cut.size(1).plusMinus.likely, 0.14142, 5e-6);
}

// D with the top edge on the sled's fence: it leans as C does but about the top, 250 from where C turns: 0.025 more.
// sqrt(0.01 + 0.01 + 0.025^2) = 0.14361.
TEST(Exactness, TheLeanCountsByHowFarTheFencesLieApart) {
    Cut cut;
    cut.project.panel.squareCorner = SquareCorner::All;
    cut.step("D").against = Edge::Top;
    EXPECT_NEAR(cut.size(1).plusMinus.worst, 0.225, 1e-12);
    EXPECT_NEAR(cut.size(1).plusMinus.likely, 0.14361, 5e-6);
}

/// A at 90 from the bottom and B at 90 from the top (160), at one setting of the fence.
Cut turnedEndForEnd() {
    Cut cut;
    cut.project.panel.squareCorner = SquareCorner::All;
    cut.solved.lines[1] = hand::level(cut.project, "B", 160, Side::Right);
    cut.solved.cutouts[0].walls = hand::windowOf(110, 90, 290, 160).walls;
    WorkStep& b = cut.step("B");
    b.setting = cut.step("A").setting;
    b.against = Edge::Top;
    return cut;
}

// One error of 0.15 comes off both ends: 0.30, and the panel's height, measured to ± 0.15: 0.45 at worst and
// sqrt(0.09 + 0.0225) = 0.33541.
TEST(Exactness, OneSettingTurnedEndForEndCountsTwiceAndThePanelOnce) {
    const Cut cut = turnedEndForEnd();
    EXPECT_NEAR(cut.size(0).plusMinus.worst, 0.45, 1e-12);
    EXPECT_NEAR(cut.size(0).plusMinus.likely, 0.33541, 5e-6);
}

// With the two settings different ones: sqrt(3) x 0.15 = 0.25981 with the panel's.
TEST(Exactness, TwoSettingsFromBothEdgesAreLikelierToMakeUpForOneAnother) {
    Cut cut = turnedEndForEnd();
    cut.step("B").setting.fence = 90.5;
    EXPECT_NEAR(cut.size(0).plusMinus.worst, 0.45, 1e-12);
    EXPECT_NEAR(cut.size(0).plusMinus.likely, 0.25981, 5e-6);
}

// A panel true at both ends of its reference edge but not measured: its width as it was said, to ± 0.5. C's stop at
// the left end and D's at the right: 0.1 + 0.1 + 0.5.
TEST(Exactness, APanelNotMeasuredIsAsLongAsItWasSaid) {
    Cut cut;
    cut.project.panel.squareCorner = SquareCorner::Both;
    cut.step("D").stopEdge = Edge::Right;
    EXPECT_NEAR(cut.size(1).plusMinus.worst, 0.7, 1e-12);
}

// The rail lies on a mark at each end of C, 250 apart, each ± 0.25. At worst both are off to one side: 0.25 wherever the
// wall is, with D's 0.1 and D's lean: at the wall's upper end, 146 from the sled's fence, 0.0146. Likely at 146: the
// marks sqrt(0.416^2 + 0.584^2) x 0.25 = 0.17925; with 0.1 and 0.0146 sqrt(0.032132 + 0.01 + 0.000213) = 0.20578; at the lower end,
// at 90, sqrt(0.64^2 + 0.36^2) x 0.25 = 0.18358, with 0.1 and 0.009 sqrt(0.0337 + 0.01 + 0.000081) = 0.20924.
TEST(Exactness, ARailLiesOnTwoMarks) {
    Cut cut;
    WorkStep& c = cut.step("C");
    c.saw = "rail";
    c.setting.stop.reset();
    c.against.reset();
    c.stopEdge.reset();
    EXPECT_NEAR(cut.size(1).plusMinus.worst, 0.25 + 0.1 + 0.0146, 1e-9);
    EXPECT_NEAR(cut.size(1).plusMinus.likely, 0.20924, 2e-5);
}

// A's fence is parallel to its edge, D leans by 0.1 over a metre: 0.00573 degrees, well within class f's 20'.
TEST(Exactness, AnAngleTurnsByTheSledsLean) {
    const Cut cut;
    EXPECT_NEAR(cut.angle(0).plusMinus.worst, degrees(0.0001), 1e-9);
    EXPECT_NEAR(cut.angle(0).plusMinus.likely, degrees(0.0001), 1e-9);
    EXPECT_EQ(cut.angle(0).keeps, ToleranceClass::Fine);
}

// Turned by 45 degrees a stop that is off by 0.2 along the fence moves the wall by 0.2 x cos 45 = 0.14142.
TEST(Exactness, AStopOnATurnedGaugeCountsSquareToTheWall) {
    Cut cut;
    cut.project.bench->saws[2].repeatability = 0.2;
    Way way;
    way.saw = 2;
    way.setting.stop = 100;
    way.setting.angle = 45;
    way.turn = Side::Left;
    way.against = Edge::Bottom;
    way.stopEdge = Edge::Left;
    const SolvedLine line = hand::lineOf(cut.project, "X", {100, 0}, {350, 250}, Side::Left, 2);
    const auto shares = wallShares(cut.project, line, Side::Left, way);
    ASSERT_EQ(shares.size(), 3U) << "setting, far wall's kerf, the gauge's angle";
    EXPECT_NEAR(std::abs(shares[0].atStart) * shares[0].plusMinus, 0.14142, 5e-6);
    EXPECT_EQ(shares[1].source, "kerf gauge");
    EXPECT_EQ(shares[1].atStart, -1) << "a wider kerf reaches farther from the stop, to the line's right";
    EXPECT_EQ(shares[2].source, "turned gauge left 45°");
    EXPECT_EQ(shares[2].at(0), 0) << "turns about where it meets the fence";
}

// Expected from: the promise: what no step cuts has no figure.
TEST(Exactness, WithoutAStepThereIsNoFigure) {
    Cut cut;
    cut.order.steps.clear();
    const auto answer = exactness(cut.project, cut.solved, cut.order);
    ASSERT_EQ(answer.size(), 1U);
    EXPECT_FALSE(answer[0].sizes.at(0));
    EXPECT_FALSE(answer[0].angles.at(3));
}

}  // namespace
}  // namespace kerfwall

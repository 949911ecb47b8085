// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/shims.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

void expectWalls(const Shims& shims, const std::vector<double>& walls) {
    ASSERT_EQ(shims.walls.size(), walls.size());
    for (std::size_t i = 0; i < walls.size(); ++i) EXPECT_NEAR(shims.walls[i], walls[i], 1e-9) << i;
}

// Expected from: the table of check values: y 240, w 3.2, t 0.15, N 4: 240.6 bare, then four layers; 236.8 with four
// layers (wall at 239.4), then peeled.
TEST(Shims, WasteBeyondTheLineLayersAreAdded) {
    const Shims shims = shimsFor(240, true, 3.2);
    EXPECT_NEAR(shims.start, 240.6, 1e-12);
    EXPECT_EQ(shims.layers, 0);
    EXPECT_TRUE(shims.adding);
    expectWalls(shims, {240.6, 240.45, 240.3, 240.15, 240});
}
TEST(Shims, WasteBetweenLineAndFenceLayersArePeeled) {
    const Shims shims = shimsFor(240, false, 3.2);
    EXPECT_NEAR(shims.start, 236.8, 1e-12);
    EXPECT_EQ(shims.layers, 4);
    EXPECT_FALSE(shims.adding);
    expectWalls(shims, {239.4, 239.55, 239.7, 239.85, 240});
}

// Expected from: law: the wall never passes the line, and a layer moves it by its thickness towards it.
TEST(Shims, ComeUpToTheLineFromTheWasteSide) {
    for (const bool beyond : {true, false}) {
        const Shims shims = shimsFor(80, beyond, 2.4, Tape{0.1, 6});
        ASSERT_EQ(shims.walls.size(), 7u);
        for (std::size_t i = 0; i < 7; ++i) {
            EXPECT_NEAR((shims.walls[i] - 80) * (beyond ? 1 : -1), 0.1 * (6.0 - static_cast<double>(i)), 1e-9);
        }
    }
}

/// The window with its corners bored to 20, cut as the plan has it.
struct Bored {
    hand::Job job = hand::windowJob();
    OrderOfWork order;
    Bored() {
        for (Corner& corner : job.solved.cutouts[0].corners) {
            corner.regime = Regime::Bored;
            corner.boreRadius = 20;
        }
    }
    WorkStep step(const LineId& line) {
        order = plan(job.project, job.solved);
        return hand::stepFor(order, line);
    }
};

// Expected from: pencil. A at 90 with the waste above: fence 90.6, walls down to 90. B at 146 with the waste below: fence
// 142.8, walls up from 145.4. C at 110 from the stop, waste beyond: 110.6. D at 290, waste towards the stop: 286.8.
TEST(Shims, AreWorkedOutForFenceAndStop) {
    Bored bored;
    struct Case {
        LineId line;
        double start, first, last;
    };
    for (const Case& is : {Case{"A", 90.6, 90.6, 90}, Case{"B", 142.8, 145.4, 146}, Case{"C", 110.6, 110.6, 110},
                           Case{"D", 286.8, 289.4, 290}}) {
        const WorkStep step = bored.step(is.line);
        const auto shims = shimsFor(bored.job.project, bored.job.solved, step, 0);
        ASSERT_TRUE(shims) << is.line;
        EXPECT_NEAR(shims->start, is.start, 1e-9) << is.line;
        EXPECT_NEAR(shims->walls.front(), is.first, 1e-9) << is.line;
        EXPECT_NEAR(shims->walls.back(), is.last, 1e-9) << is.line;
    }
}

// Expected from: the same measured from the right end: a stop there has C's waste between, 400 - 110 = 290.
TEST(Shims, GoByTheEndAtTheStop) {
    Bored bored;
    bored.job.project.panel.squareCorner = SquareCorner::End;
    const WorkStep step = bored.step("C");
    ASSERT_EQ(step.stopEdge, Edge::Right);
    const auto shims = shimsFor(bored.job.project, bored.job.solved, step, 0);
    ASSERT_TRUE(shims);
    EXPECT_FALSE(shims->adding);
    EXPECT_NEAR(shims->start, 286.8, 1e-9);
    EXPECT_NEAR(shims->walls.back(), 290, 1e-9);
}

TEST(Shims, AreToldAtTheKerfsThatTouchBores) {
    Bored bored;
    EXPECT_NE(bored.step("A").text.find("A must touch the bores at C with A and A with D and never go past: set the fence "
                                        "90.6 mm for the first cut and add up to 4 layers of tape, 0.15 mm each,"),
              std::string::npos)
        << bored.step("A").text;
    EXPECT_NE(bored.step("B").text.find("put 4 layers of tape, 0.15 mm each, between the fence and the panel"), std::string::npos);
    EXPECT_NE(bored.step("B").text.find("go to the outer one and fair the other by hand"), std::string::npos);
    const hand::Job plain = hand::windowJob();
    EXPECT_EQ(hand::stepFor(plan(plain.project, plain.solved), "A").text.find("tape"), std::string::npos);
}

// Expected from: a rail has no fence to put tape on: 4 x 0.15 = 0.6 off the line first.
TEST(Shims, OnARailTheKerfMovesOver) {
    Bored bored;
    bored.job.solved.lines[0].kerfs[0].saw = 3;
    bored.job.project.lines.resize(4);
    const std::string text = bored.step("A").text;
    EXPECT_NE(text.find("cut 0.6 mm off the line on the waste side first and move over 0.15 mm a cut"), std::string::npos) << text;
}

// Expected from: pencil. The bore of C with A measured 40.3, that of A with D 39.9: 0.15 past, 0.05 short, so A goes 0.15
// out and the other round is faired by 0.2.
TEST(Shims, TwoRoundsThatDisagreeGoToTheOuterOne) {
    Bored bored;
    Record left, right;
    left.bore = {"C", "A"};
    left.measured = 40.3;
    right.bore = {"A", "D"};
    right.measured = 39.9;
    bored.job.project.record = {left, right};
    const std::string text = bored.step("A").text;
    EXPECT_NE(text.find("As measured, the round at C with A lies 0.15 mm past the line: go to it, and fair the one at A with "
                        "D by 0.2 mm by hand."),
              std::string::npos)
        << text;
}

}  // namespace
}  // namespace kerfwall

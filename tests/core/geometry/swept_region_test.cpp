// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/swept_region.h"

#include <gtest/gtest.h>

#include <numbers>

namespace kerfwall::test {
namespace {

constexpr double kHalfTurn = std::numbers::pi;

/// A slot 30 long and 10 wide, its right end a half round of 5 about (30, 5).
SweptRegion slot() {
    return SweptRegion(joinToRim({straight({0, 0}, {30, 0}), arc({30, 5}, 5, -kHalfTurn / 2, kHalfTurn, true),
                                  straight({30, 10}, {0, 10}), straight({0, 10}, {0, 0})}));
}

Spans coverOf(Point origin, Point along) {
    RimLine line;
    line.origin = origin;
    line.along = along;
    line.spans = {{-50, 50}};
    return slot().coverOn(line);
}

void expectOneSpan(const Spans& spans, double from, double to) {
    ASSERT_EQ(spans.size(), 1u);
    EXPECT_NEAR(spans[0].first, from, 1e-9);
    EXPECT_NEAR(spans[0].second, to, 1e-9);
}

// Expected from: pencil. Along the middle from the left end to the round's; across the round 3 beyond its
// centre, a chord of 4 each way.
TEST(SweptRegion, CoversALineWhereItRunsThrough) {
    expectOneSpan(coverOf({0, 5}, {1, 0}), 0, 35);
    expectOneSpan(coverOf({33, 5}, {0, 1}), -4, 4);
    EXPECT_TRUE(coverOf({0, 12}, {1, 0}).empty());
}

// Expected from: the rule that a side on the rim is covered whichever way it runs. Sides that lean, whose
// middles rounding puts on either side of the rim.
TEST(SweptRegion, CoversALineThatLiesOnItsRim) {
    for (int turn = 1; turn <= 40; ++turn) {
        const Point u{std::cos(0.15 * turn), std::sin(0.15 * turn)};
        const Point from{200.1, 130.7};
        const Point to = from + 30 * u;
        const Point up = 10 * leftOf(u);
        const SweptRegion block(joinToRim({straight(from, to), straight(to, to + up),
                                           straight(to + up, from + up), straight(from + up, from)}));
        RimLine line;
        line.origin = from;
        line.along = u;
        line.spans = {{-50, 50}};
        expectOneSpan(block.coverOn(line), 0, 30);
        line.along = -1.0 * u;
        expectOneSpan(block.coverOn(line), -30, 0);
    }
}

// Expected from: pencil. The line x = 35 touches the round and goes on outside it.
TEST(SweptRegion, ALineThatTouchesItsRoundIsNotCovered) {
    EXPECT_TRUE(coverOf({35, 0}, {0, 1}).empty());
    EXPECT_TRUE(coverOf({35 - kTouch / 2, 0}, {0, 1}).empty());
    EXPECT_EQ(coverOf({35 - 1e-6, 0}, {0, 1}).size(), 1u);
}

TEST(SweptRegion, KnowsItsRimAndItsInside) {  // Expected from: pencil.
    EXPECT_TRUE(slot().holds({34, 5}));
    EXPECT_FALSE(slot().holds({34.5, 8}));
    EXPECT_TRUE(slot().isOnRim({34, 8}));
    EXPECT_FALSE(slot().isOnRim({34, 7.999}));
}

// Expected from: pencil. A circle of 5 about (30, 5) lies on the round: its marks are the round's two ends.
// One of 5 about (15, 5) touches both sides, one of 3 about (32, 5) the round's middle: no crossing.
TEST(SweptRegion, MarksWhereACircleMeetsIt) {
    std::vector<double> marks;
    slot().markOn(arc({30, 5}, 5, 0, 2 * kHalfTurn, true), marks);
    for (const double mark : marks) EXPECT_NEAR(std::abs(std::sin(mark)), 1, 1e-6);
    EXPECT_FALSE(marks.empty());
    marks.clear();
    slot().markOn(arc({15, 5}, 5, 0, 2 * kHalfTurn, true), marks);
    slot().markOn(arc({32, 5}, 3, 1, 2 * kHalfTurn, true), marks);
    EXPECT_TRUE(marks.empty());
}

}  // namespace
}  // namespace kerfwall::test

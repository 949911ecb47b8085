// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/outline.h"

#include <gtest/gtest.h>

#include <numbers>

namespace kerfwall::test {
namespace {

constexpr double kPi = std::numbers::pi;

OutlinePiece side(Point from, Point to) {
    OutlinePiece piece;
    piece.from = from;
    piece.to = to;
    return piece;
}

OutlinePiece round(Point from, Point to, Point centre, double radius, Turn turn) {
    OutlinePiece piece = side(from, to);
    piece.isArc = true;
    piece.centre = centre;
    piece.radius = radius;
    piece.turn = turn;
    return piece;
}

/// A slot from (0, -5) to (30, 5) with a half round at each end, the opening on its left.
OutlineLoop slot() {
    return {side({0, -5}, {30, -5}), round({30, -5}, {30, 5}, {30, 0}, 5, Turn::Left), side({30, 5}, {0, 5}),
            round({0, 5}, {0, -5}, {0, 0}, 5, Turn::Left)};
}

/// A round island of radius 2 about (15, 0), clockwise, in two halves.
OutlineLoop island() {
    return {round({17, 0}, {13, 0}, {15, 0}, 2, Turn::Right), round({13, 0}, {17, 0}, {15, 0}, 2, Turn::Right)};
}

// Expected from: pencil. 30 x 10 and two half rounds of 5: area 300 + 25 pi, way round 60 + 10 pi, from -5 to 35.
TEST(Outline, ASlotsAreaWayRoundAndBounds) {
    const Outline outline = makeOutline({slot()});
    EXPECT_NEAR(outline.area, 300 + 25 * kPi, 1e-9);
    EXPECT_NEAR(outline.perimeter, 60 + 10 * kPi, 1e-9);
    EXPECT_NEAR(outline.bounds.low.x, -5, 1e-12);
    EXPECT_NEAR(outline.bounds.low.y, -5, 1e-12);
    EXPECT_NEAR(outline.bounds.high.x, 35, 1e-12);
    EXPECT_NEAR(outline.bounds.high.y, 5, 1e-12);
}

// Expected from: pencil. The island takes 4 pi away and adds 4 pi to the way round.
TEST(Outline, AnIslandIsTakenAway) {
    EXPECT_NEAR(signedArea(island()), -4 * kPi, 1e-9);
    const Outline outline = makeOutline({slot(), island()});
    EXPECT_NEAR(outline.area, 300 + 21 * kPi, 1e-9);
    EXPECT_NEAR(outline.perimeter, 60 + 14 * kPi, 1e-9);
}

// Expected from: pencil. A round corner of 6 cut into a square of 20 the wrong way leaves 400 - 9 pi; bulging
// the other way about its three-quarter round it adds 27 pi.
TEST(Outline, ARoundsSenseDecidesWhatItTakes) {
    const auto square = [](Turn turn) {
        return OutlineLoop{side({0, 0}, {20, 0}), side({20, 0}, {20, 14}),
                           round({20, 14}, {14, 20}, {20, 20}, 6, turn), side({14, 20}, {0, 20}), side({0, 20}, {0, 0})};
    };
    EXPECT_NEAR(signedArea(square(Turn::Right)), 400 - 9 * kPi, 1e-9);
    EXPECT_NEAR(signedArea(square(Turn::Left)), 400 + 27 * kPi, 1e-9);
}

// Expected from: pencil. From south to north past east is half a turn; from south to west three quarters
// anticlockwise, one quarter clockwise.
TEST(Outline, AnArcsSweepIsPositiveWhicheverWayItTurns) {
    EXPECT_NEAR(sweepOf(round({0, -5}, {0, 5}, {0, 0}, 5, Turn::Left)), kPi, 1e-12);
    EXPECT_NEAR(sweepOf(round({0, -5}, {-5, 0}, {0, 0}, 5, Turn::Left)), 1.5 * kPi, 1e-12);
    EXPECT_NEAR(sweepOf(round({0, -5}, {-5, 0}, {0, 0}, 5, Turn::Right)), 0.5 * kPi, 1e-12);
}

// Expected from: pencil. In the slot, in its round end, on the island, beside it, outside.
TEST(Outline, InsideIsTheOpeningAndNotItsIslands) {
    const Outline outline = makeOutline({slot(), island()});
    EXPECT_TRUE(isInside(outline, {5, 0}));
    EXPECT_TRUE(isInside(outline, {34, 0}));
    EXPECT_TRUE(isInside(outline, {15, 3}));
    EXPECT_FALSE(isInside(outline, {15, 1})) << "on the island";
    EXPECT_FALSE(isInside(outline, {34, 4})) << "past the round end";
    EXPECT_FALSE(isInside(outline, {15, 9}));
    EXPECT_FALSE(isInside(makeOutline({}), {0, 0}));
}

TEST(Outline, NothingOpenedHasNoSize) {  // Expected from: the contract.
    const Outline nothing = makeOutline({});
    EXPECT_EQ(nothing.area, 0);
    EXPECT_EQ(nothing.perimeter, 0);
    EXPECT_EQ(nothing.bounds, Box{});
}

}  // namespace
}  // namespace kerfwall::test

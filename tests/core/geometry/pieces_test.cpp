// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/pieces.h"

#include <gtest/gtest.h>

#include <numbers>
#include <vector>

#include "core/geometry/curve.h"
#include "core/geometry/solve.h"
#include "tests/core/geometry/law_layouts.h"

namespace kerfwall {
namespace {

// Expected from: the winding number by summed angles, another way to the same number.
TEST(Pieces, TurnRoundAPlaceAsOftenAsTheAnglesSay) {
    int inside = 0;
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        const Solved solved = solve(laws::seededProject(seed));
        const Outline& outline = solved.cutouts.front().opening;
        const Pieces pieces(outline);
        for (double x = 200.03; x < 400; x += 2.7) {
            for (double y = 150.07; y < 350; y += 3.1) {
                EXPECT_EQ(pieces.turnsRound({x, y}) > 0, isInside(outline, {x, y})) << seed << ": " << x << ", " << y;
                inside += isInside(outline, {x, y}) ? 1 : 0;
            }
        }
    }
    EXPECT_GT(inside, 500);
}

// Expected from: pencil. A ring of 10 and 4 about the origin: once round in it, not at all in the middle and outside.
TEST(Pieces, TurnRoundARingOnce) {
    OutlineLoop hole = circleLoop({0, 0}, 4);
    std::swap(hole[0], hole[1]);
    for (OutlinePiece& half : hole) {
        std::swap(half.from, half.to);
        half.turn = Turn::Right;
    }
    const Outline ring = makeOutline({circleLoop({0, 0}, 10), hole});
    const Pieces pieces(ring);
    EXPECT_EQ(pieces.turnsRound({7, 0.1}), 1);
    EXPECT_EQ(pieces.turnsRound({-7, -3}), 1);
    EXPECT_EQ(pieces.turnsRound({1, 1}), 0);
    EXPECT_EQ(pieces.turnsRound({-11, 0.1}), 0);
    EXPECT_TRUE(pieces.isOnBorder({0, 4.009}, 0.01));
    EXPECT_FALSE(pieces.isOnBorder({0, 4.011}, 0.01));
}

TEST(Pieces, HalfWayAlongAnArcLiesOnIt) {
    const OutlinePiece half = circleLoop({3, 1}, 2).front();
    EXPECT_NEAR(distance(middleOf(half), {3, 3}), 0, 1e-12);
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

#include "core/geometry/curve.h"

namespace kerfwall::test {
namespace {

/// The sides of a polygon, free on its left, not joined yet.
std::vector<Curve> sidesOf(const std::vector<Point>& corners) {
    std::vector<Curve> sides;
    for (std::size_t i = 0; i < corners.size(); ++i) sides.push_back(straight(corners[i], corners[(i + 1) % corners.size()]));
    return sides;
}

std::vector<double> loopAreas(const Rim& rim) {
    std::vector<double> areas;
    for (const auto& loop : rim.closedRuns()) areas.push_back(signedArea(loop));
    std::ranges::sort(areas);
    return areas;
}

// Expected from: pencil. Handed over in any order, four sides of 20 x 10 make one loop of 200.
TEST(Rim, SidesInAnyOrderMakeOneLoop) {
    std::vector<Curve> sides = sidesOf({{0, 0}, {20, 0}, {20, 10}, {0, 10}});
    std::ranges::swap(sides[0], sides[2]);
    std::ranges::swap(sides[1], sides[2]);
    const Rim rim = joinToRim(sides);
    EXPECT_TRUE(rim.openEnds().empty());
    EXPECT_EQ(loopAreas(rim), (std::vector<double>{200}));
}

// Expected from: pencil. Two rooms that touch in one point with wood between them (a bow tie): each goes on
// round its own room, so there are two loops of 10 x 10 / 2, not one of both.
TEST(Rim, RoomsThatTouchInAPointStayApart) {
    std::vector<Curve> sides = sidesOf({{0, 0}, {-10, 5}, {-10, -5}});
    for (const Curve& side : sidesOf({{0, 0}, {10, -5}, {10, 5}})) sides.push_back(side);
    EXPECT_EQ(loopAreas(joinToRim(sides)), (std::vector<double>{50, 50}));
}

// Expected from: pencil. Two blocks of wood that touch in one point, all round them free: the free side of
// each wedge goes on from one block to the other, one loop of both.
TEST(Rim, WoodThatTouchesInAPointHasOneRim) {
    std::vector<Curve> sides = sidesOf({{0, 0}, {-10, -5}, {-10, 5}});
    for (const Curve& side : sidesOf({{0, 0}, {10, 5}, {10, -5}})) sides.push_back(side);
    EXPECT_EQ(loopAreas(joinToRim(sides)), (std::vector<double>{-100}));
}

// Expected from: ends 5e-5 apart lie within the 1e-4 that is joined; ends 1.5e-4 apart do not. A start nearer
// to the end wins over one farther off.
TEST(Rim, EndsAreJoinedNearestFirstWithinATenthOfAMicrometre) {
    std::vector<Curve> sides = sidesOf({{0, 0}, {20, 0}, {20, 10}});
    sides[1].from = {20, 5e-5};
    EXPECT_TRUE(joinToRim(sides).openEnds().empty());
    sides[1].from = {20, 1.5e-4};
    EXPECT_EQ(joinToRim(sides).openEnds(), (std::vector<std::size_t>{0}));
    const Rim rim = joinToRim({straight({0, 0}, {10, 0}), straight({10, 6e-5}, {10, 10}), straight({10, 1e-5}, {20, 0})});
    EXPECT_EQ(rim.next[0], 2u);
}

// Expected from: the contract: a run longer than 1e-4 that breaks off is told of, a shorter one is dust.
TEST(Rim, ShortRunsThatBreakOffAreDust) {
    const Rim dust = joinToRim({straight({0, 0}, {5e-5, 0}), straight({5, 5}, {6, 5}), straight({6, 5}, {6, 5.00005})});
    EXPECT_EQ(dust.openEnds(), (std::vector<std::size_t>{2})) << "the run of 1 and 0.00005, not the one of 0.00005 alone";
    EXPECT_TRUE(dust.loops().empty());
}

// Expected from: pencil. A slot: 30 x 10 with round ends of radius 5, 300 + 25 pi; turned about, the same less.
// A quarter round of 4 takes 16 - 4 pi off a corner of 30 x 10.
TEST(Rim, ArcsCountExactlyInTheArea) {
    const double half = std::numbers::pi;
    const Rim slot = joinToRim({straight({0, -5}, {30, -5}), arc({30, 0}, 5, -half / 2, half, true),
                                straight({30, 5}, {0, 5}), arc({0, 0}, 5, half / 2, half, true)});
    ASSERT_EQ(slot.loops().size(), 1u);
    EXPECT_NEAR(signedArea(slot.closedRuns()[0]), 300 + 25 * half, 1e-9);
    const Rim about = reversed(slot);
    ASSERT_EQ(about.loops().size(), 1u);
    EXPECT_NEAR(signedArea(about.closedRuns()[0]), -(300 + 25 * half), 1e-9);
    const Rim eased = joinToRim({straight({0, 0}, {30, 0}), straight({30, 0}, {30, 6}), arc({26, 6}, 4, 0, half / 2, true),
                                 straight({26, 10}, {0, 10}), straight({0, 10}, {0, 0})});
    ASSERT_EQ(eased.loops().size(), 1u);
    EXPECT_NEAR(signedArea(eased.closedRuns()[0]), 300 - (16 - 4 * half), 1e-9);
}

// Expected from: pencil. Straight down past the round end of a slot a place is once inside, also in the
// slice between arc and chord; a dent's slice is outside. Clockwise the same counts -1.
TEST(Rim, ALoopTurnsOnceRoundWhatItHolds) {
    const double half = std::numbers::pi;
    const Rim slot = joinToRim({straight({0, -5}, {30, -5}), arc({30, 0}, 5, -half / 2, half, true),
                                straight({30, 5}, {0, 5}), arc({0, 0}, 5, half / 2, half, false)});  // left end dented in
    const auto loop = slot.closedRuns().at(0);
    EXPECT_EQ(windingRound(loop, {15, 0}), 1);
    EXPECT_EQ(windingRound(loop, {34, 0}), 1) << "in the round end";
    EXPECT_EQ(windingRound(loop, {34, 2.5}), 1) << "4.72 from its centre, beyond the chord of its quarter";
    EXPECT_EQ(windingRound(loop, {34, 4}), 0) << "past it";
    EXPECT_EQ(windingRound(loop, {4, 0}), 0) << "in the dent";
    EXPECT_EQ(windingRound(loop, {4, 2.5}), 0) << "in the dent, beyond its chord";
    EXPECT_EQ(windingRound(loop, {4, 4}), 1) << "beside the dent";
    EXPECT_EQ(windingRound(loop, {-20, 0}), 0);
    const Rim about = reversed(slot);
    EXPECT_EQ(windingRound(about.closedRuns().at(0), {15, 0}), -1);
}

// Expected from: pencil. Half rounds of radius 3 about (0, 5) and (10, 5), the left one dented in, the right one swelling
// out. (1.5, 6.5) and (11.5, 6.5) lie on the chords of their quarters: 2.12 from the centre, within the round.
TEST(Rim, APlaceOnAChordIsWithinTheRound) {
    const Rim shape = joinToRim({straight({0, 10}, {0, 8}), arcThrough({0, 5}, 3, {0, 8}, {0, 2}, false), straight({0, 2}, {0, 0}),
                                 straight({0, 0}, {10, 0}), straight({10, 0}, {10, 2}), arcThrough({10, 5}, 3, {10, 2}, {10, 8}, true),
                                 straight({10, 8}, {10, 10}), straight({10, 10}, {0, 10})});
    const auto loop = shape.closedRuns().at(0);
    EXPECT_EQ(windingRound(loop, {1.5, 6.5}), 0) << "in the dent";
    EXPECT_EQ(windingRound(loop, {1.5, 3.5}), 0) << "in the dent";
    EXPECT_EQ(windingRound(loop, {11.5, 6.5}), 1);
    EXPECT_EQ(windingRound(loop, {11.5, 3.5}), 1);
}

}  // namespace
}  // namespace kerfwall::test

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/rolling.h"

#include <gtest/gtest.h>

#include <numbers>

namespace kerfwall {
namespace {

/// A closed rim through these corners, free on its left.
Rim polygon(const std::vector<Point>& corners) {
    std::vector<Curve> sides;
    for (std::size_t i = 0; i < corners.size(); ++i) sides.push_back(straight(corners[i], corners[(i + 1) % corners.size()]));
    return joinToRim(std::move(sides));
}

double wholeArea(const Rim& rim) {
    double area = 0;
    for (const auto& loop : rim.closedRuns()) area += signedArea(loop);
    return area;
}

// Expected from: pencil. Inside a 40 x 30 box a disc of 5 has 30 x 20 for its centre.
TEST(Rolling, InABoxTheCentreHasASmallerBox) {
    const Track track = roll(polygon({{0, 0}, {40, 0}, {40, 30}, {0, 30}}), 5);
    EXPECT_TRUE(track.gaps.empty());
    EXPECT_EQ(track.rim.curves.size(), 4u);
    EXPECT_NEAR(wholeArea(track.rim), 600, 1e-9);
}

// Expected from: pencil. Round the outside of the box: a loop that runs clockwise about 40 x 30 grown by 5:
// 1200 + 2 (40 + 30) 5 + 25 pi.
TEST(Rolling, RoundABoxTheCentreRunsAboutItsCorners) {
    const Track track = roll(reversed(polygon({{0, 0}, {40, 0}, {40, 30}, {0, 30}})), 5);
    EXPECT_TRUE(track.gaps.empty());
    EXPECT_EQ(track.rim.curves.size(), 8u);
    EXPECT_NEAR(wholeArea(track.rim), -(1900 + 25 * std::numbers::pi), 1e-9);
}

// Expected from: there and back. Shrinking the free side by r and growing the rest by r again opens it by the
// disc: the box keeps its sides and loses (4 - pi) r² in its corners.
TEST(Rolling, RolledInAndOutAgainABoxLosesItsCorners) {
    const Rim box = polygon({{0, 0}, {40, 0}, {40, 30}, {0, 30}});
    const Track in = roll(box, 5);
    const Track out = roll(reversed(in.rim), 5);
    EXPECT_TRUE(out.gaps.empty());
    EXPECT_NEAR(-wholeArea(out.rim), 1200 - (4 - std::numbers::pi) * 25, 1e-9);
}

TEST(Rolling, ADiscTooWideHasNoRoom) {
    EXPECT_TRUE(roll(polygon({{0, 0}, {40, 0}, {40, 30}, {0, 30}}), 15.1).rim.curves.empty());
}

// Expected from: pencil. A neck 8 wide between two 20 x 20 rooms stops a disc of 5: two loops of 10 x 10,
// each with a nose into the neck bounded by arcs about the neck's lips. A disc of 3 passes: one loop.
TEST(Rolling, ANeckDividesTheRoomOfADiscThatCannotPass) {
    const Rim rooms = polygon({{0, 0}, {20, 0}, {20, 6}, {30, 6}, {30, 0}, {50, 0}, {50, 20}, {30, 20}, {30, 14},
                               {20, 14}, {20, 20}, {0, 20}});
    const Track wide = roll(rooms, 5);
    EXPECT_EQ(wide.rim.loops().size(), 2u);
    EXPECT_TRUE(wide.gaps.empty());
    // The nose: the disc advances until both lips touch, 3 from their chord (5² = 4² + 3²).
    double farthest = 0;
    for (const Curve& c : wide.rim.curves) {
        if (c.from.x < 25) farthest = std::max(farthest, c.from.x);
    }
    EXPECT_NEAR(farthest, 17, 1e-9);
    EXPECT_EQ(roll(rooms, 3).rim.loops().size(), 1u);
}

// Expected from: the law that a step of s moves the area by no more than the rim's length times s.
TEST(Rolling, AStepOfANanometreOrLessInAWallDoesNotDerailIt) {
    const double whole = wholeArea(roll(polygon({{0, 0}, {40, 0}, {40, 30}, {0, 30}}), 5).rim);
    for (const double step : {1e-6, 1e-7, 1e-8, 3e-9, 1e-9, 3e-10, 1e-10, 1e-11, 1e-12}) {
        for (const double sign : {1.0, -1.0}) {
            const Track track = roll(polygon({{0, 0}, {17, 0}, {17, sign * step}, {40, sign * step}, {40, 30}, {0, 30}}), 5);
            EXPECT_TRUE(track.gaps.empty()) << step;
            EXPECT_EQ(track.rim.loops().size(), 1u) << step;
            EXPECT_NEAR(wholeArea(track.rim), whole, 140 * step + 1e-9) << step;
        }
    }
}

// Expected from: pencil. In a round of 20 a disc of 5 runs on a circle of 15.
TEST(Rolling, InARoundTheCentreRunsOnASmallerRound) {
    const double half = std::numbers::pi;
    const Rim round = joinToRim({arc({0, 0}, 20, 0, half, true), arc({0, 0}, 20, half, half, true)});
    const Track track = roll(round, 5);
    EXPECT_NEAR(wholeArea(track.rim), half * 225, 1e-9);
    EXPECT_TRUE(roll(round, 20.5).rim.curves.empty());
}

// Expected from: pencil. Every piece of a track keeps exactly the radius from the rim.
TEST(Rolling, EveryPlaceOfTheTrackIsAtTheRadius) {
    const Rim star = polygon({{0, 0}, {60, 10}, {120, 0}, {100, 50}, {130, 90}, {60, 70}, {0, 95}, {25, 45}});
    const Track track = roll(star, 7);
    ASSERT_FALSE(track.rim.curves.empty());
    for (const Curve& curve : track.rim.curves) {
        for (const double t : {0.0, 0.3, 0.7, 1.0}) {
            double nearest = 1e9;
            for (const Curve& side : star.curves) nearest = std::min(nearest, distanceTo(side, curve.at(t * curve.size)));
            EXPECT_NEAR(nearest, 7, 1e-9);
        }
    }
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/wanted_outline.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

namespace kerfwall {
namespace {

TEST(WantedOutline, RunsAnticlockwiseWhicheverWayItWasGiven) {
    const std::vector<Point> clockwise{{0, 0}, {0, 5}, {9, 5}, {9, 0}, {0, 0}};
    EXPECT_EQ(anticlockwise(clockwise), (std::vector<Point>{{9, 0}, {9, 5}, {0, 5}, {0, 0}}));
}

// Expected from: pencil. A rounded rectangle is a b - (4 - pi) r^2.
TEST(WantedOutline, RoundsTheCornersOfARectangle) {
    const std::array<double, 4> radii{5, 5, 5, 5};
    const OutlineLoop loop = roundedLoop({{0, 0}, {40, 0}, {40, 30}, {0, 30}}, radii);
    EXPECT_EQ(loop.size(), 8u);
    EXPECT_NEAR(signedArea(loop), 1200 - (4 - std::numbers::pi) * 25, 1e-9);
}

// Expected from: pencil. The side climbs 4 for every 3 across, half the corner's angle has tangent 1/2:
// radius 10 touches 20 from the corner, at (20, 0) and (12, 16).
TEST(WantedOutline, TouchesTwoRadiiOutWhenHalfTheAngleHasTangentOneHalf) {
    const std::array<double, 3> radii{10, 0, 0};
    const OutlineLoop loop = roundedLoop({{0, 0}, {100, 0}, {60, 80}}, radii);
    ASSERT_EQ(loop.size(), 4u);
    ASSERT_TRUE(loop[0].isArc);
    EXPECT_NEAR(distance(loop[0].from, {12, 16}), 0, 1e-9);
    EXPECT_NEAR(distance(loop[0].to, {20, 0}), 0, 1e-9);
}

// Expected from: pencil. An L has five corners of 90 degrees and one of 270, which stays sharp.
TEST(WantedOutline, LeavesAnInwardCornerSharp) {
    const std::array<double, 6> radii{2, 2, 2, 2, 2, 2};
    const OutlineLoop loop = roundedLoop({{0, 0}, {20, 0}, {20, 10}, {10, 10}, {10, 20}, {0, 20}}, radii);
    EXPECT_EQ(loop.size(), 11u);
    EXPECT_NEAR(signedArea(loop), 300 - 5 * (1 - std::numbers::pi / 4) * 4, 1e-9);
}

// Expected from: pencil. A slot 10 wide takes corners of 5 at most: both ends become half rounds.
TEST(WantedOutline, TakesARadiusAsLargeAsTheSidesHaveRoomFor) {
    const std::array<double, 4> radii{8, 8, 8, 8};
    const OutlineLoop loop = roundedLoop({{0, 0}, {40, 0}, {40, 10}, {0, 10}}, radii);
    EXPECT_NEAR(signedArea(loop), 300 + 25 * std::numbers::pi, 1e-9);
}

}  // namespace
}  // namespace kerfwall

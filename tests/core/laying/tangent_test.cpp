// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/tangent.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

// Expected from: pencil. 3, 4, 5: from (0, 0) a round of 3 about (5, 0) is touched at 4 along, at (3.2, +-2.4).
TEST(Tangent, TwoTouchARoundFromAPoint) {
    const auto tangents = commonTangents({{0, 0}, 0}, {{5, 0}, 3});
    ASSERT_EQ(tangents.size(), 2U);
    for (const auto& [from, to] : tangents) {
        EXPECT_EQ(from, (Point{0, 0}));
        EXPECT_NEAR(to.x, 3.2, 1e-12);
        EXPECT_NEAR(std::abs(to.y), 2.4, 1e-12);
    }
}

TEST(Tangent, FourTouchTwoRoundsApartTwoWhereTheyOverlapNoneInside) {
    EXPECT_EQ(commonTangents({{0, 0}, 2}, {{10, 0}, 3}).size(), 4U);
    EXPECT_EQ(commonTangents({{0, 0}, 2}, {{4, 0}, 3}).size(), 2U);
    EXPECT_TRUE(commonTangents({{0, 0}, 1}, {{1, 0}, 3}).empty());
    EXPECT_TRUE(commonTangents({{1, 0}, 0}, {{0, 0}, 3}).empty());
}

// Expected from: the radius to a touching place is square to the tangent.
TEST(Tangent, EveryTangentStandsSquareOnBothRadii) {
    for (const auto& [from, to] : commonTangents({{1, 2}, 2}, {{11, -3}, 3.5})) {
        EXPECT_NEAR(distance(from, {1, 2}), 2, 1e-12);
        EXPECT_NEAR(distance(to, {11, -3}), 3.5, 1e-12);
        EXPECT_NEAR(dot(to - from, from - Point{1, 2}), 0, 1e-9);
        EXPECT_NEAR(dot(to - from, to - Point{11, -3}), 0, 1e-9);
    }
}

// Expected from: pencil. A bore of 20 in the corner at (110, 90) touches both lines: its centre is (130, 110).
TEST(Tangent, ABoredCornerLeavesACircle) {
    Project project = gridOfFour();
    project.cutouts.push_back({"cutout-1", {{200, 118}}, {{"A", "C", 20, {}}}, {}, {}});
    const auto circles = boreCircles(solve(project));
    ASSERT_EQ(circles.size(), 1U);
    EXPECT_NEAR(circles.front().centre.x, 130, 1e-9);
    EXPECT_NEAR(circles.front().centre.y, 110, 1e-9);
    EXPECT_EQ(circles.front().radius, 20);
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/mismatch.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "core/geometry/distance.h"
#include "core/geometry/wanted_outline.h"

namespace kerfwall {
namespace {

std::vector<OutlinePiece> box(double left, double bottom, double right, double top, double radius) {
    const std::array<double, 4> radii{radius, radius, radius, radius};
    return roundedLoop({{left, bottom}, {right, bottom}, {right, top}, {left, top}}, radii);
}

// Expected from: pencil. All four walls stand 0.65 further out, the corners sqrt 2 of that where both are
// sharp; told at the middle of a wall where the corners' rounds share their centres.
TEST(Mismatch, ABoxLargerAllRound) {
    const auto sharp = greatestMismatch(box(-0.65, -0.65, 100.65, 50.65, 0), box(0, 0, 100, 50, 0));
    ASSERT_TRUE(sharp);
    EXPECT_NEAR(sharp->distance, 0.65 * std::sqrt(2.0), kMismatchSlack);
    const auto round = greatestMismatch(box(-0.65, -0.65, 100.65, 50.65, 6.65), box(0, 0, 100, 50, 6));
    ASSERT_TRUE(round);
    EXPECT_NEAR(round->distance, 0.65, kMismatchSlack);
    EXPECT_NEAR(distance(round->at, {50, -0.65}), 0, 1e-9);
}

// Expected from: pencil. A corner of 90 degrees leaves an arc of radius 5 by 5 (sqrt 2 - 1).
TEST(Mismatch, ASharpCornerAgainstARoundOne) {
    const auto off = greatestMismatch(box(0, 0, 100, 50, 0), box(0, 0, 100, 50, 5));
    ASSERT_TRUE(off);
    EXPECT_NEAR(off->distance, 5 * (std::sqrt(2.0) - 1), kMismatchSlack);
}

// Expected from: pencil. The other way the arc's own middle is furthest from the sharp corner's sides:
// 5 - 5 / sqrt 2.
TEST(Mismatch, IsOneSided) {
    const auto off = greatestMismatch(box(0, 0, 100, 50, 5), box(0, 0, 100, 50, 0));
    ASSERT_TRUE(off);
    EXPECT_NEAR(off->distance, 5 - 5 / std::sqrt(2.0), kMismatchSlack);
}

// Expected from: pencil. A level piece 3 above the centre of an arc of 10, from x = -1 to 8: under the centre
// it is 7 off, which is neither an end (6.84 and 1.46) nor its middle (5.39).
TEST(Mismatch, IsGreatestAtTheFootOfAnArcsCentre) {
    OutlinePiece arc;
    arc.isArc = true;
    arc.radius = 10;
    arc.from = {std::sqrt(99.0), 1};
    arc.to = {-std::sqrt(99.0), 1};
    const auto off = greatestMismatch({straight({-1, 3}, {8, 3})}, {arc});
    ASSERT_TRUE(off);
    EXPECT_NEAR(off->distance, 7, kMismatchSlack);
}

TEST(Mismatch, OfTheSameRunIsNothing) {
    const auto off = greatestMismatch(box(0, 0, 100, 50, 6.35), box(0, 0, 100, 50, 6.35));
    ASSERT_TRUE(off);
    EXPECT_NEAR(off->distance, 0, kMismatchSlack);
    EXPECT_FALSE(greatestMismatch({}, box(0, 0, 1, 1, 0)));
    EXPECT_FALSE(greatestMismatch(box(0, 0, 1, 1, 0), {}));
}

}  // namespace
}  // namespace kerfwall

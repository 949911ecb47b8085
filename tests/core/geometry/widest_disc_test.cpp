// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/widest_disc.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

Outline polygon(const std::vector<Point>& corners) { return makeOutline({polygonLoop(corners)}); }

// Expected from: pencil.
TEST(WidestDisc, InARectangleIsItsShorterSide) {
    EXPECT_NEAR(widestDisc(polygon({{110, 90}, {290, 90}, {290, 146}, {110, 146}})).diameter, 56, 1e-9);
}

// Expected from: the incircle of a right triangle with sides 3, 4, 5 has radius (3 + 4 - 5) / 2 = 1.
TEST(WidestDisc, InARightTriangleIsItsIncircle) {
    EXPECT_NEAR(widestDisc(polygon({{0, 0}, {40, 0}, {0, 30}})).diameter, 20, 1e-9);
}

// Expected from: pencil. In an L of arms 40 the disc touches both outer sides and the inner corner (40, 40):
// centre (r, r), and (40 - r) sqrt(2) = r.
TEST(WidestDisc, InAnElbowRestsOnTheInnerCorner) {
    const double r = 40 * std::sqrt(2.0) / (1 + std::sqrt(2.0));
    const Outline elbow = polygon({{0, 0}, {120, 0}, {120, 40}, {40, 40}, {40, 120}, {0, 120}});
    EXPECT_NEAR(widestDisc(elbow).diameter, 2 * r, 1e-9);
}

// Expected from: pencil. Two rooms joined by a neck: the wider room wins wherever the search begins.
TEST(WidestDisc, OfTwoRoomsTheWiderCounts) {
    const Outline rooms = polygon({{0, 0}, {20, 0}, {20, 6}, {30, 6}, {30, 0}, {50.5, 0}, {50.5, 20.5}, {30, 20.5},
                                   {30, 14}, {20, 14}, {20, 20}, {0, 20}});
    EXPECT_NEAR(widestDisc(rooms).diameter, 20.5, 1e-9);
}

// Expected from: pencil. A sliver a nanometre wide is searched as quickly as any; it went on without end.
TEST(WidestDisc, InASliverIsItsWidth) {
    EXPECT_NEAR(widestDisc(polygon({{100, 50}, {300, 50}, {300, 50 + 1e-9}, {100, 50 + 1e-9}})).diameter, 1e-9, 1e-9);
    EXPECT_NEAR(widestDisc(polygon({{100, 50}, {300, 50}, {300, 50.01}, {100, 50.01}})).diameter, 0.01, 1e-9);
}

TEST(WidestDisc, OfNothingIsNothing) { EXPECT_EQ(widestDisc(Outline{}).diameter, 0); }

}  // namespace
}  // namespace kerfwall

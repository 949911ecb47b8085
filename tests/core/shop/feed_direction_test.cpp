// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/feed_direction.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

constexpr Turn kClockwise = Turn::Right;
constexpr Turn kAnticlockwise = Turn::Left;

// Expected from: common practice, no source: against the tooth, held in the hand an opening clockwise and an
// outside anticlockwise, seen from the router; on a table the cutter turns the other way seen from above.
// Turning the panel over mirrors what is seen on it. Eight cases.
TEST(FeedDirection, HeldInTheHandFaceUp) {
    EXPECT_EQ(feedFromLayoutFace(Shape::Opening, Router::Hand, true), kClockwise);
    EXPECT_EQ(feedFromLayoutFace(Shape::Outside, Router::Hand, true), kAnticlockwise);
}
TEST(FeedDirection, HeldInTheHandFaceDown) {
    EXPECT_EQ(feedFromLayoutFace(Shape::Opening, Router::Hand, false), kAnticlockwise);
    EXPECT_EQ(feedFromLayoutFace(Shape::Outside, Router::Hand, false), kClockwise);
}
TEST(FeedDirection, OnATableFaceUp) {
    EXPECT_EQ(feedFromLayoutFace(Shape::Opening, Router::Table, true), kAnticlockwise);
    EXPECT_EQ(feedFromLayoutFace(Shape::Outside, Router::Table, true), kClockwise);
}
TEST(FeedDirection, OnATableFaceDown) {
    EXPECT_EQ(feedFromLayoutFace(Shape::Opening, Router::Table, false), kClockwise);
    EXPECT_EQ(feedFromLayoutFace(Shape::Outside, Router::Table, false), kAnticlockwise);
}

/// The lower wall of an opening, with the waste above it, and the upper wall of an island in it, the waste above it too.
const Wall kBelow{"A", {100, 90}, {300, 90}, Side::Left, {}, {}};
const Wall kOnIsland{"E", {150, 120}, {250, 120}, Side::Left, {}, {}};

// Expected from: common practice, no source. Seen from above at a table the cutter stands in the opening and the wood of
// the lower wall lies between operator (at the bottom edge) and cutter: wood there goes right to left, so the cutter goes
// left to right along it. In the hand the cutter turns the other way; face down the panel is mirrored. An island's upper
// wall has its wood below the cutter as well. Eight cases by pencil.
TEST(FeedDirection, AlongEachWallTheWoodBelowTheCutter) {
    for (const Wall& wall : {kBelow, kOnIsland}) {
        const auto goesRight = [&](Router router, bool faceUp) {
            const auto [from, to] = feedAlong(wall, router, faceUp);
            return to.x > from.x;
        };
        EXPECT_TRUE(goesRight(Router::Table, true));
        EXPECT_FALSE(goesRight(Router::Table, false));
        EXPECT_FALSE(goesRight(Router::Hand, true));
        EXPECT_TRUE(goesRight(Router::Hand, false));
    }
}

// Expected from: law: walls that run anticlockwise are followed clockwise where the opening is.
TEST(FeedDirection, AlongEachWallAgreesWithTheWayRound) {
    for (const Router router : {Router::Table, Router::Hand}) {
        for (const bool faceUp : {true, false}) {
            const bool withWall = feedAlong(kBelow, router, faceUp).first == kBelow.from;
            EXPECT_EQ(withWall, feedFromLayoutFace(Shape::Opening, router, faceUp) == kAnticlockwise);
        }
    }
}

// Expected from: as the panel lies, seen from above, the face that is up makes no difference.
TEST(FeedDirection, FromAboveDoesNotDependOnTheFace) {
    EXPECT_EQ(feedFromAbove(Shape::Opening, Router::Hand), kClockwise);
    EXPECT_EQ(feedFromAbove(Shape::Opening, Router::Table), kAnticlockwise);
}

}  // namespace
}  // namespace kerfwall

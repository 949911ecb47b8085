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

// Expected from: as the panel lies, seen from above, the face that is up makes no difference.
TEST(FeedDirection, FromAboveDoesNotDependOnTheFace) {
    EXPECT_EQ(feedFromAbove(Shape::Opening, Router::Hand), kClockwise);
    EXPECT_EQ(feedFromAbove(Shape::Opening, Router::Table), kAnticlockwise);
}

}  // namespace
}  // namespace kerfwall

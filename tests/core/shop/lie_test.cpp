// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/lie.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

// Expected from: a sheet of paper marked with its four edges' names and turned over on a bench. The bottom
// edge ends at the panel's right end.
TEST(Lie, FaceDownOnANearFenceTheRightEndLiesToTheOperatorsLeft) {
    EXPECT_EQ(sideOfEnd(true, false, false), Side::Left);
    EXPECT_EQ(sideOfEnd(false, false, false), Side::Right);
}
TEST(Lie, FaceDownOnAFarFenceTheRightEndLiesToTheOperatorsRight) {
    EXPECT_EQ(sideOfEnd(true, true, false), Side::Right);
    EXPECT_EQ(sideOfEnd(false, true, false), Side::Left);
}
TEST(Lie, FaceUpOnANearFenceThePanelLiesAsDrawn) {
    EXPECT_EQ(sideOfEnd(true, false, true), Side::Right);
    EXPECT_EQ(sideOfEnd(false, false, true), Side::Left);
}
TEST(Lie, FaceUpOnAFarFenceThePanelLiesTurnedHalfRound) {
    EXPECT_EQ(sideOfEnd(true, true, true), Side::Left);
    EXPECT_EQ(sideOfEnd(false, true, true), Side::Right);
}

// Expected from: the same sheet, face down, each edge in turn along the right-hand side of a ruler.
TEST(Lie, OnARipFenceAtTheRightEachEdgesStartLeads) {
    EXPECT_EQ(leadsAlongFence(Edge::Bottom, Side::Right), Edge::Left);
    EXPECT_EQ(leadsAlongFence(Edge::Right, Side::Right), Edge::Bottom);
    EXPECT_EQ(leadsAlongFence(Edge::Top, Side::Right), Edge::Right);
    EXPECT_EQ(leadsAlongFence(Edge::Left, Side::Right), Edge::Top);
}
TEST(Lie, OnARipFenceAtTheLeftEachEdgesEndLeads) {
    EXPECT_EQ(leadsAlongFence(Edge::Bottom, Side::Left), Edge::Right);
    EXPECT_EQ(leadsAlongFence(Edge::Top, Side::Left), Edge::Left);
}

// Expected from: the sheet with a line leaning to the panel's left (the bottom edge's start) as it goes up.
// As drawn it leans anticlockwise and the sheet is turned clockwise to bring it upright; turned over it leans
// the other way. An arm turns after the line instead.
TEST(Lie, ALineLeaningToTheStartTurnsThePanelClockwiseFaceUpAndAnticlockwiseFaceDown) {
    EXPECT_EQ(turnOfPanel(3, true), Side::Right);
    EXPECT_EQ(turnOfPanel(-3, true), Side::Left);
    EXPECT_EQ(turnOfPanel(3, false), Side::Left);
    EXPECT_EQ(turnOfPanel(-3, false), Side::Right);
    EXPECT_EQ(turnOfArm(3, true), Side::Left);
    EXPECT_EQ(turnOfArm(-3, true), Side::Right);
}

}  // namespace
}  // namespace kerfwall

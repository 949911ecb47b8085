// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/clamping.h"

#include <gtest/gtest.h>

#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

Project withClamps() {
    Project project = blankPanel();
    project.bench = stockBench();
    project.bench->clamps = {{8, 62, 0, 0, {}}, {10, 75, 0, 0, {}}};
    return project;
}

ClampHole holeOf(Edge edge, double at, double depth) {
    ClampHole hole;
    hole.edge = edge;
    hole.at = at;
    hole.diameter = 8;
    hole.depth = depth;
    return hole;
}

// Expected from: the bench; a panel of 12 with 3.5 above and below (common practice, no source) bears a drill of 5.
TEST(Clamping, TheHolesAtHandAreTheClampsAndTheDrill) {
    const std::vector<HoleKind> kinds = holesAtHand(withClamps());
    ASSERT_EQ(kinds.size(), 3U);
    EXPECT_EQ(kinds[0], (HoleKind{8, 62, 0}));
    EXPECT_EQ(kinds[1], (HoleKind{10, 75, 1}));
    EXPECT_EQ(kinds[2], (HoleKind{5, 50, {}}));
    EXPECT_EQ(holesAtHand(blankPanel()).size(), 1U);
}

// Expected from: pencil. The left edge runs down from y 250: y 100.4 is 149.6 along it, 150 on whole millimetres.
TEST(Clamping, AHoleIsPlacedAtTheNearestEdgeAsDeepAsItsKind) {
    const ClampHole hole = clampHoleFor(blankPanel(), {{2, 100.4}, 20, 1, {8, 62, 0}, {}});
    EXPECT_EQ(hole, holeOf(Edge::Left, 150, 62));
    EXPECT_EQ(clampHoleFor(blankPanel(), {{100, 3}, 20, 1, {8, 200, 0}, {}}).depth, 125);  // half of 250
}

// Expected from: pencil. 33 in from the left edge, where the drag began; the bottom edge is nearer and not meant.
TEST(Clamping, DraggedOffItsEdgeItIsDrilledToThePointer) {
    const ClampHole hole = clampHoleFor(blankPanel(), {{33, 10}, 20, 1, {8, 62, 0}, Edge::Left});
    EXPECT_EQ(hole, holeOf(Edge::Left, 240, 33));
    EXPECT_EQ(clampHoleFor(blankPanel(), {{15, 10}, 20, 1, {8, 62, 0}, Edge::Left}).depth, 62);
}

TEST(Clamping, AHoleIsTakenByItsPointOrWhole) {
    Project project = blankPanel();
    project.clampHoles = {holeOf(Edge::Left, 150, 60)};
    EXPECT_EQ(holeGripNear(project, {58, 101}, 5), (NearHole{0, HoleGrip::Point}));
    EXPECT_EQ(holeGripNear(project, {63, 99}, 5), (NearHole{0, HoleGrip::Point}));
    EXPECT_EQ(holeGripNear(project, {20, 101}, 5), (NearHole{0, HoleGrip::Whole}));
    EXPECT_FALSE(holeGripNear(project, {80, 101}, 5));
}

// Expected from: pencil, and the clamps' inserts of 62 and 75.
TEST(Clamping, TheDepthHoldsOnToAnInsertAndStaysBlind) {
    const Project project = withClamps();
    EXPECT_EQ(depthAt(project, Edge::Left, {61.3, 100}, 1, 1), 62);
    EXPECT_EQ(depthAt(project, Edge::Left, {60.6, 100}, 1, 1), 61);
    EXPECT_EQ(depthAt(project, Edge::Left, {61.3, 100}, 1, 0), 61);
    EXPECT_EQ(depthAt(project, Edge::Right, {300, 100}, 1, 0), 100);
    EXPECT_EQ(depthAt(project, Edge::Top, {300, -40}, 1, 0), 249);
    EXPECT_EQ(depthAt(project, Edge::Left, {-5, 100}, 1, 0), kLeastDepth);
}

// Expected from: pencil. Into the panel from the right edge is to the left; along it, anticlockwise, is up.
TEST(Clamping, ANudgeSlidesAndDrills) {
    Project project = blankPanel();
    project.clampHoles = {holeOf(Edge::Right, 100, 60)};
    EXPECT_EQ(withHoleNudged(project, 0, {-2, 0}).clampHoles.front(), holeOf(Edge::Right, 100, 62));
    EXPECT_EQ(withHoleNudged(project, 0, {0, 3}).clampHoles.front(), holeOf(Edge::Right, 103, 60));
    EXPECT_EQ(withHoleDepth(project, 0, -3).clampHoles.front().depth, kLeastDepth);
}

}  // namespace
}  // namespace kerfwall

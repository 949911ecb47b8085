// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/boring.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

/// A corner at the origin: it arrives along -y, its lines leave along +y and, turned by `angle`, to the right of it.
Corner cornerOf(double angle, double radius) {
    const double turn = angle * std::acos(-1.0) / 180;
    Corner corner;
    corner.angle = angle;
    corner.radius = radius;
    const double touch = radius / std::tan(turn / 2);
    // Arriving downwards with the cutout on the left, which is to the right of the sheet.
    corner.firstTangent = {0, touch};
    corner.secondTangent = {touch * std::sin(turn), touch * std::cos(turn)};
    return corner;
}

// Expected from: pencil. At a square corner an arc of 10 touches 10 along both lines round (10, 10).
TEST(Boring, TheArcOfASquareCorner) {
    const OutlinePiece arc = cornerArc(cornerOf(90, 6.35), 10);
    EXPECT_NEAR(distance(arc.from, {0, 10}), 0, 1e-12);
    EXPECT_NEAR(distance(arc.to, {10, 0}), 0, 1e-12);
    EXPECT_NEAR(distance(arc.centre, {10, 10}), 0, 1e-12);
    EXPECT_EQ(arc.radius, 10);
    EXPECT_NEAR(sweepOf(arc), std::acos(-1.0) / 2, 1e-12);
}

// Expected from: pencil. At 60 degrees the centre lies 2 R out on the bisector (30 degrees off both lines), the arc's
// nearest place R out, and the touch points R sqrt 3 along the lines.
TEST(Boring, TheArcOfASixtyDegreeCorner) {
    const Corner corner = cornerOf(60, 3);
    const Point bisector{0.5, std::sqrt(3) / 2};
    const OutlinePiece arc = cornerArc(corner, 10);
    EXPECT_NEAR(distance(arc.centre, 20 * bisector), 0, 1e-12);
    EXPECT_NEAR(distance(arc.from, {0, 10 * std::sqrt(3)}), 0, 1e-12);
    EXPECT_NEAR(radiusThrough(corner, 10 * bisector), 10, 1e-12);
    EXPECT_NEAR(radiusThrough(corner, arc.from), 10, 1e-6);
    EXPECT_NEAR(radiusThrough(corner, arc.centre + Point{-10, 0}), 10, 1e-6);
}

// Expected from: the law that an arc's own places give its radius back, at angles that tell sine and cosine apart.
TEST(Boring, ThePlacesOfAnArcGiveItsRadiusBack) {
    for (const double angle : {25.0, 70.0, 90.0, 130.0, 175.0}) {
        const Corner corner = cornerOf(angle, 6.35);
        const OutlinePiece arc = cornerArc(corner, 17);
        const Point middle = arc.centre + 17 * unit(corner.point - arc.centre);
        EXPECT_NEAR(radiusThrough(corner, middle), 17, 1e-9) << angle;
    }
}

TEST(Boring, BehindTheCornerThereIsNoArcAndFarOffTheLargest) {
    EXPECT_EQ(radiusThrough(cornerOf(90, 6.35), {-3, -3}), 0);
    EXPECT_EQ(radiusThrough(cornerOf(90, 6.35), {0, 0}), 0);
    EXPECT_EQ(radiusThrough(cornerOf(90, 6.35), {900, 900}), kLargestBore);
    EXPECT_EQ(radiusThrough(cornerOf(179.999999, 6.35), {1, 1e-9}), kLargestBore);
}

// Expected from: pencil. The window is 180 x 56; on its 56 the bit's arc of 6.35 at B C leaves 49.65 for the corner of A
// and C, and a bore of 20 there leaves 36.
TEST(Boring, TheRoomForABoreEndsAtTheNextCornersArc) {
    Project project = gridOfFour();
    project.cutouts.push_back({"window", {{200, 118}}, {}, {}, {}});
    const auto roomAtAC = [&] {
        const SolvedCutout cutout = solve(project).cutouts.front();
        for (const Corner& corner : cutout.corners) {
            if (distance(corner.point, {110, 90}) < 1e-9) return roomForBore(cutout, corner);
        }
        return 0.0;
    };
    EXPECT_NEAR(roomAtAC(), 49.65, 1e-9);
    project.cutouts.front().corners = {{"B", "C", 20, {}}};
    EXPECT_NEAR(roomAtAC(), 36, 1e-9);
}

// Expected from: the stock bench: a bit of 12.7 and bores of 20, 25, 30, 35, 40, 50.
TEST(Boring, ARadiusHoldsOnToABoreAtHandElseToSteps) {
    const Project project = blankPanel();
    EXPECT_EQ(heldRadius(project, 12.9, 0.5, 0.75), (HeldRadius{12.5, true}));
    EXPECT_EQ(heldRadius(project, 13.4, 0.5, 0.75), (HeldRadius{13.5, false}));
    EXPECT_EQ(heldRadius(project, 12.9, 0.01, 0), (HeldRadius{12.9, false}));
    EXPECT_EQ(heldRadius(project, 6.4, 0.5, 0.75), (HeldRadius{6.5, false}));
    EXPECT_EQ(heldRadius(project, 6.1, 0.5, 0.75), (HeldRadius{}));
    EXPECT_EQ(heldRadius(project, 400, 0.5, 0.75), (HeldRadius{kLargestBore, false}));
}

// Expected from: pencil. The corner of A and C lies at (110, 90); the bit's arc of 6.35 comes 2.63 near it.
TEST(Boring, ACornerIsTakenByItsPointAndByItsArc) {
    Project project = gridOfFour();
    project.cutouts.push_back({"window", {{200, 118}}, {{"A", "C", 30, {}}}, {}, {}});
    const Solved solved = solve(project);
    const auto point = roundNear(solved, {112, 92}, 5, 2);
    ASSERT_TRUE(point);
    EXPECT_FALSE(point->byArc);
    const double in = 30 * (1 - std::sqrt(0.5));
    const auto arc = roundNear(solved, {110 + in, 91 + in}, 5, 2);
    ASSERT_TRUE(arc);
    EXPECT_TRUE(arc->byArc);
    EXPECT_EQ(arc->corner, point->corner);
    EXPECT_FALSE(roundNear(solved, {120, 120}, 5, 2));
}

}  // namespace
}  // namespace kerfwall

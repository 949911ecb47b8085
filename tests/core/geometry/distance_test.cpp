// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/distance.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

namespace kerfwall {
namespace {

constexpr double kPencil = 1e-12;

OutlinePiece arc(Point centre, double radius, Point from, Point to, Turn turn) {
    OutlinePiece piece;
    piece.isArc = true;
    piece.centre = centre;
    piece.radius = radius;
    piece.from = from;
    piece.to = to;
    piece.turn = turn;
    return piece;
}

// The upper half of a circle of 5 about (0, 0), run anticlockwise.
OutlinePiece upperHalf() { return arc({0, 0}, 5, {5, 0}, {-5, 0}, Turn::Left); }

Point onPiece(const OutlinePiece& piece, double share) {
    if (!piece.isArc) {
        return piece.from + share * (piece.to - piece.from);
    }
    const double turned = (piece.turn == Turn::Left ? share : -share) * sweepOf(piece);
    const Point start = piece.from - piece.centre;
    return piece.centre + std::cos(turned) * start + std::sin(turned) * leftOf(start);
}

// Expected from: pencil, 3-4-5 triangles.
TEST(Distance, APlaceToAStraightPieceIsItsFootOrAnEnd) {
    EXPECT_NEAR(gapBetween(Point{3, 4}, straight({0, 0}, {10, 0})).distance, 4, kPencil);
    EXPECT_EQ(gapBetween(Point{3, 4}, straight({0, 0}, {10, 0})).second, (Point{3, 0}));
    EXPECT_NEAR(gapBetween(Point{13, 4}, straight({0, 0}, {10, 0})).distance, 5, kPencil);
}

// Expected from: pencil. (6, 8) is 10 from the centre, so 5 beyond the arc; (0, 2) is 3 inside it; (3, -4)
// lies on the missing half, nearest to the end (5, 0): sqrt(4 + 16).
TEST(Distance, APlaceToAnArcIsOnTheRayFromItsCentreOrAnEnd) {
    EXPECT_NEAR(gapBetween(Point{6, 8}, upperHalf()).distance, 5, kPencil);
    EXPECT_NEAR(gapBetween(Point{0, 2}, upperHalf()).distance, 3, kPencil);
    EXPECT_NEAR(gapBetween(Point{3, -4}, upperHalf()).distance, std::sqrt(20.0), kPencil);
}

// Expected from: pencil. The same half run the other way is the same set of places.
TEST(Distance, AnArcRunBackwardsIsTheSameArc) {
    const OutlinePiece back = arc({0, 0}, 5, {-5, 0}, {5, 0}, Turn::Right);
    EXPECT_NEAR(gapBetween(Point{6, 8}, back).distance, 5, kPencil);
    EXPECT_NEAR(gapBetween(Point{3, -4}, back).distance, std::sqrt(20.0), kPencil);
}

// Expected from: pencil. They cross at (5, 5); moved apart, an end stands 2 above the middle.
TEST(Distance, StraightPiecesThatCrossAreZeroApart) {
    const Gap gap = gapBetween(straight({0, 0}, {10, 10}), straight({0, 10}, {10, 0}));
    EXPECT_NEAR(gap.distance, 0, kPencil);
    EXPECT_NEAR(distance(gap.first, {5, 5}), 0, kPencil);
    EXPECT_NEAR(gapBetween(straight({0, 0}, {10, 0}), straight({5, 2}, {5, 9})).distance, 2, kPencil);
}

// Expected from: pencil. y = 8 lies 3 above the circle's top; y = 3 cuts the circle at (4, 3); the level
// line from (-2, 1) to (2, 1) lies within it, its ends sqrt 5 from the centre.
TEST(Distance, AStraightPieceAndAnArc) {
    const Gap over = gapBetween(straight({-9, 8}, {9, 8}), upperHalf());
    EXPECT_NEAR(over.distance, 3, kPencil);
    EXPECT_NEAR(distance(over.second, {0, 5}), 0, kPencil);
    EXPECT_NEAR(gapBetween(upperHalf(), straight({0, 3}, {9, 3})).distance, 0, kPencil);
    EXPECT_NEAR(gapBetween(straight({-2, 1}, {2, 1}), upperHalf()).distance, 5 - std::sqrt(5.0), kPencil);
}

// Expected from: pencil. Centres 20 apart, radii 5 and 3; the half that faces away is nearest at its
// end (20, 3), on the ray from the other's centre: sqrt(400 + 9) - 5. Concentric arcs of 5 and 3 are 2 apart.
TEST(Distance, TwoArcs) {
    const OutlinePiece facing = arc({20, 0}, 3, {20, 3}, {20, -3}, Turn::Left);
    const OutlinePiece away = arc({20, 0}, 3, {20, -3}, {20, 3}, Turn::Left);
    EXPECT_NEAR(gapBetween(upperHalf(), facing).distance, 12, kPencil);
    EXPECT_NEAR(gapBetween(upperHalf(), away).distance, std::sqrt(409.0) - 5, kPencil);
    EXPECT_NEAR(gapBetween(upperHalf(), arc({0, 0}, 3, {3, 0}, {-3, 0}, Turn::Left)).distance, 2, kPencil);
}

// Expected from: pencil. Circles of 5 about (0, 0) and (8, 0) cross at (4, 3) and (4, -3).
TEST(Distance, ArcsThatCrossAreZeroApart) {
    const OutlinePiece other = arc({8, 0}, 5, {13, 0}, {3, 0}, Turn::Left);
    const Gap gap = gapBetween(upperHalf(), other);
    EXPECT_NEAR(gap.distance, 0, kPencil);
    EXPECT_NEAR(distance(gap.first, {4, 3}), 0, kPencil);
}

// Law: no pair of places is nearer than the least distance, some pair is about as near, and the order of
// the two does not matter.
TEST(Distance, NoPairOfPlacesIsNearer) {
    std::mt19937 random(20);
    std::uniform_real_distribution<double> place(-20, 20);
    std::uniform_real_distribution<double> angle(0, 2 * std::numbers::pi);
    const auto piece = [&]() -> OutlinePiece {
        if (random() % 2 == 0) {
            return straight({place(random), place(random)}, {place(random), place(random)});
        }
        const Point centre{place(random), place(random)};
        const double radius = 1 + std::abs(place(random));
        const double a = angle(random);
        const double b = angle(random);
        return arc(centre, radius, centre + radius * Point{std::cos(a), std::sin(a)},
                   centre + radius * Point{std::cos(b), std::sin(b)},
                   random() % 2 == 0 ? Turn::Left : Turn::Right);
    };
    for (int round = 0; round < 300; ++round) {
        const OutlinePiece a = piece();
        const OutlinePiece b = piece();
        const double least = gapBetween(a, b).distance;
        EXPECT_NEAR(gapBetween(b, a).distance, least, 1e-9);
        double seen = 1e9;
        for (int i = 0; i <= 60; ++i) {
            seen = std::min(seen, gapBetween(onPiece(a, i / 60.0), b).distance);
        }
        const double step = (a.isArc ? a.radius * sweepOf(a) : distance(a.from, a.to)) / 60;
        EXPECT_LE(least, seen + 1e-9) << "round " << round;
        EXPECT_GE(least, seen - step) << "round " << round;
    }
}

// Expected from: pencil. Two stretches of one line at 45 degrees, 5 apart, each with its ends rounded to
// doubles; where their lines cross is rounding alone, and once was taken for a crossing. (a fixed bug)
TEST(Distance, StretchesOnOneLineDoNotCrossWhereTheyEnd) {
    const Gap gap = gapBetween(straight({392.92893218813447, 205}, {325, 272.92893218813452}),
                               straight({320, 277.92893218813452}, {321.46446609406723, 276.46446609406729}));
    EXPECT_NEAR(gap.distance, 5, 1e-9);
}

}  // namespace
}  // namespace kerfwall

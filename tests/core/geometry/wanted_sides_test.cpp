// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/wanted_sides.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/geometry/clip.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall {
namespace {

constexpr double kExact = 1e-12;

const std::vector<Point> kPennant{{110, 90}, {370, 90}, {330, 150}, {370, 210}, {110, 210}};
const std::vector<Point> kBox{{0, 0}, {40, 0}, {40, 20}, {0, 20}};

TEST(WantedSides, SidesThatCrossAreFound) {
    EXPECT_EQ(crossingSides(kPennant), std::nullopt);
    EXPECT_EQ(crossingSides({{0, 0}, {10, 10}, {10, 0}, {0, 10}}), (std::pair<std::size_t, std::size_t>(0, 2)));
}

// Expected from: pencil. A corner that touches another side, and a side that doubles back.
TEST(WantedSides, SidesThatTouchAreFoundToo) {
    EXPECT_TRUE(crossingSides({{0, 0}, {20, 0}, {20, 10}, {10, 0}, {0, 10}}).has_value());
    EXPECT_EQ(crossingSides({{0, 0}, {10, 0}, {5, 0}, {5, 10}}), (std::pair<std::size_t, std::size_t>(0, 1)));
}

// Expected from: pencil. The tip's tangent is 60 / 40, and the inward corner is 360 less the wood's, twice as much.
TEST(WantedSides, AnglesAreInside) {
    const double tip = std::atan2(60, 40) * 180 / std::numbers::pi;
    EXPECT_NEAR(angleAt(kPennant, 0), 90, kExact);
    EXPECT_NEAR(angleAt(kPennant, 1), tip, kExact);
    EXPECT_NEAR(angleAt(kPennant, 2), 360 - 2 * tip, kExact * 100);
}

// Expected from: pencil. 5 out of a box of 40 x 20, and 3 in.
TEST(WantedSides, SidesMoveOutByTheSame) {
    EXPECT_EQ(movedOut(kBox, 5), (std::vector<Point>{{-5, -5}, {45, -5}, {45, 25}, {-5, 25}}));
    EXPECT_EQ(movedOut(kBox, -3), (std::vector<Point>{{3, 3}, {37, 3}, {37, 17}, {3, 17}}));
}

// Expected from: pencil. Half the wood's angle at the tail has tangent 3/2, so its point moves 6 sqrt 13 / 3 to the right.
TEST(WantedSides, AnInwardCornerMovesAlongItsMiddle) {
    const Point moved = movedOut(kPennant, 6)[2];
    EXPECT_NEAR(moved.y, 150, kExact);
    EXPECT_NEAR(moved.x, 330 + 6 * std::sqrt(13.0) / 3, 1e-9);
}

TEST(WantedSides, ASideWithoutRoomTurns) {
    const std::vector<Point> tip{{0, 0}, {60, 0}, {60, 50}, {34, 50}, {34, 20}, {26, 20}, {26, 50}, {0, 50}};
    EXPECT_EQ(turnedSide(tip, movedOut(tip, 3)), std::nullopt);
    EXPECT_EQ(turnedSide(tip, movedOut(tip, 5)), 4u);
}

// Expected from: pencil. A waist of 6 between two inward corners of six; a box has none but its sides.
TEST(WantedSides, TheNarrowestNeckIsFound) {
    const std::vector<Point> waist{{0, 0}, {50, 17}, {100, 0}, {100, 40}, {50, 23}, {0, 40}};
    const auto neck = narrowestNeck(waist);
    ASSERT_TRUE(neck.has_value());
    EXPECT_NEAR(neck->width, 6, kExact);
    EXPECT_EQ(narrowestNeck(kBox), std::nullopt);
}

// Expected from: pencil. A way through wood is no neck: the pennant's tips are 120 apart over the tail.
TEST(WantedSides, WoodBetweenSidesIsNoNeck) {
    const std::vector<Point> comb{{0, 0}, {60, 0}, {60, 50}, {33, 50}, {33, 20}, {27, 20}, {27, 50}, {0, 50}};
    const auto neck = narrowestNeck(comb);
    ASSERT_TRUE(neck.has_value());
    EXPECT_NEAR(neck->width, 20, kExact);
}

// Expected from: pencil: three faces, 260 x 120 less 40 x 120 / 2 in all.
TEST(WantedSides, ThePennantIsThreeFaces) {
    const auto faces = facesWithin(test::panelOf(500, 300).panel, kPennant);
    ASSERT_EQ(faces.size(), 3u);
    double area = 0;
    for (const auto& face : faces) area += polygonArea(face);
    EXPECT_NEAR(area, 28800, 1e-9);
}

// Expected from: pencil. What lies off the panel is no face.
TEST(WantedSides, FacesEndAtThePanelsEdge) {
    const auto faces = facesWithin(test::panelOf(500, 300).panel, {{100, -20}, {200, -20}, {200, 80}, {100, 80}});
    ASSERT_EQ(faces.size(), 1u);
    EXPECT_NEAR(polygonArea(faces[0]), 8000, 1e-9);
}

TEST(WantedSides, ALineThroughAFaceHasItOnBothSides) {
    EXPECT_TRUE(runsThroughFace({-10, 5}, {0, 6}, kBox));
    EXPECT_FALSE(runsThroughFace({-10, 20}, {0, 20}, kBox));
    EXPECT_FALSE(runsThroughFace({-10, 30}, {0, 30}, kBox));
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/hatch.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/drawing/drawn_panel.h"

namespace kerfwall {
namespace {

// Expected from: pencil. Level lines 8 apart in a ring of radii 10 and 6: through the middle they run
// 4 on either side; 8 up, 6-8-10, a chord of 12 that passes above the hole.
TEST(Hatch, StopsAtTheHoleOfARing) {
    const auto hatch = hatchOf({circleLoop({0, 0}, 10), circleLoop({0, 0}, 6)}, 8, 0);
    ASSERT_EQ(hatch.size(), 4U);
    EXPECT_NEAR(distance(hatch[0].first, hatch[0].second), 12, 1e-9);
    EXPECT_NEAR(hatch[1].first.x, -10, 1e-9);
    EXPECT_NEAR(hatch[1].second.x, -6, 1e-9);
    EXPECT_NEAR(hatch[2].first.x, 6, 1e-9);
    EXPECT_NEAR(hatch[2].second.x, 10, 1e-9);
    EXPECT_NEAR(distance(hatch[3].first, hatch[3].second), 12, 1e-9);
}

// Expected from: a law. Hatching fills evenly: length times spacing comes near the area, here
// 50 x 30 - pi 64 = 1298.9; within 2 % at lines 0.2 apart.
TEST(Hatch, FillsAnAreaEvenly) {
    const auto hatch =
        hatchOf({polygonLoop({{0, 0}, {50, 0}, {50, 30}, {0, 30}}), circleLoop({20, 15}, 8)}, 0.2, 45);
    double filled = 0;
    for (const auto& [from, to] : hatch) filled += 0.2 * distance(from, to);
    EXPECT_NEAR(filled, 1298.9, 26);
}

// Expected from: a law. A corner that lies on the line is crossed once or touched, never half.
TEST(Hatch, CrossesACornerOnTheLineOnce) {
    const std::vector<OutlineLoop> diamond{polygonLoop({{-5, 0}, {0, -5}, {5, 0}, {0, 5}})};
    const std::vector<double> through = crossings(diamond, {0, 0}, {1, 0});
    ASSERT_EQ(through.size(), 2U);
    EXPECT_NEAR(through[0], -5, 1e-12);
    EXPECT_NEAR(through[1], 5, 1e-12);
    EXPECT_EQ(crossings(diamond, {0, 5}, {1, 0}).size() % 2, 0U);
    EXPECT_EQ(crossings(diamond, {0, -5}, {1, 0}).size() % 2, 0U);
}

// Expected from: a law. Wherever a line runs through a rounded shape it goes in as often as out.
TEST(Hatch, CrossesArcsAnEvenNumberOfTimesWhereverTheyBeginAndEnd) {
    for (int turned = 0; turned < 360; turned += 15) {
        const double a = turned * 3.14159265358979323846 / 180;
        const Point out{10 * std::cos(a), 10 * std::sin(a)};
        OutlinePiece arc;  // three quarters of a circle, then its chord
        arc.isArc = true;
        arc.radius = 10;
        arc.from = out;
        arc.to = {10 * std::sin(a), -10 * std::cos(a)};
        OutlinePiece chord;
        chord.from = arc.to;
        chord.to = arc.from;
        for (const double height : {-10.0, -6.0, 0.0, 3.0, 10.0}) {
            const auto at = crossings({{arc, chord}}, {0, height}, {1, 0});
            EXPECT_EQ(at.size() % 2, 0U) << turned << " degrees, height " << height;
            EXPECT_TRUE(at.size() >= 2 || std::abs(height) == 10) << turned << " degrees, height " << height;
        }
    }
}

// Expected from: pencil. Level lines 1 apart over 100 mm, seen from 40 to 44.5: at 40, 41, 42, 43 and 44.
TEST(Hatch, DrawsOnlyTheLinesThatAreSeen) {
    const auto hatch =
        hatchOf({polygonLoop({{0, 0}, {50, 0}, {50, 100}, {0, 100}})}, 1, 0, Box{{10, 40}, {20, 44.5}});
    ASSERT_EQ(hatch.size(), 5U);
    EXPECT_DOUBLE_EQ(hatch.front().first.y, 40);
    EXPECT_DOUBLE_EQ(hatch.back().first.y, 44);
}

TEST(Hatch, RefusesMoreLinesThanAnyoneCanTellApart) {
    EXPECT_TRUE(hatchOf({circleLoop({0, 0}, 1000)}, 0.1, 45).empty());
}

}  // namespace
}  // namespace kerfwall

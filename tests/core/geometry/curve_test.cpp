// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/curve.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

namespace kerfwall::test {
namespace {

constexpr double kQuarter = std::numbers::pi / 2;

void expectAt(Point place, Point expected) {
    EXPECT_NEAR(place.x, expected.x, 1e-12);
    EXPECT_NEAR(place.y, expected.y, 1e-12);
}

// Expected from: pencil. 2..5 out of 0..4 and 6..9 leaves 0..2 and 6..9; what only touches is left alone.
TEST(Spans, TakingOutShortensSplitsAndDrops) {
    Spans spans{{0, 4}, {6, 9}};
    takeOut(spans, 2, 5);
    EXPECT_EQ(spans, (Spans{{0, 2}, {6, 9}}));
    takeOut(spans, 7, 8);
    EXPECT_EQ(spans, (Spans{{0, 2}, {6, 7}, {8, 9}}));
    takeOut(spans, 2, 6);
    EXPECT_EQ(spans, (Spans{{0, 2}, {6, 7}, {8, 9}})) << "it only touches";
    takeOut(spans, 7, 7);
    takeOut(spans, 9, 1);
    EXPECT_EQ(spans, (Spans{{0, 2}, {6, 7}, {8, 9}})) << "a stretch of no length takes nothing";
    takeOut(spans, 5.5, 7.5);
    EXPECT_EQ(spans, (Spans{{0, 2}, {8, 9}}));
}

// Expected from: pencil. 2..6 touches 0..2 and 6..8: one stretch 0..8; 20..21 stays apart and sorted.
TEST(Spans, AddingJoinsWhatTouches) {
    Spans spans;
    addSpan(spans, 20, 21);
    addSpan(spans, 0, 2);
    addSpan(spans, 6, 8);
    EXPECT_EQ(spans, (Spans{{0, 2}, {6, 8}, {20, 21}}));
    addSpan(spans, 2, 6);
    EXPECT_EQ(spans, (Spans{{0, 8}, {20, 21}}));
    EXPECT_EQ(without(spans, {{1, 3}, {7, 30}}), (Spans{{0, 1}, {3, 7}}));
}

// Expected from: pencil. A 3-4-5 triangle: from (1, 1) to (7, 9) is 10 long, heading (0.6, 0.8).
TEST(Curve, AStraightStretchIsMeasuredInMillimetres) {
    const Curve side = straight({1, 1}, {7, 9}, 5);
    EXPECT_DOUBLE_EQ(side.size, 10);
    EXPECT_DOUBLE_EQ(side.lengthInMm(), 10);
    EXPECT_EQ(side.tag, 5u);
    expectAt(side.at(2.5), {2.5, 3});
    expectAt(side.tangentAt(3), {0.6, 0.8});
    const Curve part = side.part(2.5, 7.5);
    expectAt(part.from, {2.5, 3});
    expectAt(part.to, {5.5, 7});
    EXPECT_DOUBLE_EQ(part.size, 5);
}

// Expected from: pencil. Round (10, 20) with radius 4, a quarter from due east: anticlockwise it ends due
// north, clockwise due south; a third of the way lies at 30 degrees, (2 sqrt 3, 2) from the centre.
TEST(Curve, AnArcIsMeasuredInRadiansTheWayItTurns) {
    const Curve left = arc({10, 20}, 4, 0, kQuarter, true);
    expectAt(left.from, {14, 20});
    expectAt(left.to, {10, 24});
    expectAt(left.at(kQuarter / 3), {10 + 2 * std::numbers::sqrt3, 22});
    expectAt(left.tangentAt(0), {0, 1});
    expectAt(left.tangentAt(kQuarter), {-1, 0});
    EXPECT_DOUBLE_EQ(left.lengthInMm(), 4 * kQuarter);
    const Curve right = arc({10, 20}, 4, 0, kQuarter, false);
    expectAt(right.to, {10, 16});
    expectAt(right.at(kQuarter / 3), {10 + 2 * std::numbers::sqrt3, 18});
    expectAt(right.tangentAt(0), {0, -1});
}

// Expected from: pencil. From north to west round the origin is a quarter one way, three quarters the other.
TEST(Curve, AnArcThroughTwoPlacesSweepsItsOwnWay) {
    EXPECT_NEAR(arcThrough({0, 0}, 3, {0, 3}, {-3, 0}, true).size, kQuarter, 1e-12);
    EXPECT_NEAR(arcThrough({0, 0}, 3, {0, 3}, {-3, 0}, false).size, 3 * kQuarter, 1e-12);
    EXPECT_EQ(arcThrough({0, 0}, 3, {0, 3}, {1e-12, 3}, true).size, 0) << "ends that meet are no whole turn";
}

// Expected from: turned about, a curve has the same places, met the other way.
TEST(Curve, ReversedItRunsBackOverTheSamePlaces) {
    const Curve there = arc({2, 1}, 5, 0.3, 2.1, true);
    const Curve back = there.reversed();
    for (const double t : {0.0, 0.4, 1.7, 2.1}) {
        expectAt(back.at(2.1 - t), there.at(t));
        expectAt(back.tangentAt(2.1 - t), -1.0 * there.tangentAt(t));
    }
}

// Expected from: pencil. From 45 degrees over north to 225 degrees it reaches up to the radius and left to
// the radius; its ends at 45 and 225 degrees set the other two bounds: 10 / sqrt 2.
TEST(Curve, AnArcsBoundsTakeInTheQuartersItPasses) {
    const double half = 10 / std::numbers::sqrt2;
    const Box box = arc({100, 50}, 10, kQuarter / 2, 2 * kQuarter, true).bounds();
    expectAt(box.low, {90, 50 - half});
    expectAt(box.high, {100 + half, 60});
    const Box most = arc({0, 0}, 10, kQuarter / 2, 3.5 * kQuarter, true).bounds();  // all but 0..45 degrees less a bit
    expectAt(most.low, {-10, -10});
    expectAt(most.high, {10, 10});
}

// Expected from: pencil. Beside the stretch its height counts, past its end the end; inside an arc's slice
// the difference to the radius, outside it the nearer end.
TEST(Curve, DistanceIsToTheStretchNotToItsExtension) {
    const Curve side = straight({0, 0}, {10, 0});
    EXPECT_DOUBLE_EQ(distanceTo(side, {4, -3}), 3);
    EXPECT_DOUBLE_EQ(distanceTo(side, {13, 4}), 5);
    EXPECT_DOUBLE_EQ(distanceTo(side, {-3, 4}), 5);
    const Curve round = arc({0, 0}, 10, 0, kQuarter, true);
    EXPECT_NEAR(distanceTo(round, {3, 4}), 5, 1e-12);
    EXPECT_NEAR(distanceTo(round, {9, 12}), 5, 1e-12);
    EXPECT_NEAR(distanceTo(round, {6, -3}), 5, 1e-12) << "to the end (10, 0)";
    const Curve threeQuarters = arc({0, 0}, 10, 0, 3 * kQuarter, true);
    EXPECT_NEAR(distanceTo(threeQuarters, {0, -7}), 3, 1e-12);
    EXPECT_NEAR(distanceTo(threeQuarters, {13, -4}), 5, 1e-12) << "to the end (10, 0)";
}

// Expected from: pencil. The level line y = 3 crosses a stretch that climbs 4 for 3 across after 5 mm; the
// upper half of a circle of 5 at 4 right and left of its top.
TEST(Curve, ALineIsMetWhereItCrosses) {
    std::vector<double> met;
    meetLine(straight({0, -1}, {6, 7}), {100, 3}, {1, 0}, met);
    ASSERT_EQ(met.size(), 1u);
    EXPECT_NEAR(met[0], 5, 1e-12);
    met.clear();
    meetLine(straight({0, 0}, {9, 0}), {0, 3}, {1, 0}, met);
    EXPECT_TRUE(met.empty()) << "parallel";
    meetLine(straight({0, -1}, {3, 2}), {0, 3}, {1, 0}, met);
    EXPECT_TRUE(met.empty()) << "it ends before the line";
    const Curve upper = arc({0, 0}, 5, 0, 2 * kQuarter, true);
    meetLine(upper, {-50, 3}, {1, 0}, met);
    ASSERT_EQ(met.size(), 2u);
    std::ranges::sort(met);
    expectAt(upper.at(met[0]), {4, 3});
    expectAt(upper.at(met[1]), {-4, 3});
    met.clear();
    meetLine(upper, {0, -3}, {1, 0}, met);
    EXPECT_TRUE(met.empty()) << "the lower half is not there";
}

// Expected from: pencil. Circles of 13 and 15 whose centres are 14 apart meet 5 on and 12 to either side
// (5-12-13 and 9-12-15); the level through the first centre meets the second circle at 14 - 15 and 14 + 15.
TEST(Curve, ACircleIsMetWhereItCrosses) {
    const Curve whole = arc({0, 0}, 13, 0, 4 * kQuarter, true);
    std::vector<double> met;
    meetCircle(whole, {14, 0}, 15, met);
    ASSERT_EQ(met.size(), 2u);
    std::ranges::sort(met);
    expectAt(whole.at(met[0]), {5, 12});
    expectAt(whole.at(met[1]), {5, -12});
    met.clear();
    const Curve level = straight({-20, 0}, {40, 0});
    meetCircle(level, {14, 0}, 15, met);
    ASSERT_EQ(met.size(), 2u);
    std::ranges::sort(met);
    EXPECT_NEAR(met[0], 19, 1e-12);
    EXPECT_NEAR(met[1], 49, 1e-12);
    met.clear();
    meetCircle(whole, {30, 0}, 15, met);
    EXPECT_TRUE(met.empty()) << "apart";
    meetCircle(whole, {0, 0}, 15, met);
    EXPECT_TRUE(met.empty()) << "about the same centre";
}

}  // namespace
}  // namespace kerfwall::test

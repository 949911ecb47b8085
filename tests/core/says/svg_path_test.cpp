// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/svg_path.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include "core/says/svg_curves.h"

namespace kerfwall {
namespace {

const std::vector<Point> kSquare{{10, 10}, {110, 10}, {110, 60}, {10, 60}};

// Expected from: pencil. The same rectangle said in every straight way SVG has.
TEST(SvgPath, ReadsStraightSidesAbsoluteAndRelative) {
    for (const char* data : {"M10 10L110 10L110 60L10 60Z", "M 10,10 H 110 V 60 H 10 z", "m10 10h100v50h-100z", "M10 10 110 10 110 60 10 60Z",
                             "m 10,10 100,0 0,50 -100,0 0,-50", "M1e1 10l+100 0 0 .5e2-100 0z", "  M10\n10 L110,10\t110,60 10,60 L 10 10 Z "}) {
        const auto read = readSvgPath(data, 0.05);
        ASSERT_TRUE(read) << data << ": " << read.error();
        EXPECT_EQ(*read, kSquare) << data;
    }
}

double farthestFrom(Point centre, double radius, const std::vector<Point>& corners) {
    double most = 0;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Point next = corners[(i + 1) % corners.size()];
        most = std::max(most, std::abs(distance(centre, corners[i]) - radius));
        most = std::max(most, radius - distance(centre, 0.5 * (corners[i] + next)));
    }
    return most;
}

// Expected from: pencil. Two half circles of radius 50 about (50, 0): corners on the circle, sides within the tolerance
// of it; a side over 2 acos(1 - 0.05 / 50) = 5.126 degrees leaves it by 0.05, so 36 to a half and 72 in all are needed.
TEST(SvgPath, AnArcsCornersLieOnItAndItsSidesWithinTheTolerance) {
    const auto read = readSvgPath("M0 0A50 50 0 0 1 100 0A50 50 0 0 1 0 0Z", 0.05);
    ASSERT_TRUE(read) << read.error();
    EXPECT_LE(farthestFrom({50, 0}, 50, *read), 0.05);
    EXPECT_EQ(read->size(), 72U);
    EXPECT_LE(farthestFrom({50, 0}, 50, *readSvgPath("M0 0a50,50 0 01100 0 50 50 0 01-100 0z", 0.001)), 0.001) << "flags without spaces";
}

// Expected from: pencil. From (0, 0) to (10, 10) with radius 10: of the four arcs the small one with sweep 1 (to the right
// of the way with y down is the outside) turns about (0, 10), the one with sweep 0 about (10, 0); the large ones the
// other way about.
TEST(SvgPath, OfFourArcsTheFlagsChooseTheOne) {
    const auto farthest = [](bool large, bool sweep, Point centre) {
        double most = 0;
        for (const Point& corner : arcCorners({{0, 0}, 10, 10, 0, large, sweep, {10, 10}}, 0.01)) most = std::max(most, std::abs(distance(corner, centre) - 10));
        return most;
    };
    EXPECT_LT(farthest(false, true, {0, 10}), 1e-9);
    EXPECT_LT(farthest(false, false, {10, 0}), 1e-9);
    EXPECT_LT(farthest(true, true, {10, 0}), 1e-9);
    EXPECT_LT(farthest(true, false, {0, 10}), 1e-9);
}

// Expected from: W3C SVG 2, B.2.5: radii too small for the chord grow until they reach; a chord of 100 then is a diameter.
TEST(SvgPath, RadiiTooSmallGrowToHalfTheChord) {
    for (const Point& corner : arcCorners({{0, 0}, 1, 1, 0, false, true, {100, 0}}, 0.05)) EXPECT_NEAR(distance(corner, {50, 0}), 50, 1e-9);
}

// Expected from: the ellipse's equation, turned by 30 degrees about its centre.
TEST(SvgPath, ATurnedEllipsesCornersLieOnIt) {
    const double cosTurn = std::cos(std::numbers::pi / 6);
    const double sinTurn = 0.5;
    const Point axis{40 * cosTurn, 40 * sinTurn};
    for (const Point& corner : arcCorners({{-axis.x, -axis.y}, 40, 20, 30, false, true, axis}, 0.05)) {
        const double along = (corner.x * cosTurn + corner.y * sinTurn) / 40;
        const double across = (-corner.x * sinTurn + corner.y * cosTurn) / 20;
        EXPECT_NEAR(along * along + across * across, 1, 1e-9);
    }
}

// Expected from: the parabola y = x²/100 - x, that the quadratic from (0, 0) by (50, -50) to (100, 0) is; and the same curve
// as a cubic, whose handles lie two thirds out.
TEST(SvgPath, BothKindsOfCurveLieOnTheParabolaTheyDraw) {
    for (const char* data : {"M0 0Q50 -50 100 0Z", "M0 0q50-50 100 0z", "M0 0C33.333333333333336 -33.333333333333336 66.66666666666667 -33.333333333333336 100 0Z"}) {
        const auto read = readSvgPath(data, 0.05);
        ASSERT_TRUE(read) << read.error();
        ASSERT_GT(read->size(), 8U);
        for (std::size_t i = 0; i < read->size(); ++i) {
            const Point corner = (*read)[i];
            EXPECT_NEAR(corner.y, corner.x * corner.x / 100 - corner.x, 1e-9) << data;
            if (i == 0) continue;
            const Point middle = 0.5 * (corner + (*read)[i - 1]);
            EXPECT_LE(middle.y - (middle.x * middle.x / 100 - middle.x), 0.05);
        }
    }
}

// Expected from: pencil. T goes on with the mirrored handle: after (50, -50) to (100, 0) it is (150, 50), as Q says it.
// S likewise; after another command the handle is the place itself.
TEST(SvgPath, SmoothCurvesMirrorTheHandleBeforeThem) {
    EXPECT_EQ(readSvgPath("M0 0Q50 -50 100 0T200 0V90H0Z", 0.05), readSvgPath("M0 0Q50 -50 100 0Q150 50 200 0V90H0Z", 0.05));
    EXPECT_EQ(readSvgPath("M0 0C0 -50 90 -50 100 0S200 50 200 0V90H0Z", 0.05), readSvgPath("M0 0C0 -50 90 -50 100 0C110 50 200 50 200 0V90H0Z", 0.05));
    EXPECT_EQ(readSvgPath("M0 0H100s100 50 100 0V90H0Z", 0.05), readSvgPath("M0 0H100C100 0 200 50 200 0V90H0Z", 0.05));
}

TEST(SvgPath, RefusesInASentenceWithPlaceAndRemedy) {
    const std::vector<std::pair<std::string, std::string>> cases{
        {"", "has no data"},
        {"L 1 1", "begin with M"},
        {"12 14", "no command that SVG knows"},
        {"M0 0 B 3 4", "At sign 6"},
        {"M0 0 L 10", "needs a number"},
        {"M0 0 L 10 x", "needs a number"},
        {"M0 0 L 1e99 3", "needs a number of at most 10000000"},
        {"M0 0 A 5 5 0 2 1 9 9Z", "0 or 1"},
        {"M0 0H10V10", "is open"},
        {"M0 0H10Z", "fewer than three corners"},
        {"M0 0H10V10Z M20 20H30V30Z", "several outlines, the second from sign 13"},
        {"M0 0H10V10 M20 20H30V30Z", "several outlines"},
        {"M0 0H10V10Z 4 5", "after it was closed"},
        {"M0 0H1e6V1e6A1e7 1e7 0 0 0 -1e6 -1e6Z", "more than 2000 corners"},
    };
    for (const auto& [data, words] : cases) {
        const auto read = readSvgPath(data, data.contains("1e6") ? 1e-6 : 0.05);
        ASSERT_FALSE(read) << data;
        EXPECT_NE(read.error().find(words), std::string::npos) << data << ": " << read.error();
        EXPECT_EQ(read.error().back(), '.');
    }
}

// A law: whatever the text, there is an outline with finite corners or a sentence, never anything else. Seed 1.
TEST(SvgPath, BrokenTextGivesAnOutlineOrASentence) {
    std::mt19937 dice(1);
    const std::string good = "M10 10L110 10.5e1C1 2 3 4 5 6S9 8 7 6Q1 2 3 4T5 6A5 6 30 0 1 7 8H3V4Z";
    const std::string signs = "MmLlHhVvZzCcSsQqTtAa0123456789.-+eE, \n\txn#";
    int outlines = 0;
    for (int i = 0; i < 20000; ++i) {
        std::string text = good;
        const int changes = 1 + static_cast<int>(dice() % 5);
        for (int change = 0; change < changes && !text.empty(); ++change) {
            const std::size_t at = dice() % text.size();
            if (dice() % 2 == 0) text[at] = signs[dice() % signs.size()];
            else text.erase(at, 1 + dice() % 6);
        }
        const auto read = readSvgPath(text, 0.05);
        if (!read) {
            EXPECT_FALSE(read.error().empty()) << text;
            continue;
        }
        ++outlines;
        EXPECT_GE(read->size(), 3U);
        for (const Point& corner : *read) EXPECT_TRUE(std::isfinite(corner.x) && std::isfinite(corner.y)) << text;
    }
    EXPECT_GT(outlines, 100) << "some must be sound, or nothing was tried";
}

}  // namespace
}  // namespace kerfwall

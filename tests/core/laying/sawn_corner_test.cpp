// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/sawn_corner.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/geometry/clearing.h"
#include "core/geometry/laying.h"
#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

/// A knee of work: its inward corner at (150, 120) is free upwards to the right.
Project kneeOfWork() {
    Project project = blankPanel();
    project.workpiece = Workpiece{};
    project.workpiece->outline = {{50, 50}, {350, 50}, {350, 120}, {150, 120}, {150, 220}, {50, 220}};
    return project;
}

TEST(SawnCorner, AKneeHasOneInwardCornerOfARightAngle) {
    const auto corners = sawnCorners(kneeOfWork());
    ASSERT_EQ(corners.size(), 1U);
    EXPECT_EQ(corners.front().at, (Point{150, 120}));
    EXPECT_NEAR(corners.front().angle, 90, 1e-9);
    EXPECT_NEAR(corners.front().first.x, 1, 1e-12);
    EXPECT_NEAR(corners.front().second.y, 1, 1e-12);
}

// Expected from: pencil. Two legs and a rail between them, glued up: the rail's lower edge meets the legs in two corners.
TEST(SawnCorner, PartsGluedUpMakeCornersBetweenThem) {
    Project project = blankPanel();
    project.workpiece = Workpiece{};
    project.workpiece->parts = {{{{20, 20}, {100, 20}, {100, 240}, {20, 240}}, {}, {}},
                                {{{300, 20}, {380, 20}, {380, 240}, {300, 240}}, {}, {}},
                                {{{100, 160}, {300, 160}, {300, 240}, {100, 240}}, {}, {}}};
    const auto corners = sawnCorners(project);
    ASSERT_EQ(corners.size(), 2U);
    EXPECT_EQ(corners[0].at, (Point{100, 160}));
    EXPECT_EQ(corners[1].at, (Point{300, 160}));
    EXPECT_NEAR(corners[0].angle, 90, 1e-9);
}

TEST(SawnCorner, APlainBoardAndNoWorkHaveNone) {
    EXPECT_TRUE(sawnCorners(blankPanel()).empty());
    Project project = blankPanel();
    project.workpiece = Workpiece{};
    project.workpiece->outline = {{50, 50}, {350, 50}, {350, 120}, {50, 120}};
    EXPECT_TRUE(sawnCorners(project).empty());
}

// Expected from: r (1 - sin(angle / 2)), the set of facts for frames: r 9.5 at 90 degrees 2.78, at 93 degrees 2.61.
TEST(SawnCorner, WithoutAMarginTheArcTouchesTheSawnCorner) {
    EXPECT_NEAR(*clearingDepth(9.5, 0, 90), 2.7825, 0.0001);
    EXPECT_NEAR(*clearingDepth(9.5, 0, 93), 2.6089, 0.0001);
}

// Expected from: pencil. The centre lies 6.35 from both walls; one wall 3 deep puts it 3.35 from the sawn corner across, and
// the other way at most sqrt(5.85 squared - 3.35 squared) = 4.7958: a depth of 1.5542.
TEST(SawnCorner, ADeeperOtherWallNeedsLess) {
    EXPECT_NEAR(*clearingDepth(6.35, 0.5, 90, 3), 1.5542, 0.0001);
    EXPECT_NEAR(*clearingDepth(6.35, 0.5, 90, 7), 0.5, 1e-12);  // beyond the arc only the wall's own margin counts
    EXPECT_FALSE(clearingDepth(6.35, 0.5, 90, 0.4));
    EXPECT_FALSE(clearingDepth(6.35, 6.35, 90));
}

// Expected from: the law itself, measured apart: the centre is where the lines shifted by the radius cross.
TEST(SawnCorner, AtAnyAngleTheCentreIsAsFarAsTheMarginLeaves) {
    constexpr double kRadius = 8, kMargin = 0.7;
    for (const double angle : {60.0, 87.0, 90.0, 120.0, 150.0}) {
        const double turn = angle * std::acos(-1.0) / 180;
        for (const double other : {2.5, 4.0, 7.5}) {
            const auto depth = clearingDepth(kRadius, kMargin, angle, other);
            ASSERT_TRUE(depth);
            // The other wall runs along x at y = -other, this one at `angle` to it; the sawn corner is the origin.
            const double y = kRadius - other;
            const double away = kRadius - *depth;  // of the centre from this wall's parallel through the corner
            const double x = (away + y * std::cos(turn)) / std::sin(turn);
            EXPECT_NEAR(std::hypot(x, y), kRadius - kMargin, 1e-9) << angle << ' ' << other;
        }
    }
}

// Expected from: pencil. 6.35 - 5.85 sin 45 degrees = 2.2134, so 2.22 deep: y 117.78; with that one laid, the upright one needs
// 6.35 - sqrt(5.85 squared - 4.13 squared) = 2.2069, so 2.21: x 147.79.
TEST(SawnCorner, ALevelAndAnUprightDragBesideItClearIt) {
    Project project = kneeOfWork();
    LayingWish wish;
    wish.start = {0, 118.6};
    wish.end = {400, 118.6};
    const auto level = layLine(project, solve(project), wish);
    ASSERT_TRUE(level);
    ASSERT_TRUE(std::holds_alternative<ByOffset>(level->place));
    EXPECT_NEAR(std::get<ByOffset>(level->place).distance, 117.78, 1e-9);
    ASSERT_EQ(level->holds.back().on, HoldOn::SawnCorner);
    EXPECT_EQ(level->holds.back().at, (Point{150, 120}));
    addLine(project, "A", level->place);
    wish.start = {148.5, 0};
    wish.end = {148.5, 250};
    const auto upright = layLine(project, solve(project), wish);
    ASSERT_TRUE(upright);
    ASSERT_TRUE(std::holds_alternative<ByOffset>(upright->place));
    EXPECT_NEAR(std::get<ByOffset>(upright->place).distance, 147.79, 1e-9);
}

// Expected from: pencil. A bush of 24 and a cutter of 12.7 set the work's wall 5.65 into the opening; the trimming bit of 12.7
// is the smaller, so the cutter's own 6.35 is left: 5.65 + 2.2134 = 7.8634, so 7.87 deep.
TEST(SawnCorner, ABushSetsTheTemplateFurtherOut) {
    Project project = kneeOfWork();
    project.use.byBush = true;
    project.use.bush = 24;
    project.use.bit = 12.7;
    const auto places = clearingsAlong(project, solve(project), {1, 0}, 0.5);
    ASSERT_EQ(places.size(), 1U);
    EXPECT_NEAR(places.front().place.y, 120 - 7.87, 1e-9);
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/size_setting.h"

#include <gtest/gtest.h>

#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

Place placeOf(const Project& project, const LineId& id) { return findLine(project, id)->place; }

std::expected<Project, NoSize> set(const Project& project, const DrawnBetween& size, double value) {
    return withSize(project, solve(project), size, value);
}

const DrawnBetween kWide{LineId("C"), LineId("D"), {110, 70}, {290, 70}};

// Expected from: pencil. C stays at 110, D was laid later and goes to 110 + 170.
TEST(SizeSetting, TheLineLaidLaterMoves) {
    const auto next = set(gridOfFour(), kWide, 170);
    ASSERT_TRUE(next.has_value());
    EXPECT_EQ(placeOf(*next, "C"), Place(ByOffset{Edge::Left, 110}));
    EXPECT_EQ(placeOf(*next, "D"), Place(ByOffset{Edge::Left, 280}));
    EXPECT_EQ(movedBy(gridOfFour(), kWide), "D");
}

TEST(SizeSetting, FromAnEdgeTheLineMovesWhicheverWayItIsNamed) {
    const auto next = set(gridOfFour(), {Edge::Left, LineId("C"), {0, 70}, {110, 70}}, 100);
    ASSERT_TRUE(next.has_value());
    EXPECT_EQ(placeOf(*next, "C"), Place(ByOffset{Edge::Left, 100}));
    const auto other = set(gridOfFour(), {LineId("C"), Edge::Left, {110, 70}, {0, 70}}, 100);
    ASSERT_TRUE(other.has_value());
    EXPECT_EQ(placeOf(*other, "C"), Place(ByOffset{Edge::Left, 100}));
}

// D laid from C: setting the width changes the number D was laid by. C laid later but from D: D cannot take it along, so C moves.
TEST(SizeSetting, ALineLaidFromTheOtherChangesItsOwnNumber) {
    Project project = gridOfFour();
    project.lines[3].place = ByOffset{LineId("C"), 180};
    const auto next = set(project, {LineId("C"), LineId("D"), {110, 70}, {290, 70}}, 150);
    ASSERT_TRUE(next.has_value());
    EXPECT_EQ(placeOf(*next, "D"), Place(ByOffset{LineId("C"), 150}));
}

// The later one goes along with the earlier: only the earlier, laid from it, can move against it.
TEST(SizeSetting, WhereTheLaterLineTakesTheOtherAlongTheOtherMoves) {
    Project project = gridOfFour();
    project.lines[2].place = ByOffset{LineId("D"), -180};
    const auto next = set(project, kWide, 150);
    ASSERT_TRUE(next.has_value());
    EXPECT_EQ(placeOf(*next, "C"), Place(ByOffset{LineId("D"), -150}));
    EXPECT_EQ(placeOf(*next, "D"), placeOf(project, "D"));
}

// Expected from: pencil. Mirrored about x 200 both walls move by 5.
TEST(SizeSetting, WallsThatMirrorOneAnotherBothMove) {
    Project project = gridOfFour();
    project.lines[3].place = ByMirror{"C", Centre::Upright};
    const auto next = set(project, kWide, 170);
    ASSERT_TRUE(next.has_value());
    EXPECT_EQ(placeOf(*next, "C"), Place(ByOffset{Edge::Left, 115}));
    EXPECT_EQ(placeOf(*next, "D"), placeOf(project, "D"));
}

// Expected from: pencil. A line that climbs 1 in 10 from (0, 100): at x 100 it stands at 110, 20 over A; 30 is 10 more.
TEST(SizeSetting, ASplayedWallMovesParallelToItself) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 90});
    addLine(project, "B", ByPoints{{0, 100}, {400, 140}});
    const auto next = set(project, {LineId("A"), LineId("B"), {100, 90}, {100, 110}}, 30);
    ASSERT_TRUE(next.has_value());
    const Solved solved = solve(*next);
    EXPECT_NEAR(findLine(solved, "B")->from.y, 110, 1e-5);
    EXPECT_NEAR(findLine(solved, "B")->to.y, 150, 1e-5);
}

TEST(SizeSetting, WhatCannotBeIsRefused) {
    EXPECT_EQ(set(gridOfFour(), kWide, 0).error(), NoSize::TooSmall);
    EXPECT_EQ(set(gridOfFour(), kWide, -5).error(), NoSize::TooSmall);
    EXPECT_EQ(set(gridOfFour(), kWide, 300).error(), NoSize::OffThePanel);
    EXPECT_EQ(set(gridOfFour(), {Edge::Bottom, LineId("B"), {50, 0}, {50, 146}}, 90).error(), NoSize::OffThePanel);
}

}  // namespace
}  // namespace kerfwall

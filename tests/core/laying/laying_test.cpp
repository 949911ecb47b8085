// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/laying.h"

#include <gtest/gtest.h>

#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

std::expected<LaidLine, NoLine> lay(const Project& project, Point start, Point end, double reach = 5) {
    LayingWish wish;
    wish.start = start;
    wish.end = end;
    wish.reach = reach;
    return layLine(project, solve(project), wish);
}

// Expected from: pencil. 90.3 and 91.2 are both within a reach of 5 of one level line, its start on the whole 90.
TEST(Laying, ALevelDragBecomesAnOffsetFromTheReferenceEdge) {
    const auto line = lay(blankPanel(), {-2, 90.3}, {401, 91.2});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByOffset{Edge::Bottom, 90}));
    EXPECT_EQ(line->from, (LaidEnd{{0, 90}, Edge::Left, 90}));
    EXPECT_EQ(line->to, (LaidEnd{{400, 90}, Edge::Right, 90}));
}

// Expected from: pencil. The true corner is at the left end of the bottom edge, so upright lines count from the left.
TEST(Laying, AnUprightDragBecomesAnOffsetFromTheEdgeAtTheTrueCorner) {
    const auto line = lay(blankPanel(), {110.4, -1}, {108, 252});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByOffset{Edge::Left, 110}));
}

// Expected from: pencil. With the reference edge on the left, true where it begins (at the top), level lines count
// from the top: 250 - 200.
TEST(Laying, LevelLinesCountFromTheTopWhereTheTrueCornerIsThere) {
    Project project = blankPanel();
    project.panel.referenceEdge = Edge::Left;
    const auto line = lay(project, {0, 200}, {400, 200});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByOffset{Edge::Top, 50}));
}

// Expected from: pencil. 7 over 400 is 1.0026 degrees: within half the reach of one whole degree.
TEST(Laying, ADragNearAWholeDegreeHoldsOnToIt) {
    const auto line = lay(blankPanel(), {0, 196.2}, {400, 203.1});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByAngle{Edge::Bottom, 1, Point{0, 196}}));
    EXPECT_NEAR(line->to.place.y, 196 + 400 * 0.017455064928217585, 1e-9);  // tan 1 degree
}

// Expected from: pencil. 60 over 400 is 8.5308 degrees; half a degree is 0.22 away at the far end, beyond a
// quarter of the reach of 0.5: the line runs from mark to mark. The left edge begins at the top: 250 - 100.
TEST(Laying, AFreeDragBecomesTwoEdgeMarks) {
    const auto line = lay(blankPanel(), {0, 100}, {400, 160}, 0.5);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByMarks{{Edge::Left, 150}, {Edge::Right, 160}}));
}

// Expected from: the rule that what is typed wins over where the pointer is.
TEST(Laying, ATypedDistanceAndAngleWinOverThePointer) {
    LayingWish wish;
    wish.start = {0, 100};
    wish.end = {400, 131};
    wish.distance = 80;
    wish.angle = 3;
    const Project project = blankPanel();
    const auto line = layLine(project, solve(project), wish);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByAngle{Edge::Bottom, 3, Point{0, 80}}));
    EXPECT_EQ(line->distance, 80);
}

TEST(Laying, ATypedDistanceMovesALevelLine) {
    LayingWish wish;
    wish.start = {0, 100};
    wish.end = {400, 101};
    wish.distance = 87.25;
    const Project project = blankPanel();
    const auto line = layLine(project, solve(project), wish);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByOffset{Edge::Bottom, 87.25}));
}

// Expected from: pencil. From the crossing of A and C at (110, 90) up to (270, 250) rises 160 over 160: 45 degrees.
TEST(Laying, ADragFromACrossingKeepsTheCrossing) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 90});
    addLine(project, "C", ByOffset{Edge::Left, 110});
    const auto line = lay(project, {112, 91}, {270, 250});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByAngle{Edge::Bottom, 45, CrossingOf{"A", "C"}}));
}

// Expected from: pencil. A line 30 above a slanting one, drawn almost parallel to it, hangs on it: 30 to its left,
// to a tenth.
TEST(Laying, ADragAlongASlantingLineBecomesAnOffsetFromIt) {
    Project project = blankPanel();
    addLine(project, "A", ByMarks{{Edge::Left, 200}, {Edge::Right, 113}});
    const auto line = lay(project, {0, 81}, {400, 145}, 5);
    ASSERT_TRUE(line);
    const auto* offset = std::get_if<ByOffset>(&line->place);
    ASSERT_TRUE(offset);
    EXPECT_EQ(offset->from, Base(LineId("A")));
    // 31 straight up, times the cosine of the slant (400 over the root of 400 squared and 63 squared): 30.623.
    EXPECT_NEAR(offset->distance, 30.6, 1e-9);
}

TEST(Laying, RefusesALineThatIsThereAndOneAlongAnEdge) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 90});
    const auto twice = lay(project, {0, 90}, {400, 90});
    ASSERT_FALSE(twice);
    EXPECT_EQ(twice.error(), NoLine::OnALine);
    const auto along = lay(project, {20, 0}, {380, 0});
    ASSERT_FALSE(along);
    EXPECT_EQ(along.error(), NoLine::TooShort);
}

// Expected from: the rule that without snapping only hundredths are rounded to.
TEST(Laying, WithoutSnappingTheMarksStayWhereTheyWereSet) {
    LayingWish wish;
    wish.start = {0, 100.374};
    wish.end = {400, 101.5};
    wish.snap = false;
    const Project project = blankPanel();
    const auto line = layLine(project, solve(project), wish);
    ASSERT_TRUE(line);
    const auto* marks = std::get_if<ByMarks>(&line->place);
    ASSERT_TRUE(marks);
    EXPECT_NEAR(marks->a.at, 250 - 100.37, 1e-9);
    EXPECT_NEAR(marks->b.at, 101.5, 1e-9);
}

}  // namespace
}  // namespace kerfwall

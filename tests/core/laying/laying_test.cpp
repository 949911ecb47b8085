// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/laying.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

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

bool holdsOn(const LaidLine& line, HoldOn on) {
    return std::ranges::any_of(line.holds, [&](const Hold& hold) { return hold.on == on; });
}

// Expected from: pencil. The mirror image of y 90 about the level centre line of a panel 250 high is y 160.
TEST(Laying, ADragWhereALineWouldBeMirroredAboutTheLevelCentreLineLaysItsImage) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 90});
    const auto line = lay(project, {0, 160.4}, {400, 159.2});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByMirror{"A", Centre::Level}));
    EXPECT_EQ(line->holds.front().on, HoldOn::Mirror);
    EXPECT_EQ(line->distance, 160);
}

// Expected from: pencil. From (0, 100) to (100, 0) mirrored about x 200: from (400, 100) to (300, 0).
TEST(Laying, ASlantingLineIsMirroredAboutTheUprightCentreLine) {
    Project project = blankPanel();
    addLine(project, "A", ByMarks{{Edge::Left, 150}, {Edge::Bottom, 100}});
    const auto line = lay(project, {400, 100.5}, {300.5, 0});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByMirror{"A", Centre::Upright}));
}

// Expected from: pencil. x 170 about x 150 is x 130; unpicked, no line is an axis.
TEST(Laying, ALineIsMirroredAboutALineThatIsPicked) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Left, 150});
    addLine(project, "B", ByOffset{Edge::Left, 170});
    LayingWish wish;
    wish.start = {130.3, 0};
    wish.end = {129.8, 250};
    const auto plain = layLine(project, solve(project), wish);
    ASSERT_TRUE(plain);
    EXPECT_EQ(plain->place, Place(ByOffset{Edge::Left, 130}));
    wish.axis = "A";
    const auto line = layLine(project, solve(project), wish);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByMirror{"B", LineId("A")}));
}

// Expected from: the rule that what is typed wins.
TEST(Laying, ATypedDistanceIsNoMirrorImage) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 90});
    LayingWish wish;
    wish.start = {0, 160};
    wish.end = {400, 160};
    wish.distance = 160;
    const auto line = layLine(project, solve(project), wish);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByOffset{Edge::Bottom, 160}));
}

// Expected from: pencil. A climbs 1 in 4, so square to it falls 4 in 1: from (100, 250) to (162.5, 0).
TEST(Laying, ADragSquareToASlantingLineIsLaidByTheRightAngle) {
    Project project = blankPanel();
    addLine(project, "A", ByPoints{{0, 50}, {400, 150}});
    const auto line = lay(project, {100, 250}, {162, 0});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByAngle{LineId("A"), 90, Point{100, 250}}));
    EXPECT_NEAR(line->to.place.x, 162.5, 1e-9);
    EXPECT_EQ(line->holds.front().on, HoldOn::Square);
}

// Expected from: pencil. A and C cross at (110, 90): 45 degrees through it begins at (20, 0). Dragged from 21 it is
// drawn to the crossing and keeps it.
TEST(Laying, AHeldDirectionPassesThroughACrossing) {
    const auto line = lay(gridOfFour(), {21, 0}, {271.4, 250});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByAngle{Edge::Bottom, 45, CrossingOf{"A", "C"}}));
    EXPECT_NEAR(line->from.place.x, 20, 1e-9);
    EXPECT_TRUE(holdsOn(*line, HoldOn::Crossing));
}

// Expected from: pencil. A and B cross at (200, 100).
TEST(Laying, ALevelLineThroughACrossingOfSlantingLinesKeepsIt) {
    Project project = blankPanel();
    addLine(project, "A", ByPoints{{0, 50}, {400, 150}});
    addLine(project, "B", ByPoints{{0, 150}, {400, 50}});
    const auto line = lay(project, {0, 101.2}, {400, 101.2});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->place, Place(ByAngle{Edge::Bottom, 0, CrossingOf{"A", "B"}}));
}

// Expected from: pencil. From (0, 200) to the crossing at (200, 100) falls 1 in 2: minus atan(1/2).
TEST(Laying, ADragThatEndsInACrossingKeepsTheCrossing) {
    Project project = blankPanel();
    addLine(project, "A", ByPoints{{0, 50}, {400, 150}});
    addLine(project, "B", ByPoints{{0, 150}, {400, 50}});
    const auto line = lay(project, {0, 200}, {200.2, 100.1}, 0.5);
    ASSERT_TRUE(line);
    const auto* angle = std::get_if<ByAngle>(&line->place);
    ASSERT_TRUE(angle);
    EXPECT_NEAR(angle->angle, -26.56505117707799, 1e-9);
    EXPECT_EQ(angle->through, (std::variant<Point, CrossingOf>(CrossingOf{"A", "B"})));
}

TEST(Laying, EdgeMiddlesAndPointsOfOtherLinesHold) {
    const auto middle = lay(blankPanel(), {201.4, 0}, {200, 250});
    ASSERT_TRUE(middle);
    EXPECT_EQ(middle->place, Place(ByOffset{Edge::Left, 200}));
    EXPECT_TRUE(holdsOn(*middle, HoldOn::EdgeMiddle));
    Project project = blankPanel();
    addLine(project, "A", ByPoints{{50, 60}, {300, 200}});
    const auto point = lay(project, {51.3, 61.7}, {50.5, 250});
    ASSERT_TRUE(point);
    EXPECT_EQ(point->place, Place(ByOffset{Edge::Left, 50}));
    EXPECT_TRUE(holdsOn(*point, HoldOn::LaidPoint));
}

/// gridOfFour with its middle cut out and its lower corners bored to 20: circles round (130, 110) and (270, 110).
Project boredGrid() {
    Project project = gridOfFour();
    project.cutouts.push_back({"cutout-1", {{200, 118}}, {{"A", "C", 20, {}}, {"A", "D", 20, {}}}, {}, {}});
    return project;
}

double awayFrom(const LaidLine& line, Point centre) {
    return std::abs(cross(unit(line.to.place - line.from.place), centre - line.from.place));
}

// Expected from: pencil. The upper tangent from (0, 110) touches at 128.45 along; its mark on the left edge counts from the top.
TEST(Laying, ADragFromAnEdgeToABoreIsTangentToIt) {
    const auto line = lay(boredGrid(), {0, 110}, {127, 129});
    ASSERT_TRUE(line);
    EXPECT_NEAR(awayFrom(*line, {130, 110}), 20, 1e-9);
    const auto* marks = std::get_if<ByMarks>(&line->place);
    ASSERT_TRUE(marks);
    EXPECT_EQ(marks->a, (EdgeMark{Edge::Left, 140}));
    ASSERT_EQ(line->holds.front().on, HoldOn::Bore);
    EXPECT_NEAR(line->holds.front().at.x, 126.923, 0.001);
}

// Expected from: pencil. Level over a round of 20 about y 110 is y 130.
TEST(Laying, ALevelLineIsDrawnAgainstABore) {
    const auto line = lay(boredGrid(), {0, 131.4}, {400, 131.4});
    ASSERT_TRUE(line);
    const auto* offset = std::get_if<ByOffset>(&line->place);
    ASSERT_TRUE(offset);
    EXPECT_NEAR(offset->distance, 130, 1e-9);
    EXPECT_TRUE(holdsOn(*line, HoldOn::Bore));
}

// Expected from: pencil. The inner tangent of two rounds of 20 whose centres lie 140 apart, from under the first to over the second.
TEST(Laying, ADragFromBoreToBoreIsTangentToBoth) {
    const auto line = lay(boredGrid(), {136, 91.5}, {264, 129});
    ASSERT_TRUE(line);
    EXPECT_TRUE(std::holds_alternative<ByPoints>(line->place));
    EXPECT_NEAR(awayFrom(*line, {130, 110}), 20, 1e-9);
    EXPECT_NEAR(awayFrom(*line, {270, 110}), 20, 1e-9);
    EXPECT_LT(line->from.place.y, line->to.place.y);
}

// Expected from: the rule that without snapping nothing holds.
TEST(Laying, WithoutSnappingNothingHolds) {
    Project project = boredGrid();
    LayingWish wish;
    wish.snap = false;
    wish.start = {0, 110};
    wish.end = {127, 129};
    const auto line = layLine(project, solve(project), wish);
    ASSERT_TRUE(line);
    EXPECT_TRUE(line->holds.empty());
}

}  // namespace
}  // namespace kerfwall

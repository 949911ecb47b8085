// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/moving.h"

#include <gtest/gtest.h>

#include "core/geometry/typed_line.h"
#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

Place placeOf(const Project& project, const LineId& id) { return findLine(project, id)->place; }

// Expected from: pencil. 9.7 up from 90 is 99.7, on whole millimetres 100; sideways counts for nothing.
TEST(Moving, AnOffsetLineChangesItsDistance) {
    const Project project = gridOfFour();
    const Project moved = moveLine(project, solve(project), "A", Grip::Whole, {200, 90}, {240, 99.7}, 1);
    EXPECT_EQ(placeOf(moved, "A"), Place(ByOffset{Edge::Bottom, 100}));
    EXPECT_EQ(placeOf(moved, "B"), placeOf(project, "B"));
}

// Expected from: pencil. The left edge runs down: 10 up lowers its mark from 150 to 140 and raises the right one.
TEST(Moving, ALineLaidByMarksKeepsItsSlant) {
    Project project = blankPanel();
    addLine(project, "A", ByMarks{{Edge::Left, 150}, {Edge::Right, 160}});
    const Project moved = moveLine(project, solve(project), "A", Grip::Whole, {200, 130}, {200, 140}, 1);
    EXPECT_EQ(placeOf(moved, "A"), Place(ByMarks{{Edge::Left, 140}, {Edge::Right, 170}}));
}

TEST(Moving, TakenByItsEndALineLaidByMarksTurns) {
    Project project = blankPanel();
    addLine(project, "A", ByMarks{{Edge::Left, 150}, {Edge::Right, 160}});
    const Project moved = moveLine(project, solve(project), "A", Grip::To, {400, 160}, {399, 171.3}, 1);
    EXPECT_EQ(placeOf(moved, "A"), Place(ByMarks{{Edge::Left, 150}, {Edge::Right, 171}}));
}

// Expected from: pencil. D mirrors C about x = 200; pushing D 10 to the right pushes C 10 to the left.
TEST(Moving, AMirrorImageMovesWhatItMirrors) {
    Project project = blankPanel();
    addLine(project, "C", ByOffset{Edge::Left, 110});
    addLine(project, "D", ByMirror{"C", Centre::Upright});
    const Project moved = moveLine(project, solve(project), "D", Grip::Whole, {290, 50}, {300, 50}, 1);
    EXPECT_EQ(placeOf(moved, "C"), Place(ByOffset{Edge::Left, 100}));
}

// Expected from: pencil. A line through (0, 100) that climbs 3 degrees, pushed straight up by 20.
TEST(Moving, ALineLaidByAngleKeepsItsAngle) {
    Project project = blankPanel();
    addLine(project, "A", ByAngle{Edge::Bottom, 3, Point{0, 100}});
    const Project moved = moveLine(project, solve(project), "A", Grip::Whole, {200, 110.5}, {200, 130.5}, 1);
    EXPECT_EQ(placeOf(moved, "A"), Place(ByAngle{Edge::Bottom, 3, Point{0, 120}}));
}

// Expected from: pencil. B lay 56 above A at 90: once A is gone it stays at 146, counted from the edge.
TEST(Moving, TakingALineAwayLeavesWhatWasLaidFromItInPlace) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 90});
    addLine(project, "B", ByOffset{LineId("A"), 56});
    project.cutouts.push_back({"cutout-1", {{200, 118}}, {{"A", "B", 20, {}}}, {}, {}});
    const Project rest = withoutLine(project, solve(project), "A");
    ASSERT_EQ(rest.lines.size(), 1U);
    EXPECT_EQ(placeOf(rest, "B"), Place(ByOffset{Edge::Bottom, 146}));
    EXPECT_TRUE(rest.cutouts.front().corners.empty());
}

// Expected from: the order of the alphabet; after Z come two letters.
TEST(Moving, LineIdsAreNeverGivenTwice) {
    Project project = blankPanel();
    EXPECT_EQ(nextLineId(project, 0), "A");
    EXPECT_EQ(nextLineId(project, 3), "D");
    addLine(project, "Z", ByOffset{Edge::Bottom, 90});
    EXPECT_EQ(nextLineId(project, 3), "AA");
    addLine(project, "seat-back", ByOffset{Edge::Bottom, 100});
    EXPECT_EQ(nextLineId(project, 27), "AB");
}

// Expected from: pencil. 3 degrees to the left edge, which runs down, 110 into the panel at the true corner.
TEST(Moving, ALineCanBeLaidByNumbersAlone) {
    const Project project = blankPanel();
    const Solved solved = solve(project);
    EXPECT_EQ(typedLine(project, solved, Edge::Bottom, 90, 0).value(), Place(ByOffset{Edge::Bottom, 90}));
    EXPECT_EQ(typedLine(project, solved, Edge::Left, 110, 3).value(), Place(ByAngle{Edge::Left, 3, Point{110, 0}}));
    EXPECT_EQ(typedLine(project, solved, Edge::Bottom, 300, 0).error(), NoLine::OffThePanel);
    Project taken = project;
    addLine(taken, "A", ByOffset{Edge::Bottom, 90});
    EXPECT_EQ(typedLine(taken, solve(taken), Edge::Top, 160, 0).error(), NoLine::OnALine);
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
// Lines that cannot be solved yet: shown where they would run, with their trouble on the panel.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/drawing/plan_drawing.h"
#include "core/geometry/moving.h"
#include "core/geometry/nearest.h"
#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

TEST(Stray, ALineOnAnotherWouldRunWhereThatRuns) {
    Project project = gridOfFour();
    addLine(project, "E", ByOffset{Edge::Top, 160});
    const Solved solved = solve(project);
    ASSERT_EQ(solved.strays.size(), 1U);
    EXPECT_EQ(solved.strays.front(), (StrayLine{"E", 4, {400, 90}, {0, 90}}));
    ASSERT_TRUE(troubleOf(solved, "E"));
    EXPECT_EQ(troubleOf(solved, "E")->at, (Point{200, 90}));
    EXPECT_FALSE(troubleOf(solved, "A"));
}

// Expected from: pencil. 270 over a panel 250 high: the nearest places on the panel are its top corners, between them (200, 250).
TEST(Stray, ALineBesideThePanelShowsItsTroubleOnTheEdgeNearest) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 270});
    const Solved solved = solve(project);
    ASSERT_EQ(solved.strays.size(), 1U);
    EXPECT_EQ(solved.strays.front().from.y, 270);
    EXPECT_LT(solved.strays.front().from.x, 0);
    EXPECT_GT(solved.strays.front().to.x, 400);
    EXPECT_EQ(solved.troubles.front().at, (Point{200, 250}));
}

// Expected from: pencil. Past the top right corner at 45 degrees down: x + y = 700.
TEST(Stray, ALineBesideACornerShowsItsTroubleThere) {
    Project project = blankPanel();
    addLine(project, "A", ByPoints{{700, 0}, {0, 700}});
    EXPECT_EQ(solve(project).troubles.front().at, (Point{400, 250}));
}

TEST(Stray, ALineWithoutAPlaceShowsItsTroubleOnWhatItIsLaidFrom) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 90});
    addLine(project, "B", ByOffset{Edge::Bottom, 146});
    addLine(project, "C", ByAngle{Edge::Bottom, 45, CrossingOf{"A", "B"}});
    const Solved solved = solve(project);
    EXPECT_TRUE(solved.strays.empty());
    EXPECT_EQ(solved.troubles.front().at, (Point{200, 90}));
}

// Expected from: pencil. Taken hold of at y 270 and carried down by 30: 240.
TEST(Stray, ALineBesideThePanelIsCaughtAndMovedBack) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 270});
    const Solved solved = solve(project);
    ASSERT_TRUE(lineNear(solved, {100, 271}, 2));
    EXPECT_EQ(lineNear(solved, {100, 271}, 2)->id, "A");
    const Project moved = moveLine(project, solved, "A", Grip::Whole, {100, 270}, {100, 240}, 1);
    EXPECT_EQ(moved.lines.front().place, Place(ByOffset{Edge::Bottom, 240}));
}

TEST(Stray, IsDrawnOnTheSheetAndNeverOnPaper) {
    Project project = gridOfFour();
    addLine(project, "E", ByOffset{Edge::Top, 160});
    const Solved solved = solve(project);
    const auto strokes = [&](bool strays) {
        PlanLayers layers;
        layers.strays = strays;
        const Drawing drawing = planDrawing(project, solved, {}, layers);
        return std::ranges::count_if(drawing.marks, [](const Mark& mark) {
            const auto* stroke = std::get_if<Stroke>(&mark);
            return stroke && stroke->ink == Ink::StrayLine;
        });
    };
    EXPECT_EQ(strokes(true), 1);
    EXPECT_EQ(strokes(false), 0);
}

// Expected from: the rule that a back-face line is shown as such.
TEST(LineOnTheBack, IsDashedAndSaysSo) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 90});
    project.lines.front().cut = false;
    project.lines.front().drawnOn = Face::Back;
    const Drawing drawing = planDrawing(project, solve(project), {}, {});
    EXPECT_TRUE(std::ranges::any_of(drawing.marks, [](const Mark& mark) {
        const auto* stroke = std::get_if<Stroke>(&mark);
        return stroke && stroke->ink == Ink::BackLine && stroke->id == "A";
    }));
    EXPECT_TRUE(std::ranges::any_of(drawing.marks, [](const Mark& mark) {
        const auto* label = std::get_if<Label>(&mark);
        return label && label->text == "on the back";
    }));
}

}  // namespace
}  // namespace kerfwall

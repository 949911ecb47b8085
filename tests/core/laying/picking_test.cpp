// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/picking.h"

#include <gtest/gtest.h>

#include "core/geometry/taking_away.h"
#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

Project fullSheet() {
    Project project = sheetOfThings();
    project.workpiece = Workpiece{{{120, 60}, {280, 60}, {280, 240}, {120, 240}}, {}, {}, {}, {}};
    return project;
}

// Expected from: pencil. The hole lies over x 57.5 to 62.5 and y 0 to 40; the fence over x 310 to 380 and y 20 to 35;
// the work's right side stands at x 280.
TEST(Picking, FindsEachKindOfThingUnderThePointer) {
    const Project project = fullSheet();
    const Solved solved = solve(project);
    EXPECT_EQ(thingAt(project, solved, {50, 91}, 2), onlyLine("A"));
    EXPECT_EQ(thingAt(project, solved, {61, 30}, 2), onlyHole(0));
    EXPECT_EQ(thingAt(project, solved, {345, 27}, 2), onlyFence(0));
    EXPECT_EQ(thingAt(project, solved, {200, 118}, 2), onlyCutout("window"));
    EXPECT_EQ(thingAt(project, solved, {279, 200}, 2), onlyWorkpiece());
    EXPECT_TRUE(thingAt(project, solved, {350, 200}, 2).isEmpty());
}

TEST(Picking, ABandTakesLinesItCrossesAndAllElseThatLiesInside) {
    const Project project = fullSheet();
    const Solved solved = solve(project);
    EXPECT_EQ(thingsInBand(project, solved, {50, 50}, {70, -1}), onlyHole(0));
    EXPECT_TRUE(thingsInBand(project, solved, {50, 30}, {70, -1}).isEmpty());
    EXPECT_EQ(thingsInBand(project, solved, {300, 10}, {390, 40}), onlyFence(0));
    EXPECT_EQ(thingsInBand(project, solved, {100, 80}, {300, 160}), (Picked{{"A", "B", "C", "D"}, {"window"}, {}, {}, false}));
    EXPECT_EQ(thingsInBand(project, solved, {120, 100}, {200, 85}), onlyLine("A"));
}

// Expected from: pencil. A slanting line from (0, 0) to (400, 250) passes (200, 125); the band's corner (210, 120) lies
// below it, its opposite corner (190, 130) above.
TEST(Picking, ABandCrossesASlantingLineOnlyOnItsRun) {
    Project project = blankPanel();
    addLine(project, "A", ByPoints{{0, 0}, {400, 250}});
    const Solved solved = solve(project);
    EXPECT_EQ(thingsInBand(project, solved, {210, 120}, {190, 130}), onlyLine("A"));
    EXPECT_TRUE(thingsInBand(project, solved, {230, 100}, {260, 120}).isEmpty());
    EXPECT_TRUE(thingsInBand(project, solved, {410, 240}, {440, 290}).isEmpty());
}

TEST(Picking, WhatIsGoneIsPickedNoMore) {
    Project project = fullSheet();
    const Picked all = everythingOf(project, solve(project));
    EXPECT_EQ(all.count(), 8U);
    project.lines.pop_back();
    project.clampHoles.clear();
    project.workpiece.reset();
    EXPECT_EQ(stillThere(project, all), (Picked{{"A", "B", "C"}, {"window"}, {}, {0}, false}));
}

TEST(TakingAway, TakesEachKindAndLeavesTheRest) {
    Project project = fullSheet();
    project.fences.push_back(project.fences.front());
    project.fences.back().along = LineId{"D"};
    const Solved solved = solve(project);
    const Project rest = withoutPicked(project, solved, {{"D", "A"}, {"window"}, {0}, {0}, true});
    ASSERT_EQ(rest.lines.size(), 2U);
    EXPECT_EQ(rest.lines.front().id, "B");
    EXPECT_TRUE(rest.cutouts.empty());
    EXPECT_TRUE(rest.clampHoles.empty());
    EXPECT_TRUE(rest.fences.empty());  // the second ran along D
    EXPECT_FALSE(rest.workpiece);
}

}  // namespace
}  // namespace kerfwall

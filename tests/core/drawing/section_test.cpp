// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/section.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/drawing/drawn_panel.h"

namespace kerfwall {
namespace {

using Kind = SectionRun::Kind;

void expectRun(const SectionRun& run, Kind kind, double from, double to) {
    EXPECT_EQ(run.kind, kind);
    EXPECT_NEAR(run.from, from, 1e-9);
    EXPECT_NEAR(run.to, to, 1e-9);
}

// Expected from: pencil. C runs down, so its left is to the right: 110 to 113.2; D's left is 286.8 to 290.
TEST(Section, ShowsKerfsWhereALevelLineCrossesThem) {
    const auto runs = sectionAt(blankPanel(400, 250, 12), windowInPanel(), {CutDirection::Level, 50});
    ASSERT_EQ(runs.size(), 5U);
    expectRun(runs[0], Kind::Wood, 0, 110);
    expectRun(runs[1], Kind::Kerf, 110, 113.2);
    expectRun(runs[2], Kind::Wood, 113.2, 286.8);
    expectRun(runs[3], Kind::Kerf, 286.8, 290);
    expectRun(runs[4], Kind::Wood, 290, 400);
    EXPECT_EQ(runs[1].line, "C");
    EXPECT_DOUBLE_EQ(runs[1].depth, 6);
}

TEST(Section, ShowsTheOpeningBeforeTheKerfsInIt) {
    const auto runs = sectionAt(blankPanel(400, 250, 12), windowInPanel(), {CutDirection::Level, 118});
    ASSERT_EQ(runs.size(), 3U);
    expectRun(runs[1], Kind::Opening, 110, 290);
}

// Expected from: pencil. A kerf of 3.2 crossed at 45 degrees is 3.2 / cos 45 = 4.525 wide along the cut.
TEST(Section, CrossesASlantingKerfWider) {
    Solved solved;
    solved.lines = {sawnLine("S", {0, 0}, {250, 250}, Side::Left)};
    const auto runs = sectionAt(blankPanel(400, 250, 12), solved, {CutDirection::Level, 100});
    ASSERT_EQ(runs.size(), 3U);
    EXPECT_NEAR(runs[1].to, 100, 1e-9);
    EXPECT_NEAR(runs[1].to - runs[1].from, 4.525, 0.0005);
}

// Expected from: pencil. Blade 250, kerf 6: the round leaves the face sqrt(6 x 244) = 38.262 past the
// full depth, and 20 past it the kerf is 4.390 deep. Steps of 38.262 / 8 = 4.8 along a slope of at most
// 0.2 there: within half a step times the slope.
TEST(Section, FollowsTheBladesRoundInARunOut) {
    Project project = blankPanel(400, 250, 12);
    project.bench = stockBench();
    project.bench->saws[0].blade = 250;
    Solved solved;
    SolvedLine line = sawnLine("A", {0, 100}, {400, 100}, Side::Left);
    line.kerfs[0].stopped = true;
    line.kerfs[0].fullFrom = 100;
    line.kerfs[0].fullTo = 300;
    line.kerfs[0].surfaceFrom = 100 - 38.262;
    line.kerfs[0].surfaceTo = 300 + 38.262;
    solved.lines = {line};
    const auto runs = sectionAt(project, solved, {CutDirection::Level, 101});
    const auto depthAt = [&](double x) {
        const auto run =
            std::ranges::find_if(runs, [x](const SectionRun& r) { return r.from <= x && x < r.to; });
        return run->kind == Kind::Kerf ? run->depth : 0;
    };
    EXPECT_DOUBLE_EQ(depthAt(200), 6);
    EXPECT_NEAR(depthAt(320), 4.390, 0.48);
    EXPECT_NEAR(depthAt(80), 4.390, 0.48);
    EXPECT_DOUBLE_EQ(depthAt(50), 0);
    EXPECT_DOUBLE_EQ(depthAt(350), 0);
    EXPECT_GT(depthAt(310), depthAt(320));
    EXPECT_GT(depthAt(320), depthAt(330));
}

TEST(Section, LeavesNoGap) {
    Solved solved = windowInPanel();
    solved.lines.push_back(sawnLine("S", {0, 0}, {250, 250}, Side::Right));
    for (const double height : {0.0, 12.5, 90.0, 117.3, 250.0}) {
        const auto runs = sectionAt(blankPanel(400, 250, 12), solved, {CutDirection::Level, height});
        ASSERT_FALSE(runs.empty());
        EXPECT_EQ(runs.front().from, 0);
        EXPECT_EQ(runs.back().to, 400);
        for (std::size_t i = 1; i < runs.size(); ++i) EXPECT_EQ(runs[i - 1].to, runs[i].from);
    }
}

/// The same layout turned a quarter: what lay along x lies along y.
Point turned(Point place) { return {250 - place.y, place.x}; }

// Expected from: the law that a quarter turn changes nothing. A panel of 400 x 250 turned anticlockwise is 250 x 400,
// and the level cut at 118 becomes the upright one at 250 - 118 = 132.
TEST(Section, CutsUprightAsItCutsLevelOnceAllIsTurned) {
    Solved solved = windowInPanel();
    solved.lines.push_back(sawnLine("S", {0, 0}, {250, 250}, Side::Right));
    Solved turnedAbout = solved;
    for (SolvedLine& line : turnedAbout.lines) {
        line.from = turned(line.from);
        line.to = turned(line.to);
    }
    turnedAbout.cutouts[0].opening = makeOutline(
        {polygonLoop({turned({110, 90}), turned({290, 90}), turned({290, 146}), turned({110, 146})})});
    for (const double at : {50.0, 118.0, 200.0}) {
        const auto level = sectionAt(blankPanel(400, 250, 12), solved, {CutDirection::Level, at});
        const auto upright = sectionAt(blankPanel(250, 400, 12), turnedAbout, {CutDirection::Upright, 250 - at});
        ASSERT_EQ(level.size(), upright.size()) << at;
        for (std::size_t i = 0; i < level.size(); ++i) {
            expectRun(upright[i], level[i].kind, level[i].from, level[i].to);
            EXPECT_EQ(upright[i].line, level[i].line);
            EXPECT_EQ(upright[i].depth, level[i].depth);
        }
    }
}

// Expected from: pencil. The window reaches from y 90 to 146 at x = 200; at x = 50 nothing is opened.
TEST(Section, ProjectsThePanelsEndsAndThoseOfTheOpening) {
    const Project panel = blankPanel(400, 250, 12);
    EXPECT_EQ(projectedPlaces(panel, windowInPanel(), {CutDirection::Upright, 200}),
              (std::vector<double>{0, 250, 90, 146}));
    EXPECT_EQ(projectedPlaces(panel, windowInPanel(), {CutDirection::Upright, 50}), (std::vector<double>{0, 250}));
    EXPECT_EQ(projectedPlaces(panel, windowInPanel(), {CutDirection::Level, 118}),
              (std::vector<double>{0, 400, 110, 290}));
}

}  // namespace
}  // namespace kerfwall

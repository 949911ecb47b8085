// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/side_view.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/core/drawing/drawn_panel.h"

namespace kerfwall {
namespace {

using Kind = SectionRun::Kind;

/// A window from 110 to 290 and 90 to 146 on a panel of 400 x 250 x 12; its upright walls on C and D,
/// their kerfs inside it.
Solved windowInPanel() {
    Solved solved;
    solved.kerfDepth = 6;
    solved.lines = {sawnLine("C", {110, 250}, {110, 0}, Side::Left),
                    sawnLine("D", {290, 0}, {290, 250}, Side::Left)};
    SolvedCutout cutout;
    cutout.id = "window";
    cutout.opening = makeOutline({polygonLoop({{110, 90}, {290, 90}, {290, 146}, {110, 146}})});
    solved.cutouts.push_back(cutout);
    return solved;
}

void expectRun(const SectionRun& run, Kind kind, double from, double to) {
    EXPECT_EQ(run.kind, kind);
    EXPECT_NEAR(run.from, from, 1e-9);
    EXPECT_NEAR(run.to, to, 1e-9);
}

// Expected from: pencil. C runs down, so its left is to the right: 110 to 113.2; D's left is 286.8 to 290.
TEST(Section, ShowsKerfsWhereTheLevelLineCrossesThem) {
    const auto runs = sectionAt(blankPanel(400, 250, 12), windowInPanel(), 50);
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
    const auto runs = sectionAt(blankPanel(400, 250, 12), windowInPanel(), 118);
    ASSERT_EQ(runs.size(), 3U);
    expectRun(runs[1], Kind::Opening, 110, 290);
}

// Expected from: pencil. A kerf of 3.2 crossed at 45 degrees is 3.2 / cos 45 = 4.525 wide along the cut.
TEST(Section, CrossesASlantingKerfWider) {
    Solved solved;
    solved.lines = {sawnLine("S", {0, 0}, {250, 250}, Side::Left)};
    const auto runs = sectionAt(blankPanel(400, 250, 12), solved, 100);
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
    const auto runs = sectionAt(project, solved, 101);
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
        const auto runs = sectionAt(blankPanel(400, 250, 12), solved, height);
        ASSERT_FALSE(runs.empty());
        EXPECT_EQ(runs.front().from, 0);
        EXPECT_EQ(runs.back().to, 400);
        for (std::size_t i = 1; i < runs.size(); ++i) EXPECT_EQ(runs[i - 1].to, runs[i].from);
    }
}

// Expected from: pencil. 12 thick, kerf 6: web 6; at 2.5 times the height the back lies 30 down.
TEST(SideView, DimensionsKerfWebAndOpening) {
    const Drawing drawing = sideView(blankPanel(400, 250, 12), windowInPanel(), 118, 2.5);
    const auto texts = dimensionTexts(drawing);
    for (const char* text : {"kerf 6", "web 6", "180"}) {
        EXPECT_EQ(std::ranges::count(texts, text), 1) << text;
    }
    const auto wood = marksOf<Area>(drawing, Ink::Wood);
    ASSERT_EQ(wood.size(), 2U);
    double lowest = 0;
    for (const OutlinePiece& piece : wood[0].loops[0]) lowest = std::min(lowest, piece.from.y);
    EXPECT_DOUBLE_EQ(lowest, -30);
}

// Expected from: pencil. 12 wide in 18 thick leaves (18 - 12) / 2 = 3 above and below.
TEST(SideView, SaysHowMuchWoodIsLeftRoundAClampHole) {
    Project project = blankPanel(400, 250, 18);
    project.clampHoles.push_back({"h", Edge::Left, 100, 12, 60, {}, {}});
    project.clampHoles.push_back({"g", Edge::Left, 150, 12, 60, 7, {}});
    const Drawing drawing = sideView(project, {}, 118, 1);
    const auto labels = marksOf<Label>(drawing, Ink::Text);
    ASSERT_EQ(labels.size(), 2U);
    EXPECT_NE(labels[0].text.find("3 of wood above and below"), std::string::npos) << labels[0].text;
    EXPECT_NE(labels[1].text.find("1 of wood above, 5 below"), std::string::npos) << labels[1].text;
    EXPECT_EQ(marksOf<Stroke>(drawing, Ink::Hidden).size(), 6U) << "three hidden lines a hole";
}

// Expected from: pencil. A hole 60 deep from the bottom is cut at 40 and lies hidden behind at 80.
TEST(SideView, CutsAHoleFromTheBottomEdgeOnlyWithinItsDepth) {
    Project project = blankPanel(400, 250, 18);
    project.clampHoles.push_back({"h", Edge::Bottom, 100, 10, 60, {}, {}});
    EXPECT_EQ(marksOf<Area>(sideView(project, {}, 40, 1), Ink::ClampHole).size(), 1U);
    EXPECT_EQ(marksOf<Area>(sideView(project, {}, 80, 1), Ink::ClampHole).size(), 0U);
    EXPECT_EQ(marksOf<Area>(sideView(project, {}, 80, 1), Ink::Hidden).size(), 1U);
}

}  // namespace
}  // namespace kerfwall

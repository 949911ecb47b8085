// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/plan_drawing.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <sstream>

#include "core/drawing/drawn_size.h"
#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "tests/core/drawing/drawn_panel.h"

namespace kerfwall {
namespace {

Drawing planOf(const Project& project, const Solved& solved, const PlanLayers& layers = {}) {
    return planDrawing(project, solved, {}, layers);
}

Project sample(const std::string& name) {
    std::ifstream file(std::string(KERFWALL_SAMPLES) + "/" + name);
    std::ostringstream text;
    text << file.rdbuf();
    return readProject(text.str()).value();
}

TEST(PlanDrawing, DrawsEachLayoutLineAsOneStrokeFromEdgeToEdge) {
    Solved solved;
    solved.lines = {sawnLine("A", {110, 0}, {110, 250}, Side::Right),
                    sawnLine("B", {0, 40}, {400, 90}, Side::Left)};
    const auto lines = marksOf<Stroke>(planOf(blankPanel(400, 250, 12), solved), Ink::LayoutLine);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0], (Stroke{Ink::LayoutLine, {110, 0}, {110, 250}, "A"}));
    EXPECT_EQ(lines[1], (Stroke{Ink::LayoutLine, {0, 40}, {400, 90}, "B"}));
}

TEST(PlanDrawing, DrawsAMarkOnlyAsAFootLineWithoutKerf) {
    Solved solved;
    SolvedLine line = sawnLine("A", {110, 0}, {110, 250}, Side::Right);
    line.kerfs.clear();
    line.cut = false;
    solved.lines = {line};
    const Drawing drawing = planOf(blankPanel(400, 250, 12), solved);
    EXPECT_EQ(marksOf<Stroke>(drawing, Ink::FootLine).size(), 1U);
    EXPECT_TRUE(marksOf<Stroke>(drawing, Ink::LayoutLine).empty());
    EXPECT_TRUE(marksOf<Area>(drawing, Ink::KerfBand).empty());
}

// Expected from: pencil. On the right of a line that runs up: 110 to 113.2, the whole height.
TEST(PlanDrawing, LaysTheKerfOnItsSide) {
    Solved solved;
    solved.lines = {sawnLine("A", {110, 0}, {110, 250}, Side::Right)};
    const auto bands = marksOf<Area>(planOf(blankPanel(400, 250, 12), solved), Ink::KerfBand);
    ASSERT_EQ(bands.size(), 1U);
    const Box bounds = makeOutline(bands[0].loops).bounds;
    EXPECT_NEAR(bounds.low.x, 110, 1e-9);
    EXPECT_NEAR(bounds.high.x, 113.2, 1e-9);
    EXPECT_NEAR(bounds.low.y, 0, 1e-9);
    EXPECT_NEAR(bounds.high.y, 250, 1e-9);
}

// Expected from: pencil. A band cut off level at both edges is a parallelogram of the line's length times
// the kerf: sqrt(50² + 250²) x 3.2 = 815.84 mm².
TEST(PlanDrawing, ClipsASlantingKerfToThePanel) {
    Solved solved;
    solved.lines = {sawnLine("A", {100, 0}, {150, 250}, Side::Left)};
    const auto bands = marksOf<Area>(planOf(blankPanel(400, 250, 12), solved), Ink::KerfBand);
    ASSERT_EQ(bands.size(), 1U);
    EXPECT_NEAR(std::abs(signedArea(bands[0].loops[0])), 815.84, 0.005);
}

TEST(PlanDrawing, DashesTheRunOutOfAStoppedKerf) {
    Solved solved;
    SolvedLine line = sawnLine("A", {110, 0}, {110, 250}, Side::Right);
    line.kerfs[0].stopped = true;
    line.kerfs[0].fullFrom = 60;
    line.kerfs[0].fullTo = 150;
    line.kerfs[0].surfaceFrom = 21;
    line.kerfs[0].surfaceTo = 189;
    solved.lines = {line};
    const Drawing drawing = planOf(blankPanel(400, 250, 12), solved);
    const auto runOuts = marksOf<Area>(drawing, Ink::RunOut);
    ASSERT_EQ(runOuts.size(), 2U);
    EXPECT_NEAR(makeOutline(runOuts[0].loops).bounds.low.y, 21, 1e-9);
    EXPECT_NEAR(makeOutline(runOuts[0].loops).bounds.high.y, 60, 1e-9);
    EXPECT_NEAR(makeOutline(runOuts[1].loops).bounds.high.y, 189, 1e-9);
    const Box full = makeOutline(marksOf<Area>(drawing, Ink::KerfBand)[0].loops).bounds;
    EXPECT_NEAR(full.low.y, 60, 1e-9);
    EXPECT_NEAR(full.high.y, 150, 1e-9);
}

// Expected from: pencil. The bottom edge starts on the left, the top edge on the right: waste to the
// right of A lies towards the bottom edge's end and the top edge's start.
TEST(PlanDrawing, TicksTheWasteSideOutsideThePanel) {
    Solved solved;
    SolvedLine line = sawnLine("A", {110, 0}, {110, 250}, Side::Right);
    line.marks = {{{Edge::Bottom, 110}, false, true}, {{Edge::Top, 290}, true, false}};
    solved.lines = {line};
    const Drawing drawing = planOf(blankPanel(400, 250, 12), solved);
    const auto ticks = marksOf<Stroke>(drawing, Ink::WasteTick);
    ASSERT_EQ(ticks.size(), 2U);
    for (const Stroke& tick : ticks) {
        EXPECT_NEAR(tick.from.x, 110, 1e-9);
        EXPECT_GT(tick.to.x, 110) << "towards the waste";
        EXPECT_TRUE(tick.from.y < 0 || tick.from.y > 250) << "outside the panel";
    }
    const auto labels = marksOf<Label>(drawing, Ink::Text);
    ASSERT_EQ(labels.size(), 2U);
    EXPECT_EQ(labels[0].text, "A");
    EXPECT_LT(labels[0].at.y, 0);
    EXPECT_GT(labels[1].at.y, 250);
}

// Expected from: a law. Drawn at half the scale, what keeps its size on paper stands twice as far out.
TEST(PlanDrawing, KeepsTicksAsLongOnPaperAtEveryScale) {
    Solved solved;
    SolvedLine line = sawnLine("A", {110, 0}, {110, 250}, Side::Right);
    line.marks = {{{Edge::Bottom, 110}, false, true}};
    solved.lines = {line};
    PlanLayers half;
    half.markScale = 2;
    const auto full = marksOf<Stroke>(planOf(blankPanel(400, 250, 12), solved), Ink::EdgeTick);
    const auto small = marksOf<Stroke>(planOf(blankPanel(400, 250, 12), solved, half), Ink::EdgeTick);
    ASSERT_EQ(full.size(), 1U);
    EXPECT_LT(full[0].to.y, 0);
    EXPECT_NEAR(small[0].to.y, 2 * full[0].to.y, 1e-9);
}

TEST(PlanDrawing, KeepsIdsInsideAPatternThatEndsAtTheEdges) {
    PlanLayers layers;
    layers.idsInside = true;
    const Project project = sample("crate_end.kerfwall");
    for (const Label& label : marksOf<Label>(planOf(project, solve(project), layers), Ink::Text)) {
        EXPECT_TRUE(label.at.x > 0 && label.at.x < 400 && label.at.y > 0 && label.at.y < 250) << label.text;
    }
}

TEST(PlanDrawing, ShowsEachFindingsSignAtItsPlaceUnderItsNumber) {
    std::vector<Finding> found(3);
    found[0].severity = Severity::Stop;
    found[0].at = Point{10, 20};
    found[1].severity = Severity::Care;
    found[2].severity = Severity::Note;
    found[2].at = Point{30, 40};
    const Drawing drawing = planDrawing(blankPanel(400, 250, 12), {}, found, {});
    EXPECT_EQ(marksOf<Circle>(drawing, Ink::FindingStop).at(0), (Circle{Ink::FindingStop, {10, 20}, 0, "1"}));
    EXPECT_TRUE(marksOf<Circle>(drawing, Ink::FindingCare).empty()) << "it has no place";
    EXPECT_EQ(marksOf<Circle>(drawing, Ink::FindingNote).at(0), (Circle{Ink::FindingNote, {30, 40}, 0, "3"}));
}

// Expected from: pencil. The face lies 5 to the left of the bottom edge, that is above it; the body 20
// to the right of that face, so from 5 down to -15; 30 to 100 along.
TEST(PlanDrawing, LaysAFencesBodyBesideItsFace) {
    Project project = blankPanel(400, 250, 12);
    Fence fence;
    fence.along = Edge::Bottom;
    fence.offset = 5;
    fence.body = Side::Right;
    fence.from = 30;
    fence.to = 100;
    fence.width = 20;
    project.fences.push_back(fence);
    const auto bodies = marksOf<Area>(planOf(project, {}), Ink::FenceBody);
    ASSERT_EQ(bodies.size(), 1U);
    EXPECT_EQ(makeOutline(bodies[0].loops).bounds, (Box{{30, -15}, {100, 5}}));
}

// Expected from: pencil. 260.65 - 139.35 = 121.3; 148.15 - 101.85 = 46.3; and the lines' own distances.
TEST(PlanDrawing, DimensionsTheCrateEndsOpening) {
    const Project project = sample("crate_end.kerfwall");
    const auto texts = dimensionTexts(planOf(project, solve(project)));
    for (const char* text : {"121.3", "46.3", "139.35", "101.85"}) {
        EXPECT_EQ(std::ranges::count(texts, text), 1) << text;
    }
}

TEST(PlanDrawing, KeepsDimensionLinesOfSeveralCutoutsApart) {
    const Project project = sample("mind_these.kerfwall");
    const Drawing drawing = planOf(project, solve(project));
    std::vector<Dimension> level;
    for (const Mark& mark : drawing.marks) {
        const Dimension* size = std::get_if<Dimension>(&mark);
        if (size && size->from.y == size->to.y) level.push_back(*size);
    }
    ASSERT_GE(level.size(), 3U);
    for (std::size_t i = 0; i < level.size(); ++i) {
        for (std::size_t j = i + 1; j < level.size(); ++j) {
            const bool apart =
                std::abs(level[i].from.y + level[i].offset - level[j].from.y - level[j].offset) > 4;
            const bool clear =
                level[i].to.x <= level[j].from.x + 1e-6 || level[j].to.x <= level[i].from.x + 1e-6;
            EXPECT_TRUE(apart || clear) << level[i].text << " and " << level[j].text;
        }
    }
}

TEST(PlanDrawing, LeavesOutTheLayersThatAreOff) {
    const Project project = sample("crate_end.kerfwall");
    PlanLayers none;
    none.kerfs = none.runOut = none.edgeMarks = none.opening = none.work = false;
    none.workpiece = none.dimensions = none.findings = none.fills = false;
    const Drawing drawing = planOf(project, solve(project), none);
    for (const Ink ink :
         {Ink::KerfBand, Ink::RunOut, Ink::Template, Ink::Waste, Ink::Work, Ink::Workpiece, Ink::PanelFill}) {
        EXPECT_TRUE(marksOf<Area>(drawing, ink).empty());
    }
    EXPECT_TRUE(marksOf<Stroke>(drawing, Ink::EdgeTick).empty());
    EXPECT_TRUE(dimensionTexts(drawing).empty());
    EXPECT_EQ(marksOf<Stroke>(drawing, Ink::LayoutLine).size(), 4U) << "the lines stay";
}

// Expected from: pencil, and 100 mm = 3.937 in, to the nearest 1/64: 3 15/16 (1 in = 25.4 mm, NBS
// Circular 572 addendum).
TEST(DrawnSize, ShowsNoDecimalThatSaysNothing) {
    EXPECT_EQ(drawnSize(110, Units::Millimetres), "110");
    EXPECT_EQ(drawnSize(46.3, Units::Millimetres), "46.3");
    EXPECT_EQ(drawnSize(101.85, Units::Millimetres), "101.85");
    EXPECT_EQ(drawnSize(121.29999999999998, Units::Millimetres), "121.3");
    EXPECT_EQ(drawnSize(0, Units::Millimetres), "0");
    EXPECT_EQ(drawnSize(100, Units::Inches), "3 15/16");
}

}  // namespace
}  // namespace kerfwall

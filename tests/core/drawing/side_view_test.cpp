// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/side_view.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/drawing/drawn_panel.h"

namespace kerfwall {
namespace {

Drawing levelView(const Project& project, const Solved& solved, double height, double exaggeration = 1) {
    return sideView(project, solved, {}, {CutDirection::Level, height}, {.exaggeration = exaggeration});
}

Drawing uprightView(const Project& project, const Solved& solved, double x, double exaggeration = 1) {
    return sideView(project, solved, {}, {CutDirection::Upright, x}, {.exaggeration = exaggeration});
}

std::vector<std::string> words(const Drawing& drawing) {
    std::vector<std::string> texts;
    for (const Label& label : marksOf<Label>(drawing, Ink::Text)) {
        if (label.id == "hole") texts.push_back(label.text);
    }
    return texts;
}

// Expected from: pencil. 12 thick, kerf 6: web 6; at 2.5 times the height the back lies 30 down.
TEST(SideView, DimensionsKerfWebAndOpening) {
    const Drawing drawing = levelView(blankPanel(400, 250, 12), windowInPanel(), 118, 2.5);
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
    const Drawing drawing = levelView(project, {}, 118);
    const auto texts = words(drawing);
    ASSERT_EQ(texts.size(), 2U);
    EXPECT_NE(texts[0].find("3 of wood above and below"), std::string::npos) << texts[0];
    EXPECT_NE(texts[1].find("1 of wood above, 5 below"), std::string::npos) << texts[1];
    EXPECT_EQ(marksOf<Stroke>(drawing, Ink::Hidden).size(), 6U) << "three hidden lines a hole";
}

// Expected from: the rule that words end not far past the panel. At a scale of 1:5 some 60 letters are wider than 400 mm.
TEST(SideView, BreaksWordsThatAPanelIsTooNarrowFor) {
    Project project = blankPanel(400, 250, 18);
    project.units = Units::Inches;
    project.clampHoles.push_back({"h", Edge::Left, 100, 12, 60, {}, {}});
    const auto at = [&](double markScale) {
        return words(sideView(project, {}, {}, {CutDirection::Level, 118}, {.markScale = markScale}));
    };
    EXPECT_EQ(at(1).size(), 1U);
    const auto broken = at(5);
    ASSERT_EQ(broken.size(), 2U);
    EXPECT_TRUE(broken[0].ends_with(" deep")) << broken[0];
    EXPECT_TRUE(broken[1].ends_with("of wood above and below")) << broken[1];
}

// Expected from: pencil. 12 wide about 4 in 18 stands 2 above the face and leaves 18 - 10 = 8 below.
TEST(SideView, SaysOfHolesOfOneDrillAtOneHeightHowDeepTheyAre) {
    Project project = blankPanel(400, 250, 18);
    project.clampHoles.push_back({"h", Edge::Left, 100, 12, 60, 4, {}});
    project.clampHoles.push_back({"g", Edge::Top, 150, 12, 45, 4, {}});
    EXPECT_EQ(words(levelView(project, {}, 118)),
              (std::vector<std::string>{"clamp holes \u2300 12, 45 to 60 deep, no wood above, 8 below"}));
    EXPECT_EQ(words(uprightView(project, {}, 118)),
              (std::vector<std::string>{"clamp holes \u2300 12", "45 to 60 deep", "no wood above, 8 below"}));
}

// Expected from: pencil. A hole 60 deep from the bottom is cut at 40 and lies hidden behind at 80.
TEST(SideView, CutsAHoleFromTheBottomEdgeOnlyWithinItsDepth) {
    Project project = blankPanel(400, 250, 18);
    project.clampHoles.push_back({"h", Edge::Bottom, 100, 10, 60, {}, {}});
    EXPECT_EQ(marksOf<Area>(levelView(project, {}, 40), Ink::ClampHole).size(), 1U);
    EXPECT_EQ(marksOf<Area>(levelView(project, {}, 80), Ink::ClampHole).size(), 0U);
    EXPECT_EQ(marksOf<Area>(levelView(project, {}, 80), Ink::Hidden).size(), 1U);
}

// Expected from: pencil. The same panel from the right edge, cut at x = 200: the window opens from y 90 to 146, 56;
// at 2.5 times the height the back lies 30 to the right of the layout face.
TEST(SideView, StandsUprightOnThePlansHeights) {
    const Drawing drawing = uprightView(blankPanel(400, 250, 12), windowInPanel(), 200, 2.5);
    const auto wood = marksOf<Area>(drawing, Ink::Wood);
    ASSERT_EQ(wood.size(), 2U);
    double lowest = 250, highest = 0, farthest = 0;
    for (const OutlinePiece& piece : wood[0].loops[0]) {
        lowest = std::min(lowest, piece.from.y);
        highest = std::max(highest, piece.from.y);
        farthest = std::max(farthest, piece.from.x);
    }
    EXPECT_DOUBLE_EQ(lowest, 0);
    EXPECT_DOUBLE_EQ(highest, 90);
    EXPECT_DOUBLE_EQ(farthest, 30);
    EXPECT_EQ(dimensionTexts(drawing), (std::vector<std::string>{"56"})) << "no kerf is cut here, so none is dimensioned";
}

// Expected from: pencil. A line across the panel at y = 60 with its kerf above it: 60 to 63.2, kerf 6, web 6.
TEST(SideView, DimensionsKerfAndWebUpright) {
    Solved solved;
    solved.kerfDepth = 6;
    solved.lines = {sawnLine("A", {0, 60}, {400, 60}, Side::Left)};
    const Drawing drawing = uprightView(blankPanel(400, 250, 12), solved, 200);
    EXPECT_EQ(dimensionTexts(drawing), (std::vector<std::string>{"kerf 6", "web 6"}));
    const auto bands = marksOf<Area>(drawing, Ink::KerfBand);
    ASSERT_EQ(bands.size(), 1U);
    const Outline band = makeOutline(bands[0].loops);
    EXPECT_NEAR(band.bounds.low.y, 60, 1e-9);
    EXPECT_NEAR(band.bounds.high.y, 63.2, 1e-9);
    EXPECT_EQ(band.bounds.low.x, 0);
    EXPECT_EQ(band.bounds.high.x, 6);
}

// Expected from: pencil. A hole of 5 in 12 with its axis at 6: 3.5 above, 3.5 below, both drawn where 60 deep leaves
// wood past the point, and the axis at the mouth.
TEST(SideView, DimensionsTheHeightsOfALyingHole) {
    Project project = blankPanel(400, 250, 12);
    project.clampHoles.push_back({"h", Edge::Left, 100, 5, 60, {}, {}});
    const auto texts = dimensionTexts(levelView(project, {}, 118));
    EXPECT_EQ(std::ranges::count(texts, "3.5"), 2);
    const auto labels = marksOf<Label>(levelView(project, {}, 118), Ink::Text);
    EXPECT_EQ(std::ranges::count(labels, "axis 6", &Label::text), 1);
    project.clampHoles[0].edge = Edge::Right;
    EXPECT_EQ(std::ranges::count(dimensionTexts(levelView(project, {}, 118)), "axis 6"), 1);
    project.clampHoles[0].edge = Edge::Bottom;
    EXPECT_EQ(std::ranges::count(dimensionTexts(uprightView(project, {}, 118)), "axis 6"), 1);
}

// Expected from: pencil. The left edge runs down: at 132 from the top of 250 the axis lies at y = 118, on the cut.
TEST(SideView, CutsALyingHoleOnTheCuttingLineAndHidesItBeside) {
    Project project = blankPanel(400, 250, 12);
    project.clampHoles.push_back({"h", Edge::Left, 132, 5, 60, {}, {}});
    const auto cut = marksOf<Area>(levelView(project, {}, 118), Ink::ClampHole);
    ASSERT_EQ(cut.size(), 1U);
    const Outline bore = makeOutline(cut[0].loops);
    EXPECT_NEAR(bore.area, 5 * 60, 1e-9);
    EXPECT_TRUE(marksOf<Area>(levelView(project, {}, 121), Ink::ClampHole).empty());
    EXPECT_EQ(marksOf<Stroke>(levelView(project, {}, 121), Ink::Hidden).size(), 3U);
}

Finding aboutHole(const char* code, Severity severity, Point at) {
    Finding finding;
    finding.code = code;
    finding.severity = severity;
    finding.hole = 0;
    finding.at = at;
    return finding;
}

// Expected from: pencil. 150 deep from the left edge at y = 118 it stands 40 past the window's wall at 110.
TEST(SideView, OutlinesWhereAHoleComesThroughAndSignsIt) {
    Project project = blankPanel(400, 250, 12);
    project.clampHoles.push_back({"h", Edge::Left, 132, 5, 150, {}, {}});
    const std::vector<Finding> found{aboutHole("hole-kerf", Severity::Care, {110, 118}),
                                     aboutHole("hole-through", Severity::Stop, {150, 118})};
    const CuttingLine cut{CutDirection::Level, 118};
    const Drawing drawing = sideView(project, windowInPanel(), found, cut, {});
    const auto outlined = marksOf<Area>(drawing, Ink::FindingStop);
    ASSERT_EQ(outlined.size(), 1U);
    const Box box = makeOutline(outlined[0].loops).bounds;
    EXPECT_NEAR(box.low.x, 110, 1e-9);
    EXPECT_NEAR(box.high.x, 150, 1e-9);
    EXPECT_NEAR(box.high.y - box.low.y, 5, 1e-9);
    const auto signs = marksOf<Circle>(drawing, Ink::FindingStop);
    ASSERT_EQ(signs.size(), 1U);
    EXPECT_EQ(signs[0].id, "2") << "its number in the column of findings";
    EXPECT_EQ(signs[0].centre.x, 150);
    EXPECT_EQ(marksOf<Circle>(drawing, Ink::FindingCare).size(), 1U);
    const Drawing without = sideView(project, windowInPanel(), found, cut, {.findings = false});
    EXPECT_TRUE(marksOf<Area>(without, Ink::FindingStop).empty());
    EXPECT_TRUE(marksOf<Circle>(without, Ink::FindingStop).empty());
}

// Expected from: pencil. 11 to the first line, and three lines of 5 for each of two different holes: 41.
TEST(SideView, TellsHowFarWordsReachBelowAnUprightView) {
    Project project = blankPanel(400, 250, 18);
    EXPECT_EQ(reachOfWords(project), 0);
    project.clampHoles.push_back({"h", Edge::Bottom, 100, 10, 60, {}, {}});
    project.clampHoles.push_back({"g", Edge::Left, 100, 10, 45, {}, {}});
    project.clampHoles.push_back({"f", Edge::Left, 150, 8, 45, {}, {}});
    EXPECT_EQ(reachOfWords(project), 41);
}

TEST(SideView, WordsBeginWhereTheViewBegins) {
    Project project = blankPanel(400, 250, 18);
    project.clampHoles.push_back({"h", Edge::Bottom, 100, 10, 60, {}, {}});
    const Drawing drawing = sideView(project, {}, {}, {CutDirection::Level, 40}, {.wordsFrom = 130});
    for (const Label& label : marksOf<Label>(drawing, Ink::Text)) {
        if (label.id == "hole") { EXPECT_EQ(label.at.x, 130); }
    }
}

TEST(SideView, LeavesOutTheLayersThatAreHidden) {
    Solved solved = windowInPanel();
    const CuttingLine cut{CutDirection::Level, 50};
    const Project panel = blankPanel(400, 250, 12);
    EXPECT_EQ(marksOf<Area>(sideView(panel, solved, {}, cut, {}), Ink::KerfBand).size(), 2U);
    EXPECT_TRUE(marksOf<Area>(sideView(panel, solved, {}, cut, {.kerfs = false}), Ink::KerfBand).empty());
    EXPECT_FALSE(dimensionTexts(sideView(panel, solved, {}, cut, {})).empty());
    EXPECT_TRUE(dimensionTexts(sideView(panel, solved, {}, cut, {.dimensions = false})).empty());
}

}  // namespace
}  // namespace kerfwall

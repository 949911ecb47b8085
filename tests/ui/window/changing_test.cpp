// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/solve.h"
#include "tests/ui/window/hand_on_sheet.h"

namespace kerfwall {
namespace {

using ChangingByHand = HandOnSheet;

TEST_F(ChangingByHand, DraggingALineIsOneStepThatUndoTakesBack) {
    layRectangle();
    const Project before = project();
    key(Qt::Key_1);
    drag({200, 90}, {200, 80});
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 80}));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Move line A"));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(project(), before);
    EXPECT_EQ(m_window.session().redoName(), QStringLiteral("Move line A"));
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 80}));
}

TEST_F(ChangingByHand, EscapePutsADraggedLineBack) {
    layRectangle();
    const Project before = project();
    key(Qt::Key_1);
    press({200, 90});
    moveTo({200, 70});
    EXPECT_NE(project(), before);
    key(Qt::Key_Escape);
    release({200, 70});
    EXPECT_EQ(project(), before);
}

TEST_F(ChangingByHand, ArrowsNudgeTheLineThatTabPicked) {
    layRectangle();
    key(Qt::Key_1);
    m_window.selection().clear();
    key(Qt::Key_Tab);
    key(Qt::Key_Tab);
    EXPECT_EQ(m_window.selection().line(), "B");
    key(Qt::Key_Up);
    EXPECT_EQ(placeOf("B"), Place(ByOffset{Edge::Bottom, 147}));
    key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(placeOf("B"), Place(ByOffset{Edge::Bottom, 137}));
}

TEST_F(ChangingByHand, APickedLineTakesATypedDistance) {
    layRectangle();
    key(Qt::Key_1);
    click({200, 146});
    type("entry0", "150");
    EXPECT_EQ(placeOf("B"), Place(ByOffset{Edge::Bottom, 150}));
}

// Expected from: pencil. Without D the waste runs on to the right edge: from x 110 to 400, y 90 to 146, 16240.
TEST_F(ChangingByHand, TakingALineAwayOpensTheCutout) {
    layRectangle();
    key(Qt::Key_3);
    click({200, 118});
    key(Qt::Key_1);
    click({290, 50});
    key(Qt::Key_Delete);
    EXPECT_EQ(project().lines.size(), 3U);
    ASSERT_EQ(m_window.session().solved().cutouts.size(), 1U);
    EXPECT_TRUE(m_window.session().solved().cutouts.front().open);
    EXPECT_NEAR(m_window.session().solved().cutouts.front().drawnArea, 16240, 1e-6);
}

TEST_F(ChangingByHand, ASecondClickUnmarksTheWaste) {
    layRectangle();
    key(Qt::Key_3);
    click({200, 118});
    EXPECT_EQ(project().cutouts.size(), 1U);
    click({150, 100});
    EXPECT_TRUE(project().cutouts.empty());
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(project().cutouts.size(), 1U);
}

TEST_F(ChangingByHand, ACutoutThatALineSqueezesOutIsToldAndUndoBringsItBack) {
    layRectangle();
    key(Qt::Key_3);
    click({200, 118});
    key(Qt::Key_1);
    drag({200, 90}, {200, 170});
    EXPECT_TRUE(project().cutouts.empty());
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("cutout-1")));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(project().cutouts.size(), 1U);
}

TEST_F(ChangingByHand, ShiftAddsAFaceToThePickedCutout) {
    layRectangle();
    key(Qt::Key_3);
    click({200, 118});
    click({350, 200}, Qt::ShiftModifier);
    ASSERT_EQ(project().cutouts.size(), 1U);
    EXPECT_EQ(project().cutouts.front().seeds.size(), 2U);
}

// Expected from: the rule that a line laid across a cutout keeps both halves marked.
TEST_F(ChangingByHand, ALineLaidAcrossTheWasteKeepsBothHalves) {
    layRectangle();
    key(Qt::Key_3);
    click({200, 118});
    key(Qt::Key_2);
    drag({180, 0}, {180, 250});
    ASSERT_EQ(project().cutouts.size(), 1U);
    EXPECT_EQ(project().cutouts.front().seeds.size(), 2U);
    for (const Point seed : project().cutouts.front().seeds) EXPECT_TRUE(faceAt(project(), seed));
}

// Expected from: the stock bench. Its smallest bore over the 12.7 bit is 20, so the corner first gets radius 10.
TEST_F(ChangingByHand, ACornerIsBoredByAClickAndATypedRadius) {
    layRectangle();
    key(Qt::Key_3);
    click({200, 118});
    ASSERT_EQ(project().cutouts.size(), 1U);
    key(Qt::Key_4);
    click({111, 91});
    ASSERT_EQ(project().cutouts.front().corners.size(), 1U);
    EXPECT_EQ(project().cutouts.front().corners.front().radius, 10);
    type("entry0", "15");
    ASSERT_EQ(project().cutouts.front().corners.size(), 1U);
    EXPECT_EQ(project().cutouts.front().corners.front().radius, 15);
    click({111, 91});
    type("entry0", "0");
    EXPECT_TRUE(project().cutouts.front().corners.empty());
}

// Expected from: pencil. The left edge runs down from the top: 100 up is 150 along. The stock bench has no clamp; a
// panel of 12 with 3.5 of wood above and below (common practice, no source) bears a hole of 5.
TEST_F(ChangingByHand, AClampHoleIsPlacedDraggedAndTyped) {
    key(Qt::Key_5);
    press({1, 120});
    moveTo({1, 110});
    moveTo({1, 100});
    release({1, 100});
    ASSERT_EQ(project().clampHoles.size(), 1U);
    EXPECT_EQ(project().clampHoles.front().edge, Edge::Left);
    EXPECT_EQ(project().clampHoles.front().at, 150);
    EXPECT_EQ(project().clampHoles.front().diameter, 5);
    type("entry2", "60");
    ASSERT_EQ(project().clampHoles.size(), 1U);
    EXPECT_EQ(project().clampHoles.front().depth, 60);
    key(Qt::Key_1);
    drag({1, 100}, {1, 90});
    EXPECT_EQ(project().clampHoles.front().at, 160);
    key(Qt::Key_Delete);
    EXPECT_TRUE(project().clampHoles.empty());
}

TEST_F(ChangingByHand, TheCutIsDraggedTypedAndNudged) {
    EXPECT_EQ(m_window.session().cut(CutDirection::Level).at, 125);
    m_window.chooseTool(MainWindow::CutAt);
    drag({200, 125}, {200, 60});
    EXPECT_EQ(m_window.session().cut(CutDirection::Level).at, 60);
    key(Qt::Key_Up);
    EXPECT_EQ(m_window.session().cut(CutDirection::Level).at, 61);
    type("entry0", "80");
    EXPECT_EQ(m_window.session().cut(CutDirection::Level).at, 80);
    EXPECT_TRUE(m_window.session().isSaved());
}

TEST_F(ChangingByHand, PanelKerfDepthAndToolsAreFilledInOnTheSheet) {
    key(Qt::Key_F6);
    type("panelWidth", "500");
    type("kerfDepth", "5");
    EXPECT_EQ(project().panel.width, 500);
    EXPECT_EQ(project().kerfDepth, std::optional(5.0));
    type("panelWidth", "5");
    EXPECT_EQ(project().panel.width, 500);
    key(Qt::Key_F7);
    type("trimDiameter", "19");
    EXPECT_EQ(trimBitOf(project()).diameter, 19);
    EXPECT_EQ(m_window.session().solved().bitRadius, 9.5);
}

TEST_F(ChangingByHand, PanelUseBenchWorkpieceAndBoreAreUndoneAndDoneAgain) {
    layRectangle();
    m_window.chooseTool(MainWindow::WasteAt);
    click({200, 118});
    m_window.chooseTool(MainWindow::BoreAt);
    std::vector<Project> states{project()};
    const auto changed = [&] {
        EXPECT_NE(project(), states.back());
        states.push_back(project());
    };
    click({111, 91});
    changed();
    key(Qt::Key_F6);
    type("panelWidth", "500");
    changed();
    key(Qt::Key_F7);
    type("trimDiameter", "12");
    changed();
    key(Qt::Key_F7, Qt::ShiftModifier);
    type("cornerDrill", "7");
    changed();
    key(Qt::Key_F8, Qt::ShiftModifier);
    type("workWidth", "160");
    changed();
    for (std::size_t i = states.size() - 1; i-- > 0;) {
        key(Qt::Key_Z, Qt::ControlModifier);
        EXPECT_EQ(project(), states[i]) << i;
    }
    for (std::size_t i = 1; i < states.size(); ++i) {
        key(Qt::Key_Y, Qt::ControlModifier);
        EXPECT_EQ(project(), states[i]) << i;
    }
}

}  // namespace
}  // namespace kerfwall

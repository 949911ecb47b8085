// SPDX-License-Identifier: GPL-3.0-or-later
#include <QComboBox>

#include "tests/ui/window/hand_on_sheet.h"
#include "ui/tool.h"

namespace kerfwall {
namespace {

/// Clamp holes placed, slid, drilled and typed on a panel of 400 x 250 x 12: the drill is 5, 3.5 above and below.
class ClampingByHand : public HandOnSheet {
protected:
    void SetUp() override {
        HandOnSheet::SetUp();
        m_window.chooseTool(MainWindow::ClampAt);
    }
    InHand inHand() { return m_window.plan().tool()->inHand(); }
    const ClampHole& hole(std::size_t index = 0) { return project().clampHoles.at(index); }
    void markWindow() {
        layRectangle();
        m_window.chooseTool(MainWindow::WasteAt);
        click({200, 118});
        m_window.chooseTool(MainWindow::ClampAt);
    }
};

// Expected from: pencil. 130 along the left edge from the top is y 120; 50 deep it ends 60 from the wall at 110.
TEST_F(ClampingByHand, TheHoverSaysWhatAClickWouldDrillAndWhatWoodItLeaves) {
    markWindow();
    moveTo({1, 120});
    const QString note = inHand().note;
    EXPECT_TRUE(note.contains(QStringLiteral("5 across, 50 deep"))) << note.toStdString();
    EXPECT_TRUE(note.contains(QStringLiteral("wood: 3.5 above, 3.5 below"))) << note.toStdString();
    EXPECT_TRUE(note.contains(QStringLiteral("60 ahead to cutout-1"))) << note.toStdString();
    EXPECT_EQ(inHand().wished.size(), 1U);
    EXPECT_TRUE(sentence().contains(QStringLiteral("Click to place a clamp hole of 5, 50 deep, 130 on the left edge from the top"))) << sentence().toStdString();
    EXPECT_TRUE(project().clampHoles.empty());
}

TEST_F(ClampingByHand, AClickPlacesAndASecondClickPicksTheSameHole) {
    click({1, 120});
    ASSERT_EQ(project().clampHoles.size(), 1U);
    EXPECT_EQ(hole().at, 130);
    m_window.selection().clear();
    click({20, 120});
    EXPECT_EQ(project().clampHoles.size(), 1U);
    EXPECT_EQ(m_window.selection().hole(), std::optional<std::size_t>(0));
}

TEST_F(ClampingByHand, ADragFromTheEdgeDrillsAsDeepAsItGoes) {
    drag({1, 120}, {80, 120});
    ASSERT_EQ(project().clampHoles.size(), 1U);
    EXPECT_EQ(hole().depth, 80);
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Place a clamp hole"));
}

TEST_F(ClampingByHand, TheHoleIsDraggedAlongTheEdgeAndRoundToAnother) {
    click({1, 120});
    drag({20, 120}, {20, 90});
    EXPECT_EQ(hole().at, 160);
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Move the clamp hole"));
    drag({20, 90}, {300, 3});
    EXPECT_EQ(hole().edge, Edge::Bottom);
    EXPECT_EQ(hole().at, 300);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(hole().edge, Edge::Left);
}

// Expected from: pencil. From 50 to 96 deep at y 120 the point comes 14 from the wall at 110.
TEST_F(ClampingByHand, ThePointIsDraggedForTheDepthWithTheWoodLeftShown) {
    markWindow();
    click({1, 120});
    press({50, 120});
    moveTo({70, 120});
    moveTo({96, 120});
    EXPECT_TRUE(inHand().note.contains(QStringLiteral("14 ahead to cutout-1"))) << inHand().note.toStdString();
    EXPECT_TRUE(sentence().contains(QStringLiteral("Let go to drill the clamp hole 96 deep")));
    release({96, 120});
    EXPECT_EQ(hole().depth, 96);
    EXPECT_EQ(hole().at, 130);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(hole().depth, 50);
}

TEST_F(ClampingByHand, EscapePutsADraggedHoleBack) {
    click({1, 120});
    const Project before = project();
    press({20, 120});
    moveTo({20, 110});
    moveTo({20, 60});
    EXPECT_NE(project(), before);
    key(Qt::Key_Escape);
    release({20, 60});
    EXPECT_EQ(project(), before);
    press({1, 60});
    moveTo({1, 50});
    key(Qt::Key_Escape);
    release({1, 50});
    EXPECT_EQ(project(), before);
}

TEST_F(ClampingByHand, AllFourNumbersAreTyped) {
    click({1, 120});
    type("entry0", "140");
    type("entry1", "6");
    type("entry2", "45");
    type("entry3", "6.5");
    EXPECT_EQ(hole().at, 140);
    EXPECT_EQ(hole().diameter, 6);
    EXPECT_EQ(hole().depth, 45);
    EXPECT_EQ(hole().height, std::optional(6.5));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Set the clamp hole"));
}

// Expected from: the rule that a hole is narrower than its panel. The 6 typed on the way to 60 does not stay.
TEST_F(ClampingByHand, ANumberOutOfRangeIsToldAndSetsNothing) {
    click({1, 120});
    auto* field = m_window.findChild<QLineEdit*>(QStringLiteral("entry1"));
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, QStringLiteral("60"));
    EXPECT_TRUE(sentence().contains(QStringLiteral("narrower than the panel's 12.0 mm"))) << sentence().toStdString();
    EXPECT_EQ(hole().diameter, 5);
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(hole().diameter, 5);
}

// Expected from: the arrow keys' pointer, from the middle (200, 125) by tens and ones down to the bottom edge.
TEST_F(ClampingByHand, TheKeyboardAlonePlacesSlidesAndDrills) {
    for (int i = 0; i < 12; ++i) key(Qt::Key_Down, Qt::ShiftModifier);
    key(Qt::Key_Space);
    ASSERT_EQ(project().clampHoles.size(), 1U);
    EXPECT_EQ(hole().edge, Edge::Bottom);
    EXPECT_EQ(hole().at, 200);
    key(Qt::Key_Tab);  // from the hole just placed on to the next widget
    m_window.plan().setFocus();
    key(Qt::Key_Tab);
    EXPECT_EQ(m_window.selection().hole(), std::optional<std::size_t>(0));
    key(Qt::Key_Left);
    EXPECT_EQ(hole().at, 199);
    key(Qt::Key_Up);
    EXPECT_EQ(hole().depth, 51);
    key(Qt::Key_Minus);
    EXPECT_EQ(hole().depth, 50);
    EXPECT_TRUE(inHand().note.contains(QStringLiteral("50 deep")));
    key(Qt::Key_Delete);
    EXPECT_TRUE(project().clampHoles.empty());
}

TEST_F(ClampingByHand, TheHolesOfTheBenchsClampsAreOffered) {
    Project next = project();
    next.bench = stockBench();
    next.bench->clamps = {{6, 40, 0, 0, {}}, {8, 62, 0, 0, {}}};
    m_window.session().changeWhole(QStringLiteral("Add clamps"), next);
    auto* kinds = m_window.findChild<QComboBox*>(QStringLiteral("choice0"));
    ASSERT_EQ(kinds->count(), 3);
    EXPECT_EQ(kinds->itemText(1), QStringLiteral("clamp 2: 8 across, 62 deep"));
    kinds->setCurrentIndex(1);
    Q_EMIT kinds->activated(1);
    click({1, 120});
    EXPECT_EQ(hole().diameter, 8);
    EXPECT_EQ(hole().depth, 62);
}

}  // namespace
}  // namespace kerfwall

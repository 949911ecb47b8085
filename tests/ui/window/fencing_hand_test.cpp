// SPDX-License-Identifier: GPL-3.0-or-later
#include <QComboBox>

#include "tests/ui/window/hand_on_sheet.h"
#include "ui/card_row.h"
#include "ui/tool.h"

namespace kerfwall {
namespace {

/// Fences and stops fixed, moved and typed on a panel of 400 x 250 with a window from (110, 90) to (290, 146).
class FencingByHand : public HandOnSheet {
protected:
    void SetUp() override {
        HandOnSheet::SetUp();
        layWindow();
        m_window.chooseTool(MainWindow::FenceAt);
        m_window.selection().clear();
    }
    InHand inHand() { return m_window.plan().tool()->inHand(); }
    const Fence& fence(std::size_t index = 0) { return project().fences.at(index); }
    void choose(const char* name, int option) {
        auto* box = m_window.findChild<QComboBox*>(QString::fromLatin1(name));
        ASSERT_TRUE(box) << name;
        box->setCurrentIndex(option);
        Q_EMIT box->activated(option);
    }
    void placeAlongBottom() {
        drag({60, 1}, {60, 30});
        ASSERT_EQ(project().fences.size(), 1U);
    }
};

// Expected from: pencil. A body 20 wide between the bottom edge and its face; the window's lower wall at 90 is 70 off.
TEST_F(FencingByHand, TheHoverSaysWhatAClickWouldFixAndHowFarItIsFromTheCut) {
    moveTo({60, 3});
    EXPECT_TRUE(sentence().contains(QStringLiteral("Click to fix a fence along the bottom edge, 20 wide, its face 20 from it"))) << sentence().toStdString();
    EXPECT_TRUE(inHand().note.contains(QStringLiteral("70 to the cut in the work"))) << inHand().note.toStdString();
    EXPECT_EQ(inHand().wished.size(), 1U);
    EXPECT_TRUE(project().fences.empty());
}

TEST_F(FencingByHand, AClickOnAnEdgeFixesAFenceBesideIt) {
    click({60, 1});
    ASSERT_EQ(project().fences.size(), 1U);
    EXPECT_EQ(fence().along, Base(Edge::Bottom));
    EXPECT_EQ(fence().offset, 20);
    EXPECT_EQ(fence().body, Side::Right);
    EXPECT_EQ(fence().from, 0);
    EXPECT_EQ(fence().to, 400);
    EXPECT_EQ(m_window.selection().fence(), std::optional<std::size_t>(0));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Fix a fence"));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(project().fences.empty());
}

// Expected from: pencil. 50 below line A, which runs to the right: 50 to its right, minus.
TEST_F(FencingByHand, ADragFromALineSetsItsFace) {
    press({60, 90});
    moveTo({60, 70});
    moveTo({60, 40});
    EXPECT_TRUE(sentence().contains(QStringLiteral("its face -50 from line A"))) << sentence().toStdString();
    release({60, 40});
    ASSERT_EQ(project().fences.size(), 1U);
    EXPECT_EQ(fence().along, Base(LineId("A")));
    EXPECT_EQ(fence().offset, -50);
    EXPECT_EQ(fence().body, Side::Right);
}

TEST_F(FencingByHand, EscapeLeavesAFenceInHand) {
    press({60, 1});
    moveTo({60, 20});
    moveTo({60, 40});
    EXPECT_EQ(project().fences.size(), 1U);
    key(Qt::Key_Escape);
    release({60, 40});
    EXPECT_TRUE(project().fences.empty());
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Mark waste"));
}

TEST_F(FencingByHand, DigitsWhileDraggingAreItsDistance) {
    press({60, 1});
    moveTo({60, 20});
    moveTo({60, 40});
    key(Qt::Key_3);
    auto* field = m_window.findChild<QLineEdit*>(QStringLiteral("entry0"));
    QTest::keyClicks(field, QStringLiteral("2.5"));
    QTest::keyClick(field, Qt::Key_Return);
    ASSERT_EQ(project().fences.size(), 1U);
    EXPECT_EQ(fence().offset, 32.5);
    release({60, 40});
    EXPECT_EQ(project().fences.size(), 1U);
}

TEST_F(FencingByHand, DraggedOffThePanelItIsToldAndNothingIsFixed) {
    drag({60, 1}, {60, -30});
    EXPECT_TRUE(project().fences.empty());
    EXPECT_TRUE(sentence().contains(QStringLiteral("off the panel"))) << sentence().toStdString();
}

TEST_F(FencingByHand, AFenceIsFixedByTypingAlone) {
    choose("choice0", 1);  // the left edge: square to the reference edge
    type("entry1", "34.5");
    ASSERT_EQ(project().fences.size(), 1U);
    EXPECT_EQ(fence().along, Base(Edge::Left));
    EXPECT_EQ(fence().offset, 34.5);
    EXPECT_EQ(fence().to, 250);
}

TEST_F(FencingByHand, ItsPlaceIsTyped) {
    placeAlongBottom();
    type("entry0", "25.4");
    type("entry1", "40");
    type("entry2", "200");
    EXPECT_EQ(fence().offset, 25.4);
    EXPECT_EQ(fence().from, 40);
    EXPECT_EQ(fence().to, 200);
    type("entry2", "40");
    EXPECT_EQ(fence().to, 200);
}

TEST_F(FencingByHand, ItsSizeSideAndFaceAreFilledInOnTheCard) {
    placeAlongBottom();
    type("fenceWidth", "12");
    type("fenceHeight", "9");
    type("fenceGroove", "3");
    choose("fenceBody", 0);
    choose("fenceFace", 1);
    choose("fenceKind", 1);
    EXPECT_EQ(fence().width, 12);
    EXPECT_EQ(fence().height, 9);
    EXPECT_EQ(fence().groove, 3);
    EXPECT_EQ(fence().body, Side::Left);
    EXPECT_EQ(fence().face, Face::Back);
    EXPECT_EQ(fence().kind, FenceKind::Stop);
    // A groove of 3 in the back, under kerfs of 6, leaves 3 of 12; and the layout face goes to the work.
    const std::vector<Finding>& minded = m_window.session().findings();
    ASSERT_EQ(minded.size(), 2U);
    EXPECT_EQ(minded[0].code, "web-thin");
    EXPECT_EQ(minded[1].code, "fence-side");
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Set the fence"));
}

TEST_F(FencingByHand, PickedByPickItTakesNumbersAndItsKindAsWell) {
    placeAlongBottom();
    m_window.selection().clear();
    m_window.chooseTool(MainWindow::PickAt);
    click({350, 20});
    ASSERT_EQ(m_window.selection().fence(), std::optional<std::size_t>(0));
    type("entry0", "26");
    type("entry2", "222");
    choose("choice3", 1);
    EXPECT_EQ(fence().offset, 26);
    EXPECT_EQ(fence().to, 222);
    EXPECT_EQ(fence().kind, FenceKind::Stop);
    type("entry1", "222");
    EXPECT_EQ(fence().from, 0);
}

TEST_F(FencingByHand, TheFormGoesWithTheFence) {
    placeAlongBottom();
    auto* width = m_window.findChild<QLineEdit*>(QStringLiteral("fenceWidth"));
    EXPECT_TRUE(width->isVisible());
    m_window.selection().clear();
    EXPECT_FALSE(width->isVisible());
}

// Expected from: pencil. Its face from 30 up by 15; its end from 400 back by 120.
TEST_F(FencingByHand, ItsFaceAndEndsAreDragged) {
    placeAlongBottom();
    drag({60, 25}, {60, 40});
    EXPECT_EQ(fence().offset, 45);
    EXPECT_EQ(fence().from, 0);
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Move the fence"));
    drag({400, 40}, {280, 40});
    EXPECT_EQ(fence().to, 280);
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Lengthen or shorten the fence"));
    press({60, 40});
    moveTo({60, 60});
    moveTo({60, 80});
    EXPECT_NE(fence().offset, 45);
    key(Qt::Key_Escape);
    release({60, 80});
    EXPECT_EQ(fence().offset, 45);
}

TEST_F(FencingByHand, TheKeyboardAloneFixesMovesAndTakesAway) {
    for (int i = 0; i < 12; ++i) key(Qt::Key_Down, Qt::ShiftModifier);
    key(Qt::Key_Space);
    ASSERT_EQ(project().fences.size(), 1U);
    EXPECT_EQ(fence().offset, 20);
    key(Qt::Key_Escape);
    key(Qt::Key_Tab);
    EXPECT_EQ(m_window.selection().fence(), std::optional<std::size_t>(0));
    key(Qt::Key_Up);
    EXPECT_EQ(fence().offset, 21);
    key(Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_EQ(fence().from, 10);
    EXPECT_EQ(fence().to, 410);
    key(Qt::Key_Minus);
    EXPECT_EQ(fence().to, 409);
    key(Qt::Key_Delete);
    EXPECT_TRUE(project().fences.empty());
}

TEST_F(FencingByHand, AFindingAboutAFencePicksIt) {
    placeAlongBottom();
    Project next = project();
    next.fences.front().face = Face::Back;
    m_window.session().change(QStringLiteral("Set the fence"), next);
    m_window.selection().clear();
    QTest::qWait(20);
    for (CardRow* row : m_window.findChildren<CardRow*>()) {
        if (row->isVisible() && row->accessibleName().contains(QStringLiteral("fence 1"))) QTest::mouseClick(row, Qt::LeftButton);
    }
    EXPECT_EQ(m_window.selection().fence(), std::optional<std::size_t>(0));
}

// Expected from: pencil. A stop is 40 long round the pointer at 130 along the bottom edge.
TEST_F(FencingByHand, AStopIsFixedByAClick) {
    choose("choice2", 1);
    moveTo({130, 3});
    EXPECT_TRUE(sentence().contains(QStringLiteral("fix a stop along the bottom edge"))) << sentence().toStdString();
    click({130, 1});
    ASSERT_EQ(project().fences.size(), 1U);
    EXPECT_EQ(fence().kind, FenceKind::Stop);
    EXPECT_EQ(fence().from, 110);
    EXPECT_EQ(fence().to, 150);
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Fix a stop"));
}

TEST_F(FencingByHand, AStopIsDraggedToItsDistanceAndSlidAlong) {
    choose("choice2", 1);
    drag({130, 1}, {130, 35});
    ASSERT_EQ(project().fences.size(), 1U);
    EXPECT_EQ(fence().offset, 35);
    drag({130, 25}, {160, 30});
    EXPECT_EQ(fence().from, 140);
    EXPECT_EQ(fence().to, 180);
    EXPECT_EQ(fence().offset, 40);
}

// Expected from: pencil. In the middle of the left edge, which runs down from 250: 105 to 145 along it.
TEST_F(FencingByHand, AStopIsFixedByTypingAlone) {
    choose("choice0", 1);
    choose("choice2", 1);
    type("entry1", "30");
    ASSERT_EQ(project().fences.size(), 1U);
    EXPECT_EQ(fence().kind, FenceKind::Stop);
    EXPECT_EQ(fence().from, 105);
    EXPECT_EQ(fence().to, 145);
    EXPECT_EQ(fence().offset, 30);
}

TEST_F(FencingByHand, AStopIsFixedAndSlidByKeysAlone) {
    choose("choice2", 1);
    m_window.plan().setFocus();
    for (int i = 0; i < 12; ++i) key(Qt::Key_Down, Qt::ShiftModifier);
    key(Qt::Key_Space);
    ASSERT_EQ(project().fences.size(), 1U);
    EXPECT_EQ(fence().from, 180);
    key(Qt::Key_Escape);
    key(Qt::Key_Tab);
    key(Qt::Key_Left);
    EXPECT_EQ(fence().from, 179);
    EXPECT_EQ(fence().to, 219);
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
// The two side views, and the cutting lines moved on the plan, from the side views, by keys and as typed.
#include "tests/ui/window/hand_on_sheet.h"
#include "ui/sheet_views.h"
#include "ui/side_view_panel.h"
#include "ui/spoken.h"

namespace kerfwall {
namespace {

class SideViews : public HandOnSheet {
protected:
    SheetViews& views() { return *m_window.findChild<SheetViews*>(); }
    SideViewPanel& level() { return *views().side(CutDirection::Level); }
    SideViewPanel& upright() { return *views().side(CutDirection::Upright); }
    double levelCut() { return m_window.session().cut(CutDirection::Level).at; }
    double uprightCut() { return m_window.session().cut(CutDirection::Upright).at; }
    void showBoth() {
        m_window.resize(1600, 900);
        QTest::qWait(20);
        ASSERT_TRUE(level().isVisible() && upright().isVisible());
    }
    void dragFromPixels(QPointF from, QPointF to) {
        QTest::mousePress(&m_window.plan(), Qt::LeftButton, {}, from.toPoint());
        QTest::mouseMove(&m_window.plan(), to.toPoint());
        QTest::mouseRelease(&m_window.plan(), Qt::LeftButton, {}, to.toPoint());
    }
};

TEST_F(SideViews, OneStandsOnASmallSheetAndF5ShowsTheOther) {
    EXPECT_TRUE(level().isVisible());
    EXPECT_FALSE(upright().isVisible());
    key(Qt::Key_F5);
    EXPECT_FALSE(level().isVisible());
    EXPECT_TRUE(upright().isVisible());
    key(Qt::Key_F5);
    EXPECT_TRUE(level().isVisible());
    EXPECT_FALSE(upright().isVisible());
}

TEST_F(SideViews, BothStandOnALargeSheetUnlessOneIsWished) {
    showBoth();
    key(Qt::Key_F5);
    EXPECT_TRUE(level().isVisible() && !upright().isVisible());
    key(Qt::Key_F5);
    EXPECT_TRUE(!level().isVisible() && upright().isVisible());
    MainWindow next;
    EXPECT_EQ(next.findChild<SheetViews*>()->wish(), SheetViews::Sides::FromRight) << "kept";
    key(Qt::Key_F5);
    EXPECT_TRUE(level().isVisible() && upright().isVisible());
    m_window.findChild<QAction*>(QStringLiteral("sides1"))->trigger();
    EXPECT_TRUE(!level().isVisible() && upright().isVisible());
}

// Expected from: the same scale for heights in both views, and one top: true projection.
TEST_F(SideViews, TheUprightOneStandsBesideThePlan) {
    showBoth();
    EXPECT_EQ(upright().geometry().topLeft(), m_window.plan().geometry().topRight() + QPoint(1, 0));
    EXPECT_EQ(upright().height(), m_window.plan().height());
    EXPECT_EQ(level().y(), m_window.plan().geometry().bottom() + 1);
}

TEST_F(SideViews, TheHandlesAtTheRimMoveEachItsLine) {
    showBoth();
    m_window.chooseTool(MainWindow::PickAt);
    const ViewScale& scale = m_window.plan().viewScale();
    dragFromPixels(scale.toScreen({0, 125}) - QPointF(16, 0), scale.toScreen({0, 70}) - QPointF(16, 0));
    EXPECT_EQ(levelCut(), 70);
    EXPECT_EQ(uprightCut(), 200);
    dragFromPixels(scale.toScreen({200, 250}) - QPointF(0, 16), scale.toScreen({310, 250}) - QPointF(0, 16));
    EXPECT_EQ(uprightCut(), 310);
    dragFromPixels(scale.toScreen({310, 0}) + QPointF(0, 16), scale.toScreen({90, 0}) + QPointF(0, 16));
    EXPECT_EQ(uprightCut(), 90);
    EXPECT_EQ(levelCut(), 70);
    EXPECT_TRUE(m_window.session().isSaved()) << "the cuts are not the project's";
}

TEST_F(SideViews, TheToolDragsTheLineItCatches) {
    showBoth();
    m_window.chooseTool(MainWindow::CutAt);
    drag({60, 125}, {60, 40});
    EXPECT_EQ(levelCut(), 40);
    EXPECT_EQ(uprightCut(), 200);
    drag({200, 220}, {330, 220});
    EXPECT_EQ(levelCut(), 40);
    EXPECT_EQ(uprightCut(), 330);
}

TEST_F(SideViews, AClickElsewhereCutsBothWaysThroughThePlace) {
    showBoth();
    m_window.chooseTool(MainWindow::CutAt);
    click({120, 200});
    EXPECT_EQ(levelCut(), 200);
    EXPECT_EQ(uprightCut(), 120);
}

TEST_F(SideViews, EscapePutsADraggedCutBack) {
    showBoth();
    m_window.chooseTool(MainWindow::CutAt);
    press({60, 125});
    moveTo({60, 40});
    EXPECT_EQ(levelCut(), 40);
    key(Qt::Key_Escape);
    release({60, 40});
    EXPECT_EQ(levelCut(), 125);
}

TEST_F(SideViews, BothCutsAreTypedAndNudged) {
    showBoth();
    m_window.chooseTool(MainWindow::CutAt);
    type("entry0", "80");
    type("entry1", "310,5");
    EXPECT_EQ(levelCut(), 80);
    EXPECT_EQ(uprightCut(), 310.5);
    m_window.plan().setFocus();
    key(Qt::Key_Up);
    key(Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_EQ(levelCut(), 81);
    EXPECT_EQ(uprightCut(), 300.5);
}

TEST_F(SideViews, OnlyTheCutThatIsShownIsMoved) {
    key(Qt::Key_F5);
    m_window.chooseTool(MainWindow::CutAt);
    drag({200, 125}, {140, 60});
    EXPECT_EQ(uprightCut(), 140);
    EXPECT_EQ(levelCut(), 125);
    type("entry0", "90");
    EXPECT_EQ(uprightCut(), 90);
}

// Expected from: the step the hand has on the plan, 1 mm at this scale and a 16th in inches; Shift takes ten.
TEST_F(SideViews, ArrowKeysInASideViewMoveItsCut) {
    showBoth();
    QTest::keyClick(&level(), Qt::Key_Down);
    EXPECT_EQ(levelCut(), 124);
    QTest::keyClick(&level(), Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(levelCut(), 134);
    QTest::keyClick(&upright(), Qt::Key_Right);
    EXPECT_EQ(uprightCut(), 201);
    key(Qt::Key_F9);
    QTest::keyClick(&upright(), Qt::Key_Left);
    EXPECT_EQ(uprightCut(), 201 - 25.4 / 16);
}

TEST_F(SideViews, EachIsNamedAndReachedByTab) {
    showBoth();
    EXPECT_FALSE(level().accessibleName().isEmpty());
    EXPECT_FALSE(upright().accessibleName().isEmpty());
    EXPECT_NE(level().accessibleName(), upright().accessibleName());
    EXPECT_EQ(level().focusPolicy(), Qt::StrongFocus);
    EXPECT_EQ(upright().focusPolicy(), Qt::StrongFocus);
    upright().setFocus();
    const QColor rim = upright().grab().toImage().pixelColor(1, upright().height() / 2);
    EXPECT_EQ(rim, colours().accent) << "the focus can be seen";
}

// Expected from: pencil. The window of lines at 90, 146, 110 and 290, cut at x 200: the bit's arcs do not reach there, so it is
// open from 90 to 146. 12 thick with kerfs of 6 leave 6.
TEST_F(SideViews, TheUprightOneInWords) {
    layRectangle();
    m_window.chooseTool(MainWindow::WasteAt);
    click({200, 118});
    const QString words = sideViewInWords(m_window.session(), CutDirection::Upright);
    EXPECT_TRUE(words.contains(QStringLiteral("Cut 200.0 mm from the left edge, from bottom to top"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("opening from 90.0 mm to 146.0 mm"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("kerfs 6.0 mm deep leave a web of 6.0 mm"))) << words.toStdString();
}

// Expected from: pencil. 10 across about 6 in 12: 1 of wood above and below; 150 deep from the left at y 118 it runs into the
// opening from 110 on.
TEST_F(SideViews, AHoleThatComesThroughInWords) {
    layRectangle();
    m_window.chooseTool(MainWindow::WasteAt);
    click({200, 118});
    Project next = project();
    next.clampHoles.push_back({"h", Edge::Left, 132, 10, 150, {}, {}});
    m_window.session().change(QStringLiteral("Drill"), next);
    m_window.session().moveCut({CutDirection::Level, 118});
    const QString words = sideViewInWords(m_window.session(), CutDirection::Level);
    EXPECT_TRUE(words.contains(QStringLiteral("Clamp hole 1 is cut along its length from 0.0 mm to 150.0 mm"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("1.0 mm of wood above and 1.0 mm below"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("comes through into the opening from 110.0 mm to 150.0 mm"))) << words.toStdString();
    QTest::qWait(200);
    EXPECT_EQ(level().accessibleDescription(), words) << "read aloud once the sheet has settled";
}

}  // namespace
}  // namespace kerfwall

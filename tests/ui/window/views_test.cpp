// SPDX-License-Identifier: GPL-3.0-or-later
#include <QScreen>
#include <QAction>
#include <QPushButton>
#include <QWheelEvent>

#include "tests/ui/window/hand_on_sheet.h"
#include "ui/card_row.h"
#include "ui/rulers.h"
#include "ui/side_view_panel.h"

namespace kerfwall {
namespace {

class Views : public HandOnSheet {
protected:
    void turnWheel(QPointF pixel, int eighths, Qt::KeyboardModifiers keys) {
        QWheelEvent event(pixel, m_window.plan().mapToGlobal(pixel), {}, QPoint(0, eighths), Qt::NoButton, keys, Qt::NoScrollPhase, false);
        QApplication::sendEvent(&m_window.plan(), &event);
    }
};

// Expected from: the law that a zoom keeps the place under the pointer.
TEST_F(Views, CtrlAndTheWheelZoomAboutThePointer) {
    const ViewScale before = m_window.plan().viewScale();
    const QPointF pixel(300, 200);
    const Point under = before.toPanel(pixel);
    turnWheel(pixel, 120, Qt::ControlModifier);
    const ViewScale after = m_window.plan().viewScale();
    EXPECT_NEAR(after.perMm / before.perMm, 1.25, 1e-12);
    EXPECT_NEAR(after.toPanel(pixel).x, under.x, 1e-9);
    EXPECT_NEAR(after.toPanel(pixel).y, under.y, 1e-9);
    key(Qt::Key_0, Qt::ControlModifier);
    EXPECT_EQ(m_window.plan().viewScale(), before);
}

// Expected from: the same scale for lengths in both views: true projection.
TEST_F(Views, TheSideViewLiesUnderThePlan) {
    auto* side = m_window.findChild<SideViewPanel*>();
    const QPoint plan = m_window.plan().mapTo(&m_window, QPoint(0, m_window.plan().height()));
    EXPECT_EQ(side->mapTo(&m_window, QPoint(0, 0)), plan);
    EXPECT_EQ(side->width(), m_window.plan().width());
}

// Expected from: pencil. At 1.28 pixels for 1 mm numbers need 56 pixels: 43.75 mm, so they stand 50 apart; marks
// need 5 pixels: 3.9 mm, so they stand 5 apart.
TEST(Rulers, NumbersAndMarksStayReadable) {
    EXPECT_EQ(rulerMarks(1.28, Units::Millimetres).labelled, 50);
    EXPECT_EQ(rulerMarks(1.28, Units::Millimetres).fine, 5);
    // In inches 43.75 mm is 1.72: numbers 2 apart, marks at quarters (6.35 mm is 8.1 pixels, an eighth is 4.06).
    EXPECT_EQ(rulerMarks(1.28, Units::Inches).labelled, 2 * 25.4);
    EXPECT_EQ(rulerMarks(1.28, Units::Inches).fine, 25.4 / 4);
}

TEST_F(Views, UnitsChangeWhatIsShownAndNotTheLengths) {
    layRectangle();
    key(Qt::Key_F9);
    EXPECT_EQ(project().units, Units::Inches);
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 90}));
    key(Qt::Key_1);
    click({200, 146});
    // Expected from: 146 mm is 5.748 in, nearest 64th 5 3/4 (5.75).
    EXPECT_EQ(m_window.findChild<QLineEdit*>(QStringLiteral("entry0"))->text(), QStringLiteral("5 3/4\""));
    EXPECT_EQ(placeOf("B"), Place(ByOffset{Edge::Bottom, 146}));
}

TEST_F(Views, AChosenStepIsReadWholeAndASecondClickFoldsItAgain) {
    layRectangle();
    key(Qt::Key_3);
    click({200, 118});
    QTest::qWait(20);
    CardRow* step = nullptr;
    for (CardRow* row : m_window.findChildren<CardRow*>()) {
        if (row->accessibleName().contains(QStringLiteral("Rip fence 90"))) step = row;
    }
    ASSERT_TRUE(step);
    const int folded = step->sizeHint().height();
    QTest::mouseClick(step, Qt::LeftButton);
    EXPECT_TRUE(step->isChosen());
    EXPECT_GT(step->sizeHint().height(), folded);
    QTest::keyClick(step, Qt::Key_Return);
    EXPECT_FALSE(step->isChosen());
}

// Expected from: pencil. The stock bench's base is 150 across: it reaches 75 mm from the pointer, and no further.
TEST_F(Views, TheRoutersBaseIsShownRoundThePointer) {
    const auto reachesTo = [this](Point place) {
        const QImage without = m_window.plan().grab().toImage();
        m_window.findChild<QAction*>(QStringLiteral("routerBase"))->toggle();
        const QImage with = m_window.plan().grab().toImage();
        m_window.findChild<QAction*>(QStringLiteral("routerBase"))->toggle();
        return without.pixel(pixel(place)) != with.pixel(pixel(place));
    };
    layRectangle();
    m_window.selection().clear();
    for (int i = 0; i < 5; ++i) key(Qt::Key_Up);  // a pointer of the keyboard, at (200, 130)
    EXPECT_TRUE(reachesTo({260, 140}));
    EXPECT_FALSE(reachesTo({280, 140}));
}

// Expected from: the screen. A window that was never sized by hand fits on it.
TEST_F(Views, AFreshWindowFitsTheScreen) {
    MainWindow fresh;
    fresh.show();
    EXPECT_LE(fresh.height(), fresh.screen()->availableGeometry().height());
    EXPECT_LE(fresh.minimumSizeHint().height(), 680);
    EXPECT_LE(fresh.minimumSizeHint().width(), 1024);
}

TEST_F(Views, EveryFieldAndToolHasANameToBeReadAloud) {
    for (const QAbstractButton* button : m_window.findChildren<QAbstractButton*>()) {
        if (!button->isVisible() || button->focusPolicy() == Qt::NoFocus) continue;
        EXPECT_FALSE(button->text().isEmpty() && button->accessibleName().isEmpty()) << button->objectName().toStdString();
    }
    for (const QLineEdit* field : m_window.findChildren<QLineEdit*>()) {
        if (!field->isVisible()) continue;
        EXPECT_FALSE(field->accessibleName().isEmpty()) << field->objectName().toStdString();
    }
}

}  // namespace
}  // namespace kerfwall

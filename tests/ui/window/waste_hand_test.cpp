// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/window/hand_on_sheet.h"
#include "ui/tool.h"

namespace kerfwall {
namespace {

/// Waste marked by pointer and by keys on a grid of four lines: a middle face of 180 x 56 round (200, 118).
class WasteByHand : public HandOnSheet {
protected:
    void SetUp() override {
        HandOnSheet::SetUp();
        layRectangle();
        m_window.chooseTool(MainWindow::WasteAt);
    }
    InHand inHand() { return m_window.plan().tool()->inHand(); }
};

// Expected from: pencil. 290 - 110 by 146 - 90, 10080 mm² = 100.8 cm²; no side of it lies on an edge.
TEST_F(WasteByHand, TheHoverSaysWhatAClickWouldMark) {
    moveTo({200, 118});
    ASSERT_EQ(inHand().faces.size(), 1U);
    EXPECT_EQ(inHand().faces.front().size(), 4U);
    EXPECT_TRUE(inHand().note.contains(QStringLiteral("180 × 56, 100.8 cm²"))) << inHand().note.toStdString();
    EXPECT_TRUE(sentence().contains(QStringLiteral("it becomes cutout-1, 180 × 56, closed"))) << sentence().toStdString();
    EXPECT_TRUE(project().cutouts.empty());
    click({200, 118});
    EXPECT_EQ(project().cutouts.size(), 1U);
}

// Expected from: pencil. The face to the right runs from 290 to the edge at 400: with the middle one 290 x 56, open.
TEST_F(WasteByHand, TheHoverSaysWhatAFaceJoinsAndThatItOpens) {
    click({200, 118});
    moveTo({350, 118});
    EXPECT_TRUE(sentence().contains(QStringLiteral("it joins cutout-1, then 290 × 56, open to the edge"))) << sentence().toStdString();
    click({350, 118});
    ASSERT_EQ(project().cutouts.size(), 1U);
    moveTo({200, 110});
    EXPECT_TRUE(sentence().contains(QStringLiteral("cutout-1 is then 110 × 56, open to the edge"))) << sentence().toStdString();
}

TEST_F(WasteByHand, TheHoverSaysThatTheLastFaceTakesTheCutoutWithIt) {
    click({200, 118});
    moveTo({200, 110});
    EXPECT_TRUE(sentence().contains(QStringLiteral("cutout-1 goes"))) << sentence().toStdString();
    click({200, 110});
    EXPECT_TRUE(project().cutouts.empty());
}

TEST_F(WasteByHand, TheHoverFollowsAnUndo) {
    click({200, 118});
    key(Qt::Key_Z, Qt::ControlModifier);
    moveTo({201, 118});
    EXPECT_TRUE(sentence().contains(QStringLiteral("becomes cutout-1"))) << sentence().toStdString();
}

// Expected from: pencil. Between x 110 and a line at 120 lies a strip of 10; the stock bit is 12.7.
TEST_F(WasteByHand, ARegionTheBitDoesNotFitIntoIsSaidToBeTooNarrow) {
    m_window.chooseTool(MainWindow::LayAt);
    drag({120, 0}, {120, 250});
    m_window.chooseTool(MainWindow::WasteAt);
    moveTo({115, 118});
    EXPECT_TRUE(inHand().note.contains(QStringLiteral("too narrow for the 12.7 bit: 10 at its widest"))) << inHand().note.toStdString();
}

// Expected from: the arrow keys' pointer, which begins in the panel's middle (200, 125).
TEST_F(WasteByHand, TheKeyboardAloneMarksWasteAndKeepsItAgain) {
    key(Qt::Key_Down);
    key(Qt::Key_Space);
    ASSERT_EQ(project().cutouts.size(), 1U);
    EXPECT_EQ(project().cutouts.front().seeds.front(), (Point{200, 118}));
    key(Qt::Key_Space);
    EXPECT_TRUE(project().cutouts.empty());
}

TEST_F(WasteByHand, WhatTheHoverSaidGoesWithThePointer) {
    moveTo({200, 118});
    QEvent gone(QEvent::Leave);
    QCoreApplication::sendEvent(&m_window.plan(), &gone);
    EXPECT_TRUE(inHand().faces.empty());
    EXPECT_TRUE(inHand().note.isEmpty());
}

}  // namespace
}  // namespace kerfwall

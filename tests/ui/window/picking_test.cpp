// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/window/things_on_sheet.h"

namespace kerfwall {
namespace {

using PickingByHand = ThingsOnSheet;

TEST_F(PickingByHand, AClickPicksEachKindOfThing) {
    click({30, 90});
    EXPECT_EQ(picked(), onlyLine("A"));
    click({60, 20});
    EXPECT_EQ(picked(), onlyHole(0));
    click({345, 27});
    EXPECT_EQ(picked(), onlyFence(0));
    click({200, 118});
    EXPECT_EQ(picked(), onlyCutout("window"));
    click({350, 200});
    EXPECT_TRUE(picked().isEmpty());
}

TEST_F(PickingByHand, ShiftAddsAThingAndTakesItOut) {
    click({30, 90});
    click({60, 20}, Qt::ShiftModifier);
    click({345, 27}, Qt::ShiftModifier);
    click({200, 118}, Qt::ShiftModifier);
    EXPECT_EQ(picked(), (Picked{{"A"}, {"window"}, {0}, {0}, false}));
    EXPECT_TRUE(sentence().contains(QStringLiteral("1 line, 1 cutout, 1 clamp hole and 1 fence")));
    click({30, 90}, Qt::ShiftModifier);
    EXPECT_EQ(picked(), (Picked{{}, {"window"}, {0}, {0}, false}));
    EXPECT_TRUE(m_window.session().isSaved());
}

TEST_F(PickingByHand, ABandTakesWhatItCrossesOrHolds) {
    drag({390, 200}, {305, 12});
    EXPECT_EQ(picked(), (Picked{{"A", "B"}, {}, {}, {0}, false}));
    drag({20, 60}, {75, 5});
    EXPECT_TRUE(picked().isEmpty());  // it holds the hole only in part
    drag({100, 160}, {300, 80});
    EXPECT_EQ(picked(), (Picked{{"A", "B", "C", "D"}, {"window"}, {}, {}, false}));
}

TEST_F(PickingByHand, AShiftBandAddsAndEscapeTakesItBack) {
    click({60, 20});
    press({390, 200}, Qt::ShiftModifier);
    moveTo({350, 170});
    moveTo({305, 130});
    EXPECT_EQ(picked(), (Picked{{"B"}, {}, {0}, {}, false}));
    key(Qt::Key_Escape);
    release({305, 130}, Qt::ShiftModifier);
    EXPECT_EQ(picked(), onlyHole(0));
    key(Qt::Key_Escape);
    EXPECT_TRUE(picked().isEmpty());
}

TEST_F(PickingByHand, TabGoesFromThingToThingAndBack) {
    const std::vector<Picked> wanted{onlyLine("A"), onlyLine("B"), onlyLine("C"), onlyLine("D"),
                                     onlyHole(0),   onlyFence(0),  onlyCutout("window")};
    for (const Picked& thing : wanted) {
        key(Qt::Key_Tab);
        EXPECT_EQ(picked(), thing);
    }
    QTest::keyClick(&m_window.plan(), Qt::Key_Backtab);
    EXPECT_EQ(picked(), onlyFence(0));
}

TEST_F(PickingByHand, ControlAPicksEverythingAndDeleteTakesItInOneStep) {
    const Project before = project();
    key(Qt::Key_A, Qt::ControlModifier);
    EXPECT_EQ(picked().count(), 7U);
    key(Qt::Key_Delete);
    EXPECT_TRUE(project().lines.empty());
    EXPECT_TRUE(project().cutouts.empty());
    EXPECT_TRUE(project().clampHoles.empty());
    EXPECT_TRUE(project().fences.empty());
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Take 4 lines, 1 cutout, 1 clamp hole and 1 fence away"));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(project(), before);
}

TEST_F(PickingByHand, DeleteTakesEachKindAway) {
    click({345, 27});
    key(Qt::Key_Delete);
    EXPECT_TRUE(project().fences.empty());
    click({60, 20});
    key(Qt::Key_Delete);
    EXPECT_TRUE(project().clampHoles.empty());
    click({200, 118});
    key(Qt::Key_Delete);
    EXPECT_TRUE(project().cutouts.empty());
    EXPECT_EQ(project().lines.size(), 4U);
    click({30, 90});
    click({30, 146}, Qt::ShiftModifier);
    key(Qt::Key_Delete);
    EXPECT_EQ(project().lines.size(), 2U);
}

TEST_F(PickingByHand, WhatUndoTakesAwayIsPickedNoMore) {
    m_window.chooseTool(MainWindow::LayAt);
    drag({0, 200}, {400, 200});
    m_window.chooseTool(MainWindow::PickAt);
    click({30, 200});
    EXPECT_EQ(picked(), onlyLine("E"));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(picked().isEmpty());
}

}  // namespace
}  // namespace kerfwall

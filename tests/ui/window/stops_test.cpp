// SPDX-License-Identifier: GPL-3.0-or-later
// A stop changed in every way: it stays a stop.
#include "tests/ui/window/things_on_sheet.h"

namespace kerfwall {
namespace {

/// The sheet with a stop from x 110 to 150, as wide as the fence there is, its face 15 over the bottom edge, picked.
class StopsByHand : public ThingsOnSheet {
protected:
    void SetUp() override {
        ThingsOnSheet::SetUp();
        m_window.chooseTool(MainWindow::FenceAt);
        choose("choice2", 1);
        click({130, 1});
        m_window.chooseTool(MainWindow::PickAt);
        click({130, 8});
        ASSERT_EQ(picked(), onlyFence(1));
        m_before = project();
        expectStop(1, 110, 15);
    }
    void expectStop(std::size_t index, double from, double offset) {
        ASSERT_LT(index, project().fences.size());
        const Fence& stop = project().fences[index];
        EXPECT_EQ(stop.kind, FenceKind::Stop);
        EXPECT_EQ(stop.from, from);
        EXPECT_EQ(stop.to, from + 40);
        EXPECT_EQ(stop.offset, offset);
    }

    Project m_before;
};

TEST_F(StopsByHand, OneIsDraggedNudgedAndTyped) {
    drag({130, 8}, {140, 13});
    expectStop(1, 120, 20);
    key(Qt::Key_Up);
    expectStop(1, 120, 21);
    type("entry0", "30.5");
    expectStop(1, 120, 30.5);
}

TEST_F(StopsByHand, OneIsFilledInOnTheCard) {
    key(Qt::Key_F6, Qt::ShiftModifier);
    type("fenceWidth", "12");
    type("fenceHeight", "9");
    expectStop(1, 110, 15);
    EXPECT_EQ(project().fences[1].width, 12);
    EXPECT_EQ(project().fences[1].height, 9);
}

// Expected from: pencil. Half a turn about (200, 125): x 250 to 290, its face at y 235.
TEST_F(StopsByHand, OneTurns) {
    key(Qt::Key_R, Qt::ControlModifier);
    fill("entry1", "200");
    fill("entry2", "125");
    fill("entry0", "180");
    enter();
    expectStop(1, 250, 235);
}

// Expected from: pencil. x 110 to 150 about 200 is 250 to 290.
TEST_F(StopsByHand, OneIsMirrored) {
    key(Qt::Key_I, Qt::ControlModifier);
    choose("choice1", 1);
    enter();
    expectStop(2, 250, 15);
}

TEST_F(StopsByHand, OneIsCopiedAndDoubled) {
    key(Qt::Key_K, Qt::ControlModifier);
    fill("entry0", "60");
    enter();
    expectStop(2, 170, 15);
    pick(onlyFence(1));
    key(Qt::Key_D, Qt::ControlModifier);
    expectStop(3, 120, 25);
}

TEST_F(StopsByHand, OneIsCutAndPasted) {
    key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_EQ(project().fences.size(), 1U);
    key(Qt::Key_V, Qt::ControlModifier);
    expectStop(1, 110, 15);
}

TEST_F(StopsByHand, OneIsTakenAwayUndoneAndDoneAgain) {
    key(Qt::Key_Delete);
    const Project without = project();
    EXPECT_EQ(without.fences.size(), 1U);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(project(), m_before);
    key(Qt::Key_Y, Qt::ControlModifier);
    EXPECT_EQ(project(), without);
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
// A line that is a mark only: laid by typing and by keys, and changed in every way. It stays a mark on its face.
#include "tests/ui/window/things_on_sheet.h"

namespace kerfwall {
namespace {

Place up(double mm) { return ByOffset{Edge::Bottom, mm}; }

/// The sheet with a mark E on the back at y 200, picked.
class MarksByHand : public ThingsOnSheet {
protected:
    void SetUp() override {
        ThingsOnSheet::SetUp();
        m_window.chooseTool(MainWindow::LayAt);
        choose("choice3", kOnTheBack);
        drag({0, 200}, {400, 200});
        m_window.chooseTool(MainWindow::PickAt);
        click({30, 200});
        ASSERT_EQ(picked(), onlyLine("E"));
        m_before = project();
    }
    void expectMark(const LineId& id, const Place& place) {
        const LayoutLine* line = findLine(project(), id);
        ASSERT_TRUE(line) << id;
        EXPECT_EQ(line->place, place);
        EXPECT_FALSE(line->cut);
        EXPECT_EQ(line->drawnOn, Face::Back);
    }

    static constexpr int kOnTheBack = 2;
    Project m_before;
};

TEST_F(MarksByHand, OneIsLaidByTypingAlone) {
    m_window.chooseTool(MainWindow::LayAt);
    key(Qt::Key_Escape);
    choose("choice0", 1);
    type("entry1", "50");
    expectMark("F", ByOffset{Edge::Left, 50});
}

// Expected from: the keys' pointer, from the middle (200, 125) by tens.
TEST_F(MarksByHand, OneIsLaidByKeysAlone) {
    m_window.chooseTool(MainWindow::LayAt);
    m_window.selection().clear();
    for (int i = 0; i < 20; ++i) key(Qt::Key_Left, Qt::ShiftModifier);
    key(Qt::Key_Space);
    for (int i = 0; i < 40; ++i) key(Qt::Key_Right, Qt::ShiftModifier);
    key(Qt::Key_Space);
    expectMark("F", up(125));
}

TEST_F(MarksByHand, OneIsDraggedNudgedAndTyped) {
    drag({30, 200}, {30, 210});
    expectMark("E", up(210));
    key(Qt::Key_Down);
    expectMark("E", up(209));
    type("entry0", "205.5");
    expectMark("E", up(205.5));
}

// Expected from: pencil. Its middle is (200, 200).
TEST_F(MarksByHand, OneTurns) {
    key(Qt::Key_R, Qt::ControlModifier);
    fill("entry0", "90");
    enter();
    expectMark("E", ByOffset{Edge::Left, 200});
}

// Expected from: pencil. y 200 about the level centre line at 125 is 50.
TEST_F(MarksByHand, OneIsMirrored) {
    key(Qt::Key_I, Qt::ControlModifier);
    choose("choice0", 1);
    enter();
    expectMark("F", ByMirror{"E", Centre::Level});
    pick(onlyLine("E"));
    key(Qt::Key_I, Qt::ControlModifier);
    choose("choice0", 1);
    choose("choice1", 2);
    enter();
    expectMark("E", up(50));
}

TEST_F(MarksByHand, OneIsCopiedAndDoubled) {
    key(Qt::Key_K, Qt::ControlModifier);
    fill("entry1", "20");
    enter();
    expectMark("F", up(220));
    pick(onlyLine("E"));
    key(Qt::Key_D, Qt::ControlModifier);
    expectMark("G", up(210));
}

TEST_F(MarksByHand, OneIsCutAndPasted) {
    key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_EQ(project().lines.size(), 4U);
    key(Qt::Key_V, Qt::ControlModifier);
    expectMark("F", up(200));
}

TEST_F(MarksByHand, OneIsTakenAwayUndoneAndDoneAgain) {
    key(Qt::Key_Delete);
    const Project without = project();
    EXPECT_EQ(without.lines.size(), 4U);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(project(), m_before);
    key(Qt::Key_Y, Qt::ControlModifier);
    EXPECT_EQ(project(), without);
}

}  // namespace
}  // namespace kerfwall

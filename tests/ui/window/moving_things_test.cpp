// SPDX-License-Identifier: GPL-3.0-or-later
// Dragging, nudging and typing a way x a line, several lines, a cutout, a clamp hole, a fence.
#include "tests/ui/window/things_on_sheet.h"

namespace kerfwall {
namespace {

using MovingByHand = ThingsOnSheet;

Place up(double mm) { return ByOffset{Edge::Bottom, mm}; }
Place across(double mm) { return ByOffset{Edge::Left, mm}; }

TEST_F(MovingByHand, SeveralLinesAreDraggedTogetherAsOneStep) {
    const Project before = project();
    click({30, 90});
    click({30, 146}, Qt::ShiftModifier);
    click({110, 200}, Qt::ShiftModifier);
    drag({30, 146}, {35, 153});
    EXPECT_EQ(placeOf("A"), up(97));
    EXPECT_EQ(placeOf("B"), up(153));
    EXPECT_EQ(placeOf("C"), across(115));
    EXPECT_EQ(placeOf("D"), across(290));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Move 3 lines"));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(project(), before);
}

TEST_F(MovingByHand, ACutoutIsDraggedWithItsWalls) {
    drag({200, 118}, {212, 110});
    EXPECT_EQ(placeOf("A"), up(82));
    EXPECT_EQ(placeOf("B"), up(138));
    EXPECT_EQ(placeOf("C"), across(122));
    EXPECT_EQ(placeOf("D"), across(302));
    ASSERT_EQ(project().cutouts.size(), 1U);
    EXPECT_EQ(project().cutouts.front().seeds, (std::vector<Point>{{212, 110}}));
    EXPECT_NEAR(m_window.session().solved().cutouts.front().drawnArea, 180 * 56, 1e-6);
}

TEST_F(MovingByHand, EscapePutsADraggedCutoutBack) {
    const Project before = project();
    press({200, 118});
    moveTo({210, 118});
    moveTo({240, 118});
    EXPECT_NE(project(), before);
    key(Qt::Key_Escape);
    release({240, 118});
    EXPECT_EQ(project(), before);
}

TEST_F(MovingByHand, AFenceIsDraggedAlongAndAcross) {
    drag({345, 27}, {325, 30});
    EXPECT_EQ(fence().from, 290);
    EXPECT_EQ(fence().to, 360);
    EXPECT_EQ(fence().offset, 23);
}

TEST_F(MovingByHand, LinesHolesAndFencesAreDraggedTogether) {
    pick({{"A"}, {}, {0}, {0}, false});
    drag({30, 90}, {36, 94});
    EXPECT_EQ(placeOf("A"), up(94));
    EXPECT_EQ(project().clampHoles.front().at, 66);
    EXPECT_EQ(fence().from, 316);
    EXPECT_EQ(fence().offset, 24);
}

TEST_F(MovingByHand, ArrowsNudgeEachKind) {
    pick(onlyFence(0));
    key(Qt::Key_Up);
    EXPECT_EQ(fence().offset, 21);
    key(Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_EQ(fence().from, 300);
    pick(onlyHole(0));
    key(Qt::Key_Right);
    EXPECT_EQ(project().clampHoles.front().at, 61);
    pick({{"A", "B"}, {}, {}, {}, false});
    key(Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(placeOf("A"), up(100));
    EXPECT_EQ(placeOf("B"), up(156));
    pick(onlyCutout("window"));
    key(Qt::Key_Right);
    EXPECT_EQ(placeOf("C"), across(111));
    EXPECT_EQ(placeOf("D"), across(291));
    EXPECT_EQ(project().cutouts.front().seeds, (std::vector<Point>{{201, 128}}));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Move cutout window"));
}

// Expected from: pencil. At this scale an inch rule's sixteenth, 1.5875 mm, is the step; four times nearer a thirty-second.
TEST_F(MovingByHand, InInchesANudgeIsASixteenthAndNearerAThirtySecond) {
    key(Qt::Key_F9);
    pick(onlyLine("A"));
    key(Qt::Key_Up);
    EXPECT_EQ(placeOf("A"), up(91.5875));
    m_window.plan().zoom(5 / m_window.plan().viewScale().perMm);
    key(Qt::Key_Up);
    EXPECT_EQ(placeOf("A"), up(92.38125));
    pick(onlyFence(0));
    key(Qt::Key_Right);
    EXPECT_EQ(fence().from, 310.79375);
}

TEST_F(MovingByHand, EachKindIsMovedByNumbers) {
    pick({{"A"}, {}, {0}, {0}, false});
    key(Qt::Key_M, Qt::ControlModifier);
    fill("entry0", "-10");
    fill("entry1", "5.5");
    EXPECT_EQ(placeOf("A"), up(95.5));  // shown while it is typed
    enter();
    EXPECT_EQ(placeOf("A"), up(95.5));
    EXPECT_EQ(project().clampHoles.front().at, 50);
    EXPECT_EQ(fence().from, 300);
    EXPECT_EQ(fence().offset, 25.5);
    EXPECT_TRUE(m_window.plan().hasFocus());
    pick(onlyCutout("window"));
    key(Qt::Key_M, Qt::ControlModifier);
    fill("entry0", "20");
    enter();
    EXPECT_EQ(placeOf("C"), across(130));
    EXPECT_EQ(project().cutouts.front().seeds, (std::vector<Point>{{220, 120.8}}));
}

TEST_F(MovingByHand, EscapeLeavesTypedNumbers) {
    const Project before = project();
    pick(onlyLine("A"));
    key(Qt::Key_M, Qt::ControlModifier);
    fill("entry1", "7");
    EXPECT_NE(project(), before);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_EQ(project(), before);
    EXPECT_TRUE(m_window.session().undoName().isEmpty());
    EXPECT_FALSE(sentence().contains(QStringLiteral("Type how far")));
}

// Expected from: pencil. The left end stays where it is; the right one goes 10 up.
TEST_F(MovingByHand, ALinesEndIsDraggedAndTheLineTurns) {
    m_window.chooseTool(MainWindow::LayAt);
    press({0, 170}, Qt::AltModifier);
    release({400, 200}, Qt::AltModifier);
    m_window.chooseTool(MainWindow::PickAt);
    ASSERT_TRUE(std::holds_alternative<ByMarks>(placeOf("E")));
    const ByMarks before = std::get<ByMarks>(placeOf("E"));
    click({30, 172.25});
    ASSERT_EQ(picked(), onlyLine("E"));
    drag({400, 200}, {400, 210});
    EXPECT_EQ(placeOf("E"), Place(ByMarks{before.a, {Edge::Right, 210}}));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(placeOf("E"), Place(before));
    key(Qt::Key_Y, Qt::ControlModifier);
    EXPECT_EQ(placeOf("E"), Place(ByMarks{before.a, {Edge::Right, 210}}));
}

TEST_F(MovingByHand, ALinesEndsAreTyped) {
    m_window.chooseTool(MainWindow::LayAt);
    press({0, 170}, Qt::AltModifier);
    release({400, 200}, Qt::AltModifier);
    m_window.chooseTool(MainWindow::PickAt);
    click({30, 172.25});
    type("entry0", "75");
    type("entry1", "215.5");
    EXPECT_EQ(placeOf("E"), Place(ByMarks{{Edge::Left, 75}, {Edge::Right, 215.5}}));
}

TEST_F(MovingByHand, SeveralLinesAreMovedByNumbers) {
    pick({{"A", "C"}, {}, {}, {}, false});
    key(Qt::Key_M, Qt::ControlModifier);
    fill("entry0", "5");
    fill("entry1", "-2.5");
    enter();
    EXPECT_EQ(placeOf("A"), up(87.5));
    EXPECT_EQ(placeOf("C"), across(115));
}

// One step each, taken back in turn by keys and done again.
TEST_F(MovingByHand, EachKindIsUndoneAndDoneAgain) {
    std::vector<Project> states{project()};
    for (const Picked& thing : {onlyLine("A"), Picked{{"A", "B"}, {}, {}, {}, false}, onlyHole(0), onlyFence(0), onlyCutout("window")}) {
        pick(thing);
        key(Qt::Key_Right);
        key(Qt::Key_Up);
        states.push_back(project());
    }
    for (std::size_t i = states.size() - 1; i > 0; --i) {
        while (project() != states[i - 1] && !m_window.session().undoName().isEmpty()) key(Qt::Key_Z, Qt::ControlModifier);
        EXPECT_EQ(project(), states[i - 1]) << i;
    }
    EXPECT_TRUE(m_window.session().undoName().isEmpty());
    while (!m_window.session().redoName().isEmpty()) key(Qt::Key_Y, Qt::ControlModifier);
    EXPECT_EQ(project(), states.back());
}

}  // namespace
}  // namespace kerfwall

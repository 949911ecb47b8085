// SPDX-License-Identifier: GPL-3.0-or-later
// Cutting, copying, pasting and doubling x a line, several lines, a cutout, a clamp hole, a fence.
#include <QClipboard>
#include <QMimeData>

#include "tests/ui/window/things_on_sheet.h"

namespace kerfwall {
namespace {

using ClipboardByHand = ThingsOnSheet;

Place up(double mm) { return ByOffset{Edge::Bottom, mm}; }

void copyKey(PlanView& plan) { QTest::keyClick(&plan, Qt::Key_C, Qt::ControlModifier); }
void pasteKey(PlanView& plan) { QTest::keyClick(&plan, Qt::Key_V, Qt::ControlModifier); }

TEST_F(ClipboardByHand, ALineIsPastedAStepAsideWhileItsPlaceIsTaken) {
    click({30, 90});
    copyKey(m_window.plan());
    pasteKey(m_window.plan());
    EXPECT_EQ(placeOf("E"), up(100));
    EXPECT_EQ(picked(), onlyLine("E"));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Paste line E"));
    pasteKey(m_window.plan());
    EXPECT_EQ(placeOf("F"), up(110));
}

TEST_F(ClipboardByHand, SeveralLinesAreCutAndComeBackWhereTheyWere) {
    pick({{"A", "B"}, {}, {}, {}, false});
    key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_EQ(project().lines.size(), 2U);
    pasteKey(m_window.plan());
    ASSERT_EQ(project().lines.size(), 4U);
    EXPECT_EQ(project().lines[2].place, up(90));
    EXPECT_EQ(project().lines[3].place, up(146));
    EXPECT_EQ(project().lines[2].id, "E");  // an id is never given twice
}

TEST_F(ClipboardByHand, ACutoutIsCutWithItsWallsAndPastedWithThem) {
    pick(onlyCutout("window"));
    key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_TRUE(project().lines.empty());
    EXPECT_TRUE(project().cutouts.empty());
    pasteKey(m_window.plan());
    EXPECT_EQ(project().lines.size(), 4U);
    ASSERT_EQ(m_window.session().solved().cutouts.size(), 1U);
    EXPECT_NEAR(m_window.session().solved().cutouts.front().drawnArea, 180 * 56, 1e-6);
    pasteKey(m_window.plan());
    ASSERT_EQ(project().cutouts.size(), 2U);
}

TEST_F(ClipboardByHand, AHoleAndAFenceAreDoubledBesideThemselves) {
    pick({{}, {}, {0}, {0}, false});
    key(Qt::Key_D, Qt::ControlModifier);
    ASSERT_EQ(project().clampHoles.size(), 2U);
    EXPECT_EQ(project().clampHoles.back().at, 70);
    ASSERT_EQ(project().fences.size(), 2U);
    EXPECT_EQ(project().fences.back().from, 320);
    EXPECT_EQ(project().fences.back().offset, 30);
}

TEST_F(ClipboardByHand, AnotherWindowTakesItWhereItWas) {
    pick({{}, {"window"}, {0}, {0}, false});
    copyKey(m_window.plan());
    key(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    MainWindow* other = nullptr;
    for (QWidget* widget : QApplication::topLevelWidgets()) {
        auto* window = qobject_cast<MainWindow*>(widget);
        if (window && window != &m_window && window->isVisible()) other = window;
    }
    ASSERT_TRUE(other);
    other->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(other));
    pasteKey(other->plan());
    const Project& there = other->session().project();
    ASSERT_EQ(there.lines.size(), 4U);
    EXPECT_EQ(there.lines.front().place, up(90));
    EXPECT_EQ(there.cutouts.front().seeds, (std::vector<Point>{{200, 118}}));
    EXPECT_EQ(there.clampHoles, project().clampHoles);
    EXPECT_EQ(there.fences, project().fences);
    QTest::keyClick(&other->plan(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(other->session().project().lines.empty());
    delete other;
}

// As text it goes through anything that carries text, another instance of the program's too.
TEST_F(ClipboardByHand, TheTextAloneIsEnoughAndOtherTextIsToldOff) {
    click({30, 90});
    copyKey(m_window.plan());
    const QString text = QApplication::clipboard()->text();
    EXPECT_TRUE(text.contains(QStringLiteral("kerfwall-project")));
    QApplication::clipboard()->setText(text);
    pasteKey(m_window.plan());
    EXPECT_EQ(project().lines.size(), 5U);
    QApplication::clipboard()->setText(QStringLiteral("two boards of ash"));
    pasteKey(m_window.plan());
    EXPECT_EQ(project().lines.size(), 5U);
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("can't be pasted")));
}

TEST_F(ClipboardByHand, ALineIsCutAndPasted) {
    click({30, 90});
    key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_EQ(project().lines.size(), 3U);
    pasteKey(m_window.plan());
    EXPECT_EQ(placeOf("E"), up(90));
}

TEST_F(ClipboardByHand, AHoleAndAFenceAreCutAndPasted) {
    const Project before = project();
    pick({{}, {}, {0}, {0}, false});
    key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_TRUE(project().clampHoles.empty());
    EXPECT_TRUE(project().fences.empty());
    pasteKey(m_window.plan());
    ASSERT_EQ(project().clampHoles.size(), 1U);
    EXPECT_EQ(project().clampHoles.front().at, 60);
    EXPECT_EQ(project().fences, before.fences);
}

// Expected from: pencil. 10 to the right and up.
TEST_F(ClipboardByHand, LinesAreDoubledBesideThemselves) {
    click({30, 90});
    key(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(placeOf("E"), up(100));
    pick({{"B", "C"}, {}, {}, {}, false});
    key(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(placeOf("F"), up(156));
    EXPECT_EQ(placeOf("G"), Place(ByOffset{Edge::Left, 120}));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Double 2 lines"));
}

// Expected from: pencil. The window is 56 high: steps of 10 clear it at 60, where no waste lies yet.
TEST_F(ClipboardByHand, ACutoutIsDoubledBesideItself) {
    pick(onlyCutout("window"));
    key(Qt::Key_D, Qt::ControlModifier);
    ASSERT_EQ(project().cutouts.size(), 2U);
    EXPECT_EQ(project().lines.size(), 8U);
    EXPECT_EQ(project().lines[4].place, up(150));
    EXPECT_EQ(picked().cutouts, std::vector{project().cutouts.back().id});
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(project().cutouts.size(), 1U);
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
// The same by hand on a project of so many lines that its answers come off the window's thread.
#include "tests/ui/window/hand_on_sheet.h"

namespace kerfwall {
namespace {

class LargeByHand : public HandOnSheet {
protected:
    /// The window of 180 x 56 and twenty lines more under the top edge.
    void SetUp() override {
        HandOnSheet::SetUp();
        layWindow();
        Project next = project();
        for (int i = 0; i < 20; ++i) {
            LayoutLine line;
            line.id = "L" + std::to_string(i);
            line.place = ByOffset{Edge::Bottom, 190.0 + i};
            line.cut = false;
            next.lines.push_back(line);
        }
        ASSERT_GT(next.lines.size(), Session::kLinesAtOnce);
        m_window.session().change(QStringLiteral("Lay lines"), next);
    }
    void dragInSteps(Point from, Point to) {
        press(from);
        for (int i = 1; i <= 8; ++i) {
            moveTo(from + (i / 8.0) * (to - from));
            QTest::qWait(1);
        }
        release(to);
    }
};

TEST_F(LargeByHand, ABoreIsDragged) {
    m_window.chooseTool(MainWindow::BoreAt);
    dragInSteps({110, 90}, {116, 96});
    ASSERT_EQ(project().cutouts.front().corners.size(), 1U);
    EXPECT_GT(project().cutouts.front().corners.front().radius, 10);
}

TEST_F(LargeByHand, AClampHoleIsPlacedDrilledDeeperAndStaysPicked) {
    m_window.chooseTool(MainWindow::ClampAt);
    dragInSteps({1, 60}, {1, 120});
    ASSERT_EQ(project().clampHoles.size(), 1U);
    EXPECT_EQ(project().clampHoles.front().at, 130);
    EXPECT_EQ(m_window.selection().hole(), std::optional<std::size_t>(0));
    dragInSteps({50, 120}, {80, 120});
    EXPECT_EQ(project().clampHoles.front().depth, 80);
    EXPECT_EQ(m_window.selection().hole(), std::optional<std::size_t>(0));
}

TEST_F(LargeByHand, AFenceIsPlacedMovedAndStaysPicked) {
    m_window.chooseTool(MainWindow::FenceAt);
    dragInSteps({60, 1}, {60, 30});
    ASSERT_EQ(project().fences.size(), 1U);
    EXPECT_EQ(m_window.selection().fence(), std::optional<std::size_t>(0));
    const double before = project().fences.front().offset;
    dragInSteps({60, 20}, {60, 40});
    EXPECT_EQ(project().fences.front().offset, before + 20);
    EXPECT_EQ(m_window.selection().fence(), std::optional<std::size_t>(0));
}

}  // namespace
}  // namespace kerfwall

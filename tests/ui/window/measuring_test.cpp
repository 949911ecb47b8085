// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/window/things_on_sheet.h"
#include "ui/tool.h"

namespace kerfwall {
namespace {

class MeasuringByHand : public ThingsOnSheet {
protected:
    void SetUp() override {
        ThingsOnSheet::SetUp();
        m_before = project();
        m_window.chooseTool(MainWindow::MeasureAt);
    }
    void TearDown() override {
        EXPECT_EQ(project(), m_before);
        EXPECT_TRUE(m_window.session().isSaved());
    }
    bool says(const char* text) { return sentence().contains(QString::fromUtf8(text)); }

    Project m_before;
};

TEST_F(MeasuringByHand, BetweenTwoLinesTheirDistance) {
    click({30, 90});
    click({350, 146});
    EXPECT_TRUE(says("From line A to line B: 56.0 mm, parallel.")) << sentence().toStdString();
    EXPECT_EQ(m_window.plan().tool()->inHand().note, QStringLiteral("56.0 mm, parallel"));
    moveTo({200, 200});
    EXPECT_TRUE(says("56.0 mm"));  // it stays in view
    key(Qt::Key_Escape);
    EXPECT_FALSE(says("56.0 mm"));
}

TEST_F(MeasuringByHand, TheNumbersFollowThePointer) {
    click({110, 90});
    moveTo({290, 146});
    EXPECT_TRUE(says("(180.0 mm across, 56.0 mm up)")) << sentence().toStdString();
    moveTo({290, 200});
    EXPECT_TRUE(says("180.0 mm")) << sentence().toStdString();
}

TEST_F(MeasuringByHand, FromAHoleToAnEdgeAndFromAFenceToALine) {
    click({60, 40});
    click({0, 200});
    EXPECT_TRUE(says("From the end of clamp hole 1 to the left edge: 60.0 mm")) << sentence().toStdString();
    click({330, 35});
    click({330, 90});
    EXPECT_TRUE(says("From fence 1 to line A: 55.0 mm, parallel")) << sentence().toStdString();
}

TEST_F(MeasuringByHand, HoverTellsALinesAngleAndAnArcsRadius) {
    moveTo({30, 90});
    EXPECT_TRUE(says("Line A: 400.0 mm long, 0° from the reference edge")) << sentence().toStdString();
    m_window.plan().zoomAbout(12, m_window.plan().viewScale().toScreen({112, 92}));
    moveTo(Point{116.35, 96.35} + 6.35 * unit({-1, -1}));
    EXPECT_TRUE(says("radius 6.35 mm")) << sentence().toStdString();
}

// Expected from: pencil. The pointer of the keys begins in the panel's middle, (200, 125), and goes by whole millimetres.
TEST_F(MeasuringByHand, ByTheKeyboardAlone) {
    key(Qt::Key_Left);
    key(Qt::Key_Right);
    key(Qt::Key_Space);
    for (int i = 0; i < 2; ++i) key(Qt::Key_Up, Qt::ShiftModifier);
    key(Qt::Key_Up);
    key(Qt::Key_Space);
    EXPECT_TRUE(says("to line B: 21.0 mm")) << sentence().toStdString();
}

TEST_F(MeasuringByHand, InInches) {
    m_window.chooseTool(MainWindow::PickAt);
    key(Qt::Key_F9);
    m_before = project();
    ASSERT_TRUE(m_window.saveTo(file("inches.kerfwall")));
    m_window.chooseTool(MainWindow::MeasureAt);
    click({110, 200});
    click({290, 200});
    EXPECT_TRUE(says("7 3/32\", parallel")) << sentence().toStdString();
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/work_rectangle.h"
#include "tests/ui/window/things_on_sheet.h"

namespace kerfwall {
namespace {

class WorkpieceByHand : public ThingsOnSheet {
protected:
    void layWork() {
        key(Qt::Key_F8, Qt::ShiftModifier);
        type("workWidth", "160");
        type("workHeight", "180");
        type("workLeft", "120");
        type("workBottom", "50");
    }
    Box bounds() { return workBounds(project()).value_or(Box{}); }
};

TEST_F(WorkpieceByHand, IsFilledInOnTheCard) {
    layWork();
    type("workThickness", "18");
    EXPECT_EQ(bounds(), (Box{{120, 50}, {280, 230}}));
    EXPECT_EQ(project().workpiece->thickness, 18);
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Set the workpiece"));
    auto* width = m_window.findChild<QLineEdit*>(QStringLiteral("workWidth"));
    width->setFocus();
    width->selectAll();
    QTest::keyClick(width, Qt::Key_Backspace);
    QTest::keyClick(width, Qt::Key_Return);
    EXPECT_FALSE(project().workpiece);
}

// Expected from: pencil. The right side stands at x 280; 20 to the left and 10 up of (280, 200).
TEST_F(WorkpieceByHand, IsDraggedNudgedTurnedAndTakenAway) {
    layWork();
    drag({280, 200}, {260, 210});
    EXPECT_EQ(picked(), onlyWorkpiece());
    EXPECT_EQ(bounds(), (Box{{100, 60}, {260, 240}}));
    key(Qt::Key_Right);
    EXPECT_EQ(bounds().low, (Point{101, 60}));
    key(Qt::Key_R, Qt::ControlModifier);
    fill("entry0", "90");
    enter();
    EXPECT_EQ(bounds(), (Box{{91, 70}, {271, 230}}));
    key(Qt::Key_Delete);
    EXPECT_FALSE(project().workpiece);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(project().workpiece);
}

TEST_F(WorkpieceByHand, IsMirroredAndPastedElsewhere) {
    layWork();
    pick(onlyWorkpiece());
    key(Qt::Key_M, Qt::ControlModifier);
    fill("entry0", "30");
    enter();
    key(Qt::Key_I, Qt::ControlModifier);
    choose("choice1", 2);
    enter();
    EXPECT_EQ(bounds(), (Box{{90, 50}, {250, 230}}));
    key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_FALSE(project().workpiece);
    key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(bounds(), (Box{{90, 50}, {250, 230}}));
}

}  // namespace
}  // namespace kerfwall

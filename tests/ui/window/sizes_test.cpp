// SPDX-License-Identifier: GPL-3.0-or-later
// Sizes set where they stand on the plan.
#include "core/drawing/plan_drawing.h"
#include "tests/ui/window/things_on_sheet.h"
#include "ui/surface.h"

namespace kerfwall {
namespace {

class SizesByHand : public ThingsOnSheet {
protected:
    /// The middle of the text of the size between those two.
    Point textOf(const Base& first, const Base& second) {
        PlanLayers layers = m_window.plan().layers();
        layers.markScale = m_window.plan().viewScale().markScale();
        for (const Dimension& size : planSizes(project(), m_window.session().solved(), layers)) {
            if (!size.between || *size.between != std::pair(first, second)) continue;
            const Label label = dimensionLabel(size, layers.markScale);
            return label.at + Point{0, 0.36 * label.height * layers.markScale};
        }
        ADD_FAILURE() << "no such size";
        return {};
    }
    QLineEdit* field() { return m_window.findChild<QLineEdit*>(QStringLiteral("sizeField")); }
    QLabel* trouble() { return m_window.findChild<QLabel*>(QStringLiteral("sizeTrouble")); }
    void retype(const char* text) {
        field()->selectAll();
        QTest::keyClicks(field(), QString::fromLatin1(text));
        QTest::keyClick(field(), Qt::Key_Return);
    }
};

Place up(double mm) { return ByOffset{Edge::Bottom, mm}; }
Place across(double mm) { return ByOffset{Edge::Left, mm}; }

// Expected from: pencil. C stays at 110; D, laid later, goes to 110 + 170.
TEST_F(SizesByHand, AClickedSizeIsTypedAndTheLineLaidLaterMoves) {
    const Point at = textOf(LineId("C"), LineId("D"));
    moveTo(at);
    EXPECT_TRUE(sentence().contains(QStringLiteral("Line D moves")));
    click(at);
    ASSERT_TRUE(field()->isVisible());
    EXPECT_EQ(field()->text(), QStringLiteral("180.0 mm"));
    EXPECT_TRUE(picked().isEmpty());
    retype("170");
    EXPECT_FALSE(field()->isVisible());
    EXPECT_EQ(placeOf("C"), across(110));
    EXPECT_EQ(placeOf("D"), across(280));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Set the size from the line C to the line D"));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(placeOf("D"), across(290));
}

TEST_F(SizesByHand, ASizeFromAnEdgeMovesTheLine) {
    click(textOf(Edge::Left, LineId("C")));
    retype("100");
    EXPECT_EQ(placeOf("C"), across(100));
}

TEST_F(SizesByHand, TheKeyboardGoesFromSizeToSizeOfThePickedLine) {
    pick(onlyLine("B"));
    key(Qt::Key_F12);
    ASSERT_TRUE(field()->isVisible());
    EXPECT_TRUE(field()->hasFocus());
    EXPECT_EQ(field()->text(), QStringLiteral("56.0 mm"));
    retype("60");
    EXPECT_EQ(placeOf("B"), up(150));
    EXPECT_TRUE(m_window.plan().hasFocus());
    m_window.selection().clear();
    key(Qt::Key_F12);
    const QString first = field()->text();
    QTest::keyClick(field(), Qt::Key_F12);
    ASSERT_TRUE(field()->isVisible());
    EXPECT_NE(field()->text(), first);
    QTest::keyClick(field(), Qt::Key_Escape);
    EXPECT_FALSE(field()->isVisible());
    EXPECT_EQ(placeOf("B"), up(150));
}

TEST_F(SizesByHand, WhatCannotBeIsToldBesideTheField) {
    const Project before = project();
    click(textOf(LineId("C"), LineId("D")));
    retype("400");
    EXPECT_TRUE(field()->isVisible());
    EXPECT_TRUE(trouble()->isVisible());
    EXPECT_TRUE(trouble()->text().contains(QStringLiteral("off the panel")));
    retype("0");
    EXPECT_TRUE(trouble()->text().contains(QStringLiteral("more than 0")));
    QTest::keyClick(field(), Qt::Key_Escape);
    EXPECT_FALSE(trouble()->isVisible());
    EXPECT_EQ(project(), before);
}

// Expected from: pencil. 7 inches are 177.8 mm; D goes to 287.8.
TEST_F(SizesByHand, InInchesAFractionIsTyped) {
    key(Qt::Key_F9);
    click(textOf(LineId("C"), LineId("D")));
    retype("6 15/16 + 1/16");
    EXPECT_EQ(placeOf("D"), across(287.8));
}

TEST_F(SizesByHand, OtherToolsLeaveSizesAlone) {
    m_window.chooseTool(MainWindow::WasteAt);
    const Point at = textOf(LineId("C"), LineId("D"));
    moveTo(at);
    EXPECT_FALSE(m_window.findChild<QWidget*>(QStringLiteral("sizePointed"))->isVisible());
    click(at);
    EXPECT_FALSE(field()->isVisible());
}

}  // namespace
}  // namespace kerfwall

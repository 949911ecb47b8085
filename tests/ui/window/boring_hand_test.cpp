// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "tests/ui/window/hand_on_sheet.h"
#include "ui/tool.h"

namespace kerfwall {
namespace {

/// Corners bored by pointer, keys and typing on a window of 180 x 56, its corner A C at (110, 90).
class BoringByHand : public HandOnSheet {
protected:
    void SetUp() override {
        HandOnSheet::SetUp();
        layWindow();
        m_window.chooseTool(MainWindow::BoreAt);
    }
    InHand inHand() { return m_window.plan().tool()->inHand(); }
    const std::vector<BoredCorner>& bores() { return project().cutouts.front().corners; }
    /// Where the arc of a square corner lies nearest to it: its radius times (1 - 1/sqrt 2) along both lines.
    static Point onArc(double radius) {
        const double in = radius * (1 - std::sqrt(0.5));
        return {110 + in, 90 + in};
    }
};

// Expected from: the stock bench's 12.7 bit, half of it 6.35; its smallest bore over that is 20.
TEST_F(BoringByHand, TheHoverSaysHowTheCornerComesOutAndWhatAClickMakesOfIt) {
    moveTo({110, 90});
    const InHand shown = inHand();
    EXPECT_TRUE(shown.note.contains(QStringLiteral("90°, radius 6.35"))) << shown.note.toStdString();
    EXPECT_TRUE(shown.note.contains(QStringLiteral("clean: one arc from line to line"))) << shown.note.toStdString();
    EXPECT_TRUE(shown.note.contains(QStringLiteral("radius 10, the 20 bore at hand"))) << shown.note.toStdString();
    ASSERT_EQ(shown.runs.size(), 1U);
    EXPECT_NEAR(shown.runs.front().front().radius, 6.35, 1e-12);
    ASSERT_EQ(shown.wished.size(), 1U);
    EXPECT_NEAR(shown.wished.front().front().radius, 10, 1e-12);
    EXPECT_TRUE(sentence().contains(QStringLiteral("to radius 10"))) << sentence().toStdString();
    EXPECT_TRUE(bores().empty());
}

// Expected from: the closed form for w > r(1 + cos 90) at a square corner, a kerf of 3.2 and a bit of radius 3: 0.00716.
TEST_F(BoringByHand, TheHoverSaysHowFarACornerBitesPastItsLines) {
    key(Qt::Key_F7);
    type("trimDiameter", "6");
    m_window.plan().setFocus();
    moveTo({110, 90});
    EXPECT_TRUE(inHand().note.contains(QStringLiteral("bites 0.01 mm past the lines"))) << inHand().note.toStdString();
    EXPECT_FALSE(inHand().note.contains(QStringLiteral("clean")));
}

// Expected from: pencil. The arc through (d, d) from a square corner has radius d / (1 - 1/sqrt 2).
TEST_F(BoringByHand, DraggingAwayFromTheCornerBoresIt) {
    press({110, 90});
    moveTo({115, 95});
    moveTo(onArc(17));
    EXPECT_TRUE(m_window.session().isInHand());
    EXPECT_TRUE(sentence().contains(QStringLiteral("Let go")));
    release(onArc(17));
    ASSERT_EQ(bores().size(), 1U);
    // A pixel is 0.6 mm here, which is 2 mm of radius: the bore of 35 at hand may hold on.
    EXPECT_NEAR(bores().front().radius, 17, 2);
    EXPECT_EQ(std::fmod(bores().front().radius, 0.5), 0);
    EXPECT_EQ(m_window.session().undoName(), bores().front().first == "A" ? QStringLiteral("Bore corner A C")
                                                                            : QStringLiteral("Bore corner C A"));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(bores().empty());
}

TEST_F(BoringByHand, DraggingTheArcOfABoredCornerIsOneStepAndEscapePutsItBack) {
    click({110, 90});
    ASSERT_EQ(bores().front().radius, 10);
    m_window.plan().zoomAbout(8, m_window.plan().viewScale().toScreen({110, 90}));
    key(Qt::Key_Escape);
    press(onArc(10));
    moveTo(onArc(15));
    moveTo(onArc(20));
    EXPECT_EQ(bores().front().radius, 20);
    key(Qt::Key_Escape);
    release(onArc(20));
    EXPECT_EQ(bores().front().radius, 10);
    drag(onArc(10), onArc(22));
    EXPECT_EQ(bores().front().radius, 22);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(bores().front().radius, 10);
}

// Expected from: the stock bench's bores of 20, 25, 30 ... The hold is 0.75 of radius: 12.9 is a drill's, 13.7 is not.
TEST_F(BoringByHand, ABoreAtHandHoldsOnUnlessAltIsDown) {
    m_window.plan().zoomAbout(16, m_window.plan().viewScale().toScreen({110, 90}));
    drag(onArc(6.35), onArc(12.9));
    EXPECT_EQ(bores().front().radius, 12.5);
    drag(onArc(12.5), onArc(13.7));
    EXPECT_EQ(bores().front().radius, 13.5);
    press(onArc(13.5));
    QMouseEvent move(QEvent::MouseMove, QPointF(pixel(onArc(12.9))), m_window.plan().mapToGlobal(QPointF(pixel(onArc(12.9)))),
                     Qt::NoButton, Qt::LeftButton, Qt::AltModifier);
    QCoreApplication::sendEvent(&m_window.plan(), &move);
    release(onArc(12.9), Qt::AltModifier);
    EXPECT_NEAR(bores().front().radius, 12.9, 0.1);
    EXPECT_NE(bores().front().radius, 12.5);
}

// Expected from: pencil. The wall of 56 less the bit's arc of 6.35 at its other end: 49.65.
TEST_F(BoringByHand, ABoreWiderThanItsWallsIsSaidToBe) {
    press({110, 90});
    moveTo({120, 100});
    moveTo(onArc(60));
    EXPECT_TRUE(inHand().note.contains(QStringLiteral("room for 49.65 at most"))) << inHand().note.toStdString();
    moveTo(onArc(30));
    EXPECT_FALSE(inHand().note.contains(QStringLiteral("at most")));
    key(Qt::Key_Escape);
    release({120, 100});
    EXPECT_TRUE(bores().empty());
}

TEST_F(BoringByHand, DraggedBackUnderTheBitTheCornerIsLeftToIt) {
    click({110, 90});
    m_window.plan().zoomAbout(8, m_window.plan().viewScale().toScreen({110, 90}));
    drag(onArc(10), onArc(4));
    EXPECT_TRUE(bores().empty());
}

TEST_F(BoringByHand, TheRadiusIsTypedAndNothingButNoughtLeavesItToTheBit) {
    click({110, 90});
    type("entry0", "15");
    EXPECT_EQ(bores().front().radius, 15);
    click({110, 90});
    type("entry0", "0");
    EXPECT_TRUE(bores().empty());
}

// Expected from: the project file's largest bore of 300. The 15 typed on the way to 155 does not stay.
TEST_F(BoringByHand, ARadiusNoBoreHasIsToldAndSetsNothing) {
    click({110, 90});
    auto* field = m_window.findChild<QLineEdit*>(QStringLiteral("entry0"));
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, QStringLiteral("155"));
    EXPECT_TRUE(sentence().contains(QStringLiteral("to 150.0 mm"))) << sentence().toStdString();
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(bores().front().radius, 10);
}

// Expected from: the stock bench's trimming bit of 12.7: it leaves 6.35 by itself, and a bore of 5 would be none.
TEST_F(BoringByHand, ARadiusUnderTheBitsIsToldAndSetsNothing) {
    click({110, 90});
    key(Qt::Key_Return);
    auto* field = m_window.findChild<QLineEdit*>(QStringLiteral("entry0"));
    QTest::keyClicks(field, QStringLiteral("5"));
    EXPECT_TRUE(sentence().contains(QStringLiteral("by itself"))) << sentence().toStdString();
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(bores().front().radius, 10);
}

// Expected from: the rule that Enter leads to the numbers and back, and number keys else take tools.
TEST_F(BoringByHand, EnterLeadsToTheRadiusAndBackAndNumberKeysTakeTools) {
    click({110, 90});
    key(Qt::Key_Return);
    auto* field = m_window.findChild<QLineEdit*>(QStringLiteral("entry0"));
    ASSERT_TRUE(field->hasFocus());
    QTest::keyClicks(field, QStringLiteral("22"));
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(bores().front().radius, 22);
    ASSERT_TRUE(m_window.plan().hasFocus());
    key(Qt::Key_5);
    EXPECT_EQ(bores().front().radius, 22);
    EXPECT_EQ(m_window.plan().tool()->name(), QStringLiteral("Clamp hole"));
}

// Expected from: pencil. From the bit's 6.35 one step of 0.5 up falls on 7; an arrow moves by the rule's 1 mm.
TEST_F(BoringByHand, TabAndPlusAndArrowsBoreByKeyboardAlone) {
    key(Qt::Key_Tab);
    EXPECT_TRUE(sentence().contains(QStringLiteral("Tab: the next corner")));
    key(Qt::Key_Plus);
    ASSERT_EQ(bores().size(), 1U);
    EXPECT_EQ(bores().front().radius, 7);
    key(Qt::Key_Plus);
    EXPECT_EQ(bores().front().radius, 7.5);
    key(Qt::Key_Up);
    EXPECT_EQ(bores().front().radius, 9);  // 8.5, on whole millimetres
    key(Qt::Key_Minus);
    EXPECT_EQ(bores().front().radius, 8.5);
    key(Qt::Key_Tab);
    key(Qt::Key_Plus);
    EXPECT_EQ(bores().size(), 2U);
    key(Qt::Key_Backtab);
    key(Qt::Key_Plus);
    EXPECT_EQ(bores().front().radius, 9);
}

// Expected from: 1/32 in = 0.79375 mm; 6.35 is 8/32 in, so the next is 9/32 in.
TEST_F(BoringByHand, InInchesTheStepIsAThirtySecond) {
    key(Qt::Key_F9);
    key(Qt::Key_Tab);
    key(Qt::Key_Plus);
    ASSERT_EQ(bores().size(), 1U);
    EXPECT_NEAR(bores().front().radius, 25.4 * 9 / 32, 1e-12);
}

}  // namespace
}  // namespace kerfwall

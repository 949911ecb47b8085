// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/window/hand_on_sheet.h"

namespace kerfwall {
namespace {

using LayingByHand = HandOnSheet;

TEST_F(LayingByHand, TwoClicksLayALineAsADragDoes) {
    click({0, 90});
    EXPECT_TRUE(project().lines.empty());
    click({400, 90});
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 90}));
}

TEST_F(LayingByHand, TheLineAndItsAnswersAreThereWhileTheDragGoesOn) {
    press({0, 90});
    moveTo({400, 90});
    EXPECT_EQ(m_window.session().solved().lines.size(), 1U);
    EXPECT_TRUE(sentence().contains(QStringLiteral("Let go to lay line A")));
    EXPECT_EQ(m_window.session().undoName(), QString());
    release({400, 90});
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Lay line A"));
}

TEST_F(LayingByHand, EscapeLeavesTheLine) {
    press({0, 90});
    moveTo({400, 90});
    key(Qt::Key_Escape);
    release({400, 90});
    EXPECT_TRUE(project().lines.empty());
    EXPECT_EQ(m_window.session().undoName(), QString());
}

// Expected from: the digits typed. 8 would be no tool's key and 3 would be one: in a drag both are numbers.
TEST_F(LayingByHand, DigitsTypedWhileDraggingSetTheDistance) {
    press({0, 90});
    moveTo({400, 91});
    key(Qt::Key_8);
    auto* field = m_window.findChild<QLineEdit*>(QStringLiteral("entry0"));
    ASSERT_TRUE(field->hasFocus());
    QTest::keyClicks(field, QStringLiteral("3,5"));
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 83.5}));
    QTest::keyClick(field, Qt::Key_Return);
    release({400, 91});
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 83.5}));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Lay line A"));
}

TEST_F(LayingByHand, ADistanceTypedBetweenTwoClicksGoesWithTheSecond) {
    click({0, 90});
    moveTo({400, 91});
    key(Qt::Key_8);
    QTest::keyClicks(m_window.findChild<QLineEdit*>(QStringLiteral("entry0")), QStringLiteral("0"));
    click({400, 91});
    ASSERT_EQ(project().lines.size(), 1U);
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 80}));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Lay line A"));
    EXPECT_FALSE(m_window.session().isInHand());
}

TEST_F(LayingByHand, AnAngleTypedWhileDraggingTurnsTheLine) {
    press({0, 90});
    moveTo({400, 110});
    auto* field = m_window.findChild<QLineEdit*>(QStringLiteral("entry1"));
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, QStringLiteral("2.5"));
    QTest::keyClick(field, Qt::Key_Return);
    release({400, 110});
    EXPECT_EQ(placeOf("A"), Place(ByAngle{Edge::Bottom, 2.5, Point{0, 90}}));
}

TEST_F(LayingByHand, TypedAfterTheDragTheNumberStillGoesToThatLine) {
    drag({0, 90}, {400, 90});
    type("entry0", "101.85");
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 101.85}));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Set line A"));
}

TEST_F(LayingByHand, ALineIsLaidByTypingAlone) {
    type("entry1", "101.85");
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 101.85}));
}

// Expected from: 3 15/16 in = 100.0125 mm (1 in = 25.4 mm exactly).
TEST_F(LayingByHand, InchesAndFractionsAreRead) {
    type("entry1", "3-15/16\"");
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 100.0125}));
}

TEST_F(LayingByHand, NonsenseIsToldInTheEntryLineAndLaysNothing) {
    type("entry1", "1--3/4");
    EXPECT_TRUE(project().lines.empty());
    EXPECT_FALSE(sentence().isEmpty());
    EXPECT_TRUE(m_window.findChild<QLineEdit*>(QStringLiteral("entry1"))->property("trouble").toBool());
}

// Expected from: the rule that ids are given once.
TEST_F(LayingByHand, AnIdIsNotGivenAgainAfterItsLineIsGone) {
    drag({0, 90}, {400, 90});
    key(Qt::Key_Delete);
    EXPECT_TRUE(project().lines.empty());
    drag({0, 120}, {400, 120});
    EXPECT_EQ(project().lines.front().id, "B");
}

TEST_F(LayingByHand, ADragThatGoesNowhereSaysWhy) {
    drag({20, 0}, {200, 0});
    EXPECT_TRUE(project().lines.empty());
    EXPECT_TRUE(sentence().contains(QStringLiteral("from one edge of the panel to another")));
}

// Expected from: arrow keys move the pointer from the panel's middle (200, 125) by whole millimetres: 200 to the left,
// then 400 to the right, with Shift ten at a time.
TEST_F(LayingByHand, TheKeyboardAloneLaysALine) {
    for (int i = 0; i < 20; ++i) key(Qt::Key_Left, Qt::ShiftModifier);
    key(Qt::Key_Space);
    for (int i = 0; i < 40; ++i) key(Qt::Key_Right, Qt::ShiftModifier);
    key(Qt::Key_Space);
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 125}));
}

}  // namespace
}  // namespace kerfwall

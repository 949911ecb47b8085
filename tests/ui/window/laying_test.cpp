// SPDX-License-Identifier: GPL-3.0-or-later
#include <QComboBox>

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

// Expected from: the rule that numbers go to the line just laid until Enter; then number keys take tools again.
TEST_F(LayingByHand, DigitsTypedAfterTheDragGoToTheLineJustLaidUntilEnter) {
    drag({0, 90}, {400, 90});
    EXPECT_TRUE(sentence().contains(QStringLiteral("Numbers typed now set it")));
    auto* field = m_window.findChild<QLineEdit*>(QStringLiteral("entry0"));
    ASSERT_TRUE(m_window.plan().hasFocus());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_1);
    ASSERT_TRUE(field->hasFocus());
    QTest::keyClicks(field, QStringLiteral("20+3/2"));
    EXPECT_EQ(m_window.plan().tool()->name(), QStringLiteral("Lay a line"));
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 121.5}));
    EXPECT_TRUE(m_window.plan().hasFocus());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_1);
    EXPECT_EQ(m_window.plan().tool()->name(), QStringLiteral("Pick"));
}

TEST_F(LayingByHand, EscapeOrControlMakeNumberKeysToolsAgainAfterTheDrag) {
    drag({0, 90}, {400, 90});
    key(Qt::Key_Escape);
    EXPECT_EQ(project().lines.size(), 1U);
    key(Qt::Key_1);
    EXPECT_EQ(m_window.plan().tool()->name(), QStringLiteral("Pick"));
    m_window.chooseTool(MainWindow::LayAt);
    drag({0, 120}, {400, 120});
    key(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(m_window.plan().tool()->name(), QStringLiteral("Pick"));
    EXPECT_EQ(placeOf("B"), Place(ByOffset{Edge::Bottom, 120}));
}

TEST_F(LayingByHand, EscapeInTheFieldLeavesWhatWasTypedAfterTheDrag) {
    drag({0, 90}, {400, 90});
    key(Qt::Key_7);
    QTest::keyClick(m_window.findChild<QLineEdit*>(QStringLiteral("entry0")), Qt::Key_Escape);
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 90}));
    EXPECT_FALSE(m_window.session().isInHand());
}

// Expected from: what was typed. The drag stays in hand while Tab goes on, back and round among the fields.
TEST_F(LayingByHand, TabGoesRoundTheFieldsWhileTheDragGoesOn) {
    press({0, 90});
    moveTo({400, 110});
    key(Qt::Key_Tab);
    auto* distanceField = m_window.findChild<QLineEdit*>(QStringLiteral("entry0"));
    auto* angleField = m_window.findChild<QLineEdit*>(QStringLiteral("entry1"));
    ASSERT_TRUE(distanceField->hasFocus());
    QTest::keyClicks(distanceField, QStringLiteral("80"));
    QTest::keyClick(distanceField, Qt::Key_Tab);
    ASSERT_TRUE(angleField->hasFocus());
    QTest::keyClicks(angleField, QStringLiteral("2.5"));
    QTest::keyClick(angleField, Qt::Key_Backtab, Qt::ShiftModifier);
    ASSERT_TRUE(distanceField->hasFocus());
    QTest::keyClicks(distanceField, QStringLiteral("80 1/2"));
    QTest::keyClick(distanceField, Qt::Key_Tab);
    QTest::keyClick(angleField, Qt::Key_Tab);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    EXPECT_TRUE(distanceField->hasFocus());
    EXPECT_TRUE(m_window.session().isInHand());
    QTest::keyClick(distanceField, Qt::Key_Return);
    release({400, 110});
    EXPECT_EQ(placeOf("A"), Place(ByAngle{Edge::Bottom, 2.5, Point{0, 80.5}}));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Lay line A"));
}

TEST_F(LayingByHand, TabBetweenTheNumbersOfTheLineJustLaidKeepsBoth) {
    press({0, 100}, Qt::AltModifier);
    release({400, 160}, Qt::AltModifier);
    ASSERT_TRUE(std::holds_alternative<ByMarks>(placeOf("A")));
    key(Qt::Key_1);
    auto* first = m_window.findChild<QLineEdit*>(QStringLiteral("entry0"));
    auto* second = m_window.findChild<QLineEdit*>(QStringLiteral("entry1"));
    QTest::keyClicks(first, QStringLiteral("40"));
    QTest::keyClick(first, Qt::Key_Tab);
    ASSERT_TRUE(second->hasFocus());
    QTest::keyClicks(second, QStringLiteral("170"));
    QTest::keyClick(second, Qt::Key_Return);
    EXPECT_EQ(placeOf("A"), Place(ByMarks{{Edge::Left, 140}, {Edge::Right, 170}}));
}

TEST_F(LayingByHand, MarksAreLaidByAChoiceOnEitherFace) {
    auto* choice = m_window.findChild<QComboBox*>(QStringLiteral("choice3"));
    const auto choose = [&](int option) {
        choice->setCurrentIndex(option);
        Q_EMIT choice->activated(option);
    };
    choose(1);
    drag({0, 90}, {400, 90});
    EXPECT_FALSE(project().lines.front().cut);
    EXPECT_EQ(project().lines.front().drawnOn, Face::Layout);
    key(Qt::Key_Escape);
    choose(2);
    drag({0, 120}, {400, 120});
    EXPECT_FALSE(project().lines.back().cut);
    EXPECT_EQ(project().lines.back().drawnOn, Face::Back);
    key(Qt::Key_Escape);
    choose(3);
    press({0, 150});
    moveTo({400, 150});
    auto* inHand = m_window.findChild<QComboBox*>(QStringLiteral("choice2"));
    EXPECT_EQ(inHand->currentIndex(), 3);
    inHand->setCurrentIndex(0);
    Q_EMIT inHand->activated(0);
    release({400, 150});
    EXPECT_TRUE(project().lines.back().cut);
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

// Expected from: pencil. The base's choice goes bottom, left, top, right, then the lines.
TEST_F(LayingByHand, ALineIsTypedFromAnotherLine) {
    drag({0, 90}, {400, 90});
    key(Qt::Key_Escape);
    auto* from = m_window.findChild<QComboBox*>(QStringLiteral("choice0"));
    ASSERT_TRUE(from->isVisible());
    from->setFocus();
    for (int i = 0; i < 4; ++i) QTest::keyClick(from, Qt::Key_Down);
    type("entry1", "56");
    EXPECT_EQ(placeOf("B"), Place(ByOffset{LineId("A"), 56}));
}

TEST_F(LayingByHand, AnAngleIsTypedAlone) {
    auto* distanceField = m_window.findChild<QLineEdit*>(QStringLiteral("entry1"));
    distanceField->setFocus();
    QTest::keyClicks(distanceField, QStringLiteral("100"));
    type("entry2", "2.5");
    ASSERT_TRUE(std::holds_alternative<ByAngle>(placeOf("A")));
    EXPECT_EQ(std::get<ByAngle>(placeOf("A")).angle, 2.5);
    const auto& run = m_window.session().solved().lines.front();
    EXPECT_NEAR((run.to.y - run.from.y) / (run.to.x - run.from.x), 0.0436609, 1e-7);
}

}  // namespace
}  // namespace kerfwall

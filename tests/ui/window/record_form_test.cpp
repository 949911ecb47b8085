// SPDX-License-Identifier: GPL-3.0-or-later
// What is measured while making, entered by hand on the job card. The window of the hand: A 90, B 146, C 110, D 290.
#include <QDir>
#include <QPushButton>

#include "core/says/project_text.h"
#include "tests/ui/window/hand_on_sheet.h"
#include "ui/record_form.h"
#include "ui/remedy_button.h"

namespace kerfwall {
namespace {

class RecordOnSheet : public HandOnSheet {
protected:
    void SetUp() override {
        HandOnSheet::SetUp();
        layWindow();
        key(Qt::Key_E, Qt::ControlModifier);
        ASSERT_TRUE(form()->isVisible());
    }
    RecordForm* form() { return m_window.findChild<RecordForm*>(); }
    QComboBox* what() { return m_window.findChild<QComboBox*>(QStringLiteral("recordWhat")); }
    void measure(const char* choice, const char* size) {
        const int index = what()->findText(QString::fromLatin1(choice), Qt::MatchStartsWith);
        ASSERT_GE(index, 0) << choice;
        what()->setFocus();
        while (what()->currentIndex() != index) QTest::keyClick(what(), what()->currentIndex() < index ? Qt::Key_Down : Qt::Key_Up);
        type("recordSize", size);
    }
    QStringList answers() {
        QStringList all;
        for (const QLabel* label : form()->findChildren<QLabel*>(QStringLiteral("recordAnswer"))) {
            if (label->isVisible()) all << label->text();
        }
        return all;
    }
    template <class Widget>
    std::vector<Widget*> shown(const char* name) {
        std::vector<Widget*> all;
        for (Widget* each : form()->findChildren<Widget*>(QString::fromLatin1(name))) {
            if (each->isVisible()) all.push_back(each);
        }
        return all;
    }
};

// Expected from: pencil: B found at 145.6 is 0.4 short; its fence goes from 142.8 to 143.2.
TEST_F(RecordOnSheet, AShortWallIsAnsweredWithTheNewSetting) {
    measure("B, 146.0 mm from the bottom", "145.6");
    ASSERT_EQ(project().record.size(), 1U);
    EXPECT_EQ(project().record[0].line, std::pair(LineId("B"), Edge::Bottom));
    EXPECT_EQ(project().record[0].measured, 145.6);
    ASSERT_EQ(answers().size(), 1);
    EXPECT_TRUE(answers()[0].contains(QStringLiteral("from 142.8 mm to 143.2 mm"))) << answers()[0].toStdString();
    EXPECT_TRUE(answers()[0].contains(QStringLiteral("peel 2 layers")));
    EXPECT_TRUE(readProject(writeProject(project())).has_value());
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Enter what was measured"));
    EXPECT_TRUE(m_window.findChild<QLineEdit*>(QStringLiteral("recordSize"))->text().isEmpty()) << "ready for the next";
    m_window.session().undo();
    EXPECT_TRUE(project().record.empty());
    QTRY_COMPARE(answers().size(), 0);
}

// Expected from: pencil: 0.4 is four layers of 0.1.
TEST_F(RecordOnSheet, AnotherTapeGivesOtherLayers) {
    measure("B, 146.0 mm from the bottom", "145.6");
    type("recordLayer", "0.1");
    ASSERT_EQ(answers().size(), 1);
    EXPECT_TRUE(answers()[0].contains(QStringLiteral("peel 4 layers of 0.10 mm tape"))) << answers()[0].toStdString();
}

// Expected from: pencil: A found at 89.7 is 0.3 past; laid there, B goes to 145.7.
TEST_F(RecordOnSheet, AWallPastItsLineTakesItsOpeningAlong) {
    measure("A, 90.0 mm from the bottom", "89.7");
    ASSERT_EQ(answers().size(), 1);
    EXPECT_TRUE(answers()[0].contains(QStringLiteral("comes out 56.3 mm")));
    const auto offers = shown<RemedyButton>("remedy");
    ASSERT_EQ(offers.size(), 1U);
    QTest::mouseClick(offers[0], Qt::LeftButton);
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 89.7}));
    EXPECT_EQ(placeOf("B"), Place(ByOffset{Edge::Bottom, 145.7}));
    EXPECT_EQ(project().cutouts.size(), 1U);
    EXPECT_EQ(answers(), QStringList{QStringLiteral("Wall A stands on its line.")});
    m_window.session().undo();
    EXPECT_EQ(placeOf("B"), Place(ByOffset{Edge::Bottom, 146}));
}

TEST_F(RecordOnSheet, AMeasureIsTakenOutAgain) {
    measure("A, 90.0 mm from the bottom", "90.4");
    measure("C to D", "179.6");
    ASSERT_EQ(project().record.size(), 2U);
    auto* takeOut = m_window.findChild<QPushButton*>(QStringLiteral("recordTakeOut0"));
    QTest::keyClick(takeOut, Qt::Key_Space);
    ASSERT_EQ(project().record.size(), 1U);
    EXPECT_TRUE(project().record[0].between);
    EXPECT_EQ(answers().size(), 1);
}

// Expected from: the promise: what is picked on the plan is what is measured next.
TEST_F(RecordOnSheet, APickedLineIsChosen) {
    m_window.selection().pickLine("D");
    EXPECT_TRUE(what()->currentText().startsWith(QStringLiteral("D, 290.0 mm from the left")));
}

TEST_F(RecordOnSheet, WhatIsNoLengthIsToldAndEscLeaves) {
    measure("A, 90.0 mm from the bottom", "wide");
    EXPECT_TRUE(project().record.empty());
    EXPECT_TRUE(m_window.findChild<QLabel*>(QStringLiteral("recordTrouble"))->isVisible());
    QTest::keyClick(m_window.findChild<QLineEdit*>(QStringLiteral("recordSize")), Qt::Key_Escape);
    QTest::keyClick(m_window.findChild<QLineEdit*>(QStringLiteral("recordSize")), Qt::Key_Escape);
    EXPECT_FALSE(form()->isVisible());
}

TEST_F(RecordOnSheet, PicturesOfTheForm) {
    const QString folder = qEnvironmentVariable("KERFWALL_FORM_PICTURES");
    if (folder.isEmpty()) GTEST_SKIP() << "no folder asked for";
    measure("A, 90.0 mm from the bottom", "89.7");
    measure("D, 290.0 mm from the left", "289.6");
    for (const Look look : {Look::Light, Look::Dark}) {
        m_window.setLook(look);
        QTest::qWait(300);
        m_window.grab().save(QDir(folder).filePath(QStringLiteral("record-%1.png").arg(look == Look::Light ? QStringLiteral("light") : QStringLiteral("dark"))));
    }
    m_window.setLook(Look::Light);
}

}  // namespace
}  // namespace kerfwall

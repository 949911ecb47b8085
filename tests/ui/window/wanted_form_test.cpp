// SPDX-License-Identifier: GPL-3.0-or-later
#include <QComboBox>
#include <QPushButton>
#include <fstream>
#include <sstream>
#include <string>
#include <tuple>
#include <vector>

#include "core/says/project_text.h"
#include "tests/ui/window/hand_on_sheet.h"
#include "ui/length_field.h"

namespace kerfwall {
namespace {

class WantedOnSheet : public HandOnSheet {
protected:
    template <class Widget>
    Widget* found(const char* name) {
        auto* widget = m_window.findChild<Widget*>(QString::fromLatin1(name));
        EXPECT_TRUE(widget) << name;
        return widget;
    }
    QPushButton* button(const char* name) { return found<QPushButton>(name); }
    void pressButton(const char* name) { QTest::mouseClick(button(name), Qt::LeftButton); }
    QString told(const char* name) {
        auto* label = found<QLabel>(name);
        return label->isVisible() ? label->text() : QString();
    }
    /// Types into whatever has the focus.
    void typeOn(const char* text) { QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(text)); }
    void typeInto(const char* name, const char* text) {
        auto* field = found<LengthField>(name);
        ASSERT_TRUE(field->isVisible()) << name;
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, QString::fromUtf8(text));
    }
    void chooseIn(const char* name, int option) {
        auto* box = found<QComboBox>(name);
        ASSERT_TRUE(box->isVisible()) << name;
        box->setFocus();
        QTest::keyClick(box, Qt::Key_Home);
        for (int i = 0; i < option; ++i) QTest::keyClick(box, Qt::Key_Down);
        ASSERT_EQ(box->currentIndex(), option);
    }
    void tab() { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab); }
    void enter() { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return); }

    void takeBush() {
        key(Qt::Key_F7);
        auto* by = found<QComboBox>("useBy");
        by->setFocus();
        QTest::keyClick(by, Qt::Key_Down);
        type("bush", "24");
        type("useBit", "12.7");
        pressButton("formDone");
    }
    void openForm() {
        key(Qt::Key_F8);
        ASSERT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("wantedWidth"));
    }
};

Project crateEnd() {
    std::ifstream file(KERFWALL_SAMPLES "/crate_end.kerfwall");
    std::stringstream text;
    text << file.rdbuf();
    return readProject(text.str()).value();
}

// Expected from: the sample, laid out by hand. The corner is typed as half the bit.
TEST_F(WantedOnSheet, FromAnEmptySheetToTheCrateEndByMouseAndKeys) {
    takeBush();
    ASSERT_TRUE(button("beginWanted")->isVisible());
    pressButton("beginWanted");
    ASSERT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("wantedWidth"));
    EXPECT_FALSE(button("beginWanted")->isVisible());
    typeOn("110");
    tab();
    typeOn("20+15");
    tab();
    typeOn("12.7/2");
    EXPECT_TRUE(told("wantedAnswer").contains(QStringLiteral("121.3"))) << told("wantedAnswer").toStdString();
    pressButton("wantedLay");

    const Project sample = crateEnd();
    EXPECT_EQ(project().lines, sample.lines);
    ASSERT_EQ(project().cutouts.size(), 1u);
    EXPECT_EQ(project().cutouts[0].wanted, sample.cutouts[0].wanted);
    EXPECT_EQ(project().cutouts[0].seeds, sample.cutouts[0].seeds);
    EXPECT_EQ(project().use.bush, sample.use.bush);
    EXPECT_FALSE(button("wantedLay")->isVisible());
    EXPECT_FALSE(button("beginWanted")->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), &m_window.plan());
}

// Expected from: the rule of one undo step for one intention.
TEST_F(WantedOnSheet, ItIsOneStepThatUndoNames) {
    takeBush();
    const Project before = project();
    openForm();
    typeOn("110");
    tab();
    typeOn("35");
    enter();
    EXPECT_EQ(project().lines.size(), 4u);
    EXPECT_EQ(project().cutouts.at(0).wanted->cornerRadius, 6.35);
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Lay a window of the size wanted"));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(project(), before);
    EXPECT_TRUE(button("beginWanted")->isVisible());
}

// Expected from: pencil. A bearing of the bit's size: walls on the edges, 100 -+ 25 and 150 -+ 40.
TEST_F(WantedOnSheet, ThePlaceIsCountedFromTheEdges) {
    openForm();
    for (const char* text : {"80", "50"}) {
        typeOn(text);
        tab();
    }
    typeInto("wantedAcross", "150");
    EXPECT_EQ(found<QComboBox>("wantedAcrossFrom")->currentText(), QStringLiteral("Middle from the left edge"));
    typeInto("wantedUp", "100");
    pressButton("wantedLay");
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 75}));
    EXPECT_EQ(placeOf("B"), Place(ByOffset{Edge::Bottom, 125}));
    EXPECT_EQ(placeOf("C"), Place(ByOffset{Edge::Left, 110}));
    EXPECT_EQ(placeOf("D"), Place(ByOffset{Edge::Left, 190}));
}

// Expected from: pencil. 400 - 2 * 10 is all a window between walls on its edges can have of the width.
TEST_F(WantedOnSheet, ARefusalStandsBesideItsField) {
    openForm();
    typeOn("381");
    tab();
    typeOn("60");
    EXPECT_TRUE(told("wantedWidthTrouble").contains(QStringLiteral("431.0 mm by 110.0 mm")))
        << told("wantedWidthTrouble").toStdString();
    EXPECT_TRUE(told("wantedHeightTrouble").isEmpty());
    EXPECT_FALSE(button("wantedLay")->isEnabled());
    tab();
    typeOn("5");
    EXPECT_TRUE(told("wantedCornerTrouble").contains(QStringLiteral("6.35")));
    enter();
    EXPECT_TRUE(project().lines.empty());
}

TEST_F(WantedOnSheet, WhatCannotBeReadIsSaidAndNotLaid) {
    openForm();
    typeOn("110");
    tab();
    typeOn("35+");
    EXPECT_TRUE(told("wantedHeightTrouble").startsWith(QStringLiteral("At the end:")));
    enter();
    EXPECT_TRUE(project().lines.empty());
    typeOn("36");  // Return has marked the whole field: it is typed over
    EXPECT_TRUE(told("wantedHeightTrouble").isEmpty());
    enter();
    ASSERT_EQ(project().lines.size(), 4u);
    EXPECT_EQ(project().cutouts.at(0).wanted->outline.at(2).y - project().cutouts.at(0).wanted->outline.at(0).y, 36);
}

// Expected from: LengthField's contract: left with nonsense in it, it holds what it held before.
TEST_F(WantedOnSheet, NonsenseLeftBehindIsNoWish) {
    openForm();
    tab();
    typeOn("35");
    tab();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Backtab, Qt::ShiftModifier);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Backtab, Qt::ShiftModifier);
    typeOn("110 wide");
    tab();
    EXPECT_TRUE(found<LengthField>("wantedWidth")->text().isEmpty());
    EXPECT_FALSE(button("wantedLay")->isEnabled());
}

// Expected from: pencil. Corners of 10 want a bit of 20; the bench has it, and a bush of 24 that clears it by 4.
TEST_F(WantedOnSheet, OffersOtherToolsOfTheBenchBeforeItBores) {
    Project project = m_window.session().project();
    project.bench = stockBench();
    project.bench->bushes = {24};
    project.bench->bits = {20};
    m_window.session().start(project);
    openForm();
    for (const char* text : {"110", "35", "10"}) {
        typeOn(text);
        tab();
    }
    EXPECT_TRUE(told("wantedAnswer").contains(QStringLiteral("bored to a radius of 10")));
    ASSERT_TRUE(button("wantedOther")->isVisible());
    pressButton("wantedOther");
    EXPECT_EQ(this->project().use.bush, 24);
    EXPECT_EQ(this->project().use.bit, 20);
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 105.5}));
    EXPECT_TRUE(this->project().cutouts.at(0).corners.empty());
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(this->project(), project);
}

TEST_F(WantedOnSheet, EscPutsTheFormAside) {
    openForm();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_FALSE(button("wantedLay")->isVisible());
    EXPECT_TRUE(button("beginWanted")->isVisible());
    EXPECT_TRUE(project().lines.empty());
}

// Pictures of the form for the eye: KERFWALL_FORM_PICTURES=<folder>.
class WantedPictures : public WantedOnSheet, public testing::WithParamInterface<std::tuple<Look, Units>> {
protected:
    void take(const char* state) {
        QTest::qWait(200);
        const auto [look, units] = GetParam();
        const QString name = QStringLiteral("%1/%2_%3_%4.png")
                                 .arg(qEnvironmentVariable("KERFWALL_FORM_PICTURES"),
                                      look == Look::Dark ? QStringLiteral("dark") : QStringLiteral("light"),
                                      units == Units::Inches ? QStringLiteral("inch") : QStringLiteral("mm"),
                                      QString::fromLatin1(state));
        ASSERT_TRUE(m_window.grab().save(name));
    }
};

TEST_P(WantedPictures, OfEachState) {
    if (qEnvironmentVariable("KERFWALL_FORM_PICTURES").isEmpty()) GTEST_SKIP() << "no folder asked for";
    const auto [look, units] = GetParam();
    const bool inches = units == Units::Inches;
    m_window.resize(1280, 720);
    takeBush();
    m_window.setLook(look);
    if (inches) key(Qt::Key_F9);
    take("empty");
    openForm();
    const std::vector<const char*> wish = inches ? std::vector{"4 1/2", "1-1/4", "7/16"} : std::vector{"110", "35", "10"};
    for (const char* text : wish) {
        typeOn(text);
        tab();
    }
    take("form");
    typeOn(inches ? "1" : "20");
    take("refused");
    tab();
    type("wantedAcross", inches ? "8" : "200");
    take("laid");
}

INSTANTIATE_TEST_SUITE_P(All, WantedPictures,
                         testing::Combine(testing::Values(Look::Light, Look::Dark),
                                          testing::Values(Units::Millimetres, Units::Inches)),
                         [](const auto& test) { return "Picture" + std::to_string(test.index); });

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include <QClipboard>
#include <QComboBox>
#include <QPlainTextEdit>
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
    EXPECT_EQ(found<QComboBox>("wantedAcrossFrom")->currentText(), QStringLiteral("Middle from left edge"));
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

Project sampleOf(const char* name) {
    std::ifstream file(std::string(KERFWALL_SAMPLES "/") + name);
    std::stringstream text;
    text << file.rdbuf();
    return readProject(text.str()).value();
}

void startOn(Session& session, double width, double height, double thickness) {
    Project project = session.project();
    project.panel.width = width;
    project.panel.height = height;
    project.panel.thickness = thickness;
    session.start(project);
}

// Expected from: the sample, laid out by hand: 340 over the feet, 280 up to the rail, legs 90 wide there, leaning 3 degrees.
TEST_F(WantedOnSheet, ALegFrameComesOutAsTheBenchLeg) {
    startOn(m_window.session(), 500, 400, 18);
    openForm();
    chooseIn("wantedShape", 1);
    EXPECT_FALSE(found<LengthField>("wantedWidth")->isVisible());
    typeInto("wantedSpan", "340");
    typeInto("wantedLegHeight", "280");
    typeInto("wantedLegTop", "90");
    typeInto("wantedInnerLean", "3");
    EXPECT_TRUE(told("wantedAnswer").contains(QStringLiteral("241.44"))) << told("wantedAnswer").toStdString();
    enter();
    const Project sample = sampleOf("bench_leg.kerfwall");
    EXPECT_EQ(placeOf("A"), findLine(sample, "R")->place);
    EXPECT_EQ(placeOf("B"), findLine(sample, "L")->place);
    EXPECT_EQ(placeOf("C"), (Place(ByMirror{"B", Centre::Upright})));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Lay a leg frame of the size wanted"));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(project().lines.empty());
}

// Expected from: the rule that of a leg's foot and its lean the one typed last holds.
TEST_F(WantedOnSheet, TheFootAndTheLeanTakeTurns) {
    startOn(m_window.session(), 500, 400, 18);
    openForm();
    chooseIn("wantedShape", 1);
    typeInto("wantedSpan", "340");
    typeInto("wantedLegHeight", "280");
    typeInto("wantedLegTop", "90");
    typeInto("wantedInnerLean", "3");
    typeInto("wantedLegFoot", "90");
    EXPECT_TRUE(found<LengthField>("wantedInnerLean")->text().isEmpty());
    typeInto("wantedFeet", "30");
    enter();
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 310}));
    EXPECT_EQ(placeOf("B"), Place(ByOffset{Edge::Left, 170}));
}

TEST_F(WantedOnSheet, LegsThatMeetAreToldBesideTheirWidth) {
    openForm();
    chooseIn("wantedShape", 1);
    typeInto("wantedSpan", "200");
    typeInto("wantedLegHeight", "150");
    typeInto("wantedLegTop", "100");
    EXPECT_TRUE(told("wantedLegTopTrouble").contains(QStringLiteral("100.0 mm"))) << told("wantedLegTopTrouble").toStdString();
    EXPECT_FALSE(button("wantedLay")->isEnabled());
}

// Expected from: the sample, laid out by hand.
TEST_F(WantedOnSheet, APastedListComesOutAsThePennant) {
    startOn(m_window.session(), 500, 300, 12);
    openForm();
    chooseIn("wantedShape", 2);
    auto* list = found<QPlainTextEdit>("wantedCorners");
    list->setFocus();
    QApplication::clipboard()->setText(QStringLiteral("110, 90\n370, 90\n330, 150\n370, 210\n110, 210"));
    QTest::keyClick(list, Qt::Key_V, Qt::ControlModifier);
    EXPECT_TRUE(told("wantedCornersTrouble").isEmpty());
    pressButton("wantedLay");
    const Project sample = sampleOf("stall_pennant.kerfwall");
    for (const auto& [ours, theirs] : {std::pair("A", "B"), std::pair("B", "T"), std::pair("C", "L"), std::pair("D", "N1")}) {
        EXPECT_EQ(placeOf(ours), findLine(sample, theirs)->place);
    }
    EXPECT_EQ(placeOf("E"), (Place(ByMirror{"D", Centre::Level})));
    EXPECT_EQ(project().cutouts.at(0).wanted, sample.cutouts.at(0).wanted);
}

TEST_F(WantedOnSheet, EachBadLineIsToldUntilItIsMended) {
    openForm();
    chooseIn("wantedShape", 2);
    auto* list = found<QPlainTextEdit>("wantedCorners");
    list->setFocus();
    QTest::keyClicks(list, QStringLiteral("100, 60\r200, 40+20\r200 140"));
    EXPECT_TRUE(told("wantedCornersTrouble").startsWith(QStringLiteral("Line 3: write x"))) << told("wantedCornersTrouble").toStdString();
    EXPECT_FALSE(button("wantedLay")->isEnabled());
    for (int i = 0; i < 4; ++i) QTest::keyClick(list, Qt::Key_Backspace);
    QTest::keyClicks(list, QStringLiteral(", 280/2"));
    EXPECT_TRUE(told("wantedCornersTrouble").isEmpty()) << told("wantedCornersTrouble").toStdString();
    pressButton("wantedLay");
    ASSERT_EQ(project().cutouts.size(), 1u);
    EXPECT_EQ(project().cutouts[0].wanted->outline, (std::vector<Point>{{100, 60}, {200, 60}, {200, 140}}));
}

TEST_F(WantedOnSheet, SidesThatCrossAreToldUnderTheList) {
    openForm();
    chooseIn("wantedShape", 2);
    auto* list = found<QPlainTextEdit>("wantedCorners");
    list->setFocus();
    QTest::keyClicks(list, QStringLiteral("100, 60\r200, 160\r200, 60\r100, 160"));
    EXPECT_TRUE(told("wantedCornersTrouble").contains(QStringLiteral("corner 1 to 2 meets"))) << told("wantedCornersTrouble").toStdString();
}

// Expected from: pencil: what is clicked on whole millimetres is what is wanted.
TEST_F(WantedOnSheet, CornersAreClickedOnThePlan) {
    openForm();
    chooseIn("wantedShape", 2);
    pressButton("wantedClick");
    EXPECT_TRUE(sentence().contains(QStringLiteral("at least three")));
    for (const Point corner : {Point{100, 60}, {200, 60}, {230, 90}}) click(corner);
    key(Qt::Key_Escape);
    for (const Point corner : {Point{200, 140}, {100, 140}}) click(corner);
    click({100, 60});
    EXPECT_FALSE(button("wantedClick")->isChecked());
    ASSERT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("wantedLay"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    ASSERT_EQ(project().cutouts.size(), 1u);
    EXPECT_EQ(project().cutouts[0].wanted->outline, (std::vector<Point>{{100, 60}, {200, 60}, {200, 140}, {100, 140}}));
    EXPECT_FALSE(sentence().contains(QStringLiteral("corners of the opening")));
}

TEST_F(WantedOnSheet, EscTakesCornersBackAndThenLeavesClicking) {
    openForm();
    chooseIn("wantedShape", 2);
    pressButton("wantedClick");
    click({100, 60});
    key(Qt::Key_Escape);
    EXPECT_TRUE(found<QPlainTextEdit>("wantedCorners")->toPlainText().isEmpty());
    EXPECT_TRUE(button("wantedClick")->isChecked());
    key(Qt::Key_Escape);
    EXPECT_FALSE(button("wantedClick")->isChecked());
    EXPECT_TRUE(project().lines.empty());
}

TEST_F(WantedOnSheet, CornersAreClickedByKeysToo) {
    openForm();
    chooseIn("wantedShape", 2);
    pressButton("wantedClick");
    key(Qt::Key_Right);
    key(Qt::Key_Space);
    EXPECT_EQ(found<QPlainTextEdit>("wantedCorners")->toPlainText(), QStringLiteral("201.0, 125.0"));
}

// Expected from: pencil. The crate end reaches from (20, 25) to (380, 225); 40 under its upper edge the window ends at
// 185, and the bush's wall stands at 190.65.
TEST_F(WantedOnSheet, ThePlaceIsCountedFromTheWorksEdges) {
    Project crate = crateEnd();
    crate.lines.clear();
    crate.cutouts.clear();
    m_window.session().start(crate);
    openForm();
    typeOn("110");
    tab();
    typeOn("35");
    chooseIn("wantedPlacedOn", 1);
    EXPECT_FALSE(found<LengthField>("wantedWorkWidth")->isVisible());
    EXPECT_EQ(found<LengthField>("wantedUp")->placeholderText(), QStringLiteral("worked out"));
    chooseIn("wantedUpFrom", 4);
    EXPECT_EQ(found<LengthField>("wantedUp")->placeholderText(), QStringLiteral("type how far"));
    EXPECT_FALSE(button("wantedLay")->isEnabled());
    typeInto("wantedUp", "40");
    enter();
    EXPECT_EQ(placeOf("B"), Place(ByOffset{Edge::Bottom, 190.65}));
    EXPECT_EQ(placeOf("C"), Place(ByOffset{Edge::Left, 139.35}));
}

// Expected from: pencil. In the middle of 400 x 250; work of 360 x 200 lies 40 over the window's upper side at 142.5.
TEST_F(WantedOnSheet, WorkThatIsNotDrawnYetIsSaidByItsSize) {
    openForm();
    typeOn("110");
    tab();
    typeOn("35");
    chooseIn("wantedPlacedOn", 1);
    typeInto("wantedWorkWidth", "360");
    typeInto("wantedWorkHeight", "200");
    chooseIn("wantedUpFrom", 4);
    typeInto("wantedUp", "40");
    enter();
    ASSERT_TRUE(project().workpiece.has_value());
    EXPECT_EQ(project().workpiece->outline, (std::vector<Point>{{20, -17.5}, {380, -17.5}, {380, 182.5}, {20, 182.5}}));
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 107.5}));
}

TEST_F(WantedOnSheet, LegsOnTheWorkStandOnItsLowerEdge) {
    Project bench = sampleOf("bench_leg.kerfwall");
    bench.lines.clear();
    bench.cutouts.clear();
    m_window.session().start(bench);
    openForm();
    chooseIn("wantedShape", 1);
    typeInto("wantedSpan", "340");
    typeInto("wantedLegHeight", "250");
    typeInto("wantedLegTop", "90");
    chooseIn("wantedPlacedOn", 1);
    EXPECT_FALSE(found<LengthField>("wantedFeet")->isVisible());
    EXPECT_FALSE(found<LengthField>("wantedUp")->isVisible());
    pressButton("wantedLay");
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 270}));
}

// Expected from: pencil. 480 x 60 between walls on its edges wants 530 x 110, a blank of tens; the rack's smallest that
// holds it is 600 x 400.
TEST_F(WantedOnSheet, APanelTooSmallIsExchangedForABlank) {
    openForm();
    typeOn("480");
    tab();
    typeOn("60");
    EXPECT_TRUE(told("wantedWidthTrouble").contains(QStringLiteral("530.0 mm by 110.0 mm")));
    ASSERT_TRUE(button("wantedRack")->isVisible());
    EXPECT_TRUE(button("wantedRack")->text().contains(QStringLiteral("600 × 400 × 12"))) << button("wantedRack")->text().toStdString();
    pressButton("wantedBlank");
    EXPECT_EQ(project().panel.width, 530);
    EXPECT_EQ(project().panel.height, 110);
    ASSERT_TRUE(button("wantedLay")->isEnabled());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 25}));
    EXPECT_EQ(placeOf("C"), Place(ByOffset{Edge::Left, 25}));
    key(Qt::Key_Z, Qt::ControlModifier);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(project().panel.width, 400);
}

TEST_F(WantedOnSheet, TheRacksPanelIsTaken) {
    openForm();
    typeOn("480");
    tab();
    typeOn("60");
    pressButton("wantedRack");
    EXPECT_EQ(project().panel.width, 600);
    EXPECT_FALSE(button("wantedRack")->isVisible());
}

// Expected from: the rule that a panel with something on it is not exchanged.
TEST_F(WantedOnSheet, APanelInUseIsNotExchanged) {
    drag({0, 90}, {400, 90});
    openForm();
    typeOn("480");
    tab();
    typeOn("60");
    EXPECT_FALSE(button("wantedBlank")->isVisible());
    EXPECT_FALSE(button("wantedRack")->isVisible());
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
    openForm();
    chooseIn("wantedShape", 1);
    take("legs");
    chooseIn("wantedShape", 2);
    found<QPlainTextEdit>("wantedCorners")->setFocus();
    const QString corners = inches ? QStringLiteral("4, 2\r9 1/2, 2\r8, 4 1/2\r9 1/2, 7\r4, 7") : QStringLiteral("110, 60\r300, 60\r270, 125\r300, 190\r110, 190");
    m_window.session().startNew();
    if (inches) key(Qt::Key_F9);
    found<QPlainTextEdit>("wantedCorners")->setFocus();
    QTest::keyClicks(found<QPlainTextEdit>("wantedCorners"), corners);
    take("polygon");
}

INSTANTIATE_TEST_SUITE_P(All, WantedPictures,
                         testing::Combine(testing::Values(Look::Light, Look::Dark),
                                          testing::Values(Units::Millimetres, Units::Inches)),
                         [](const auto& test) { return "Picture" + std::to_string(test.index); });

}  // namespace
}  // namespace kerfwall

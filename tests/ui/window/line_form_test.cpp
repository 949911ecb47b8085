// SPDX-License-Identifier: GPL-3.0-or-later
// The way a line was laid, changed on its form: one test for each way and each thing that can be set.
#include <QAbstractItemView>
#include <QComboBox>

#include "core/geometry/solve.h"
#include "tests/ui/window/hand_on_sheet.h"

namespace kerfwall {
namespace {

class LineOnTheForm : public HandOnSheet {
protected:
    void SetUp() override {
        HandOnSheet::SetUp();
        layRectangle();
        m_window.selection().pickLine("A");
        key(Qt::Key_L, Qt::ControlModifier);
    }
    QComboBox* box(const char* name) { return m_window.findChild<QComboBox*>(QString::fromLatin1(name)); }
    void choose(const char* name, const char* option) {
        QComboBox* choice = box(name);
        ASSERT_TRUE(choice->isVisible()) << name;
        const int index = choice->findText(QString::fromLatin1(option));
        ASSERT_GE(index, 0) << option;
        choice->showPopup();
        choice->view()->setCurrentIndex(choice->model()->index(index, 0));
        QTest::keyClick(choice->view(), Qt::Key_Return);
    }
    QString trouble() { return m_window.findChild<QLabel*>(QStringLiteral("lineTrouble"))->text(); }
    std::pair<Point, Point> run(const LineId& id) { return runOf(m_window.session().solved(), id).value_or(std::pair<Point, Point>{}); }
    const LayoutLine& line(const LineId& id) { return *findLine(project(), id); }
};

TEST_F(LineOnTheForm, ShowsFromWhatAndHowFarAndTakesBoth) {
    EXPECT_EQ(box("lineWay")->currentText(), QStringLiteral("by a distance"));
    EXPECT_EQ(box("lineFrom")->currentText(), QStringLiteral("bottom edge"));
    type("lineNumber0", "100+1/2");
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 100.5}));
    choose("lineFrom", "top edge");
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Top, 100.5}));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Set line A"));
}

TEST_F(LineOnTheForm, EveryWayOfLayingKeepsTheLineWhereItIs) {
    const auto before = run("A");
    for (const char* way : {"by an angle", "through two points", "between two edge marks", "by a distance"}) {
        choose("lineWay", way);
        EXPECT_EQ(box("lineWay")->currentText(), QString::fromLatin1(way));
        EXPECT_EQ(run("A"), before) << way;
    }
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 90}));
}

TEST_F(LineOnTheForm, AnAngleKeepsItsPointAndAPointItsAngle) {
    choose("lineWay", "by an angle");
    type("lineNumber0", "2.5");
    EXPECT_EQ(placeOf("A"), Place(ByAngle{Edge::Bottom, 2.5, Point{0, 90}}));
    type("lineNumber2", "80");
    EXPECT_EQ(placeOf("A"), Place(ByAngle{Edge::Bottom, 2.5, Point{0, 80}}));
    choose("lineFrom", "line B");
    EXPECT_EQ(placeOf("A"), Place(ByAngle{LineId("B"), 2.5, Point{0, 80}}));
}

TEST_F(LineOnTheForm, ThroughACrossingItMovesAlong) {
    choose("lineWay", "by an angle");
    type("lineNumber0", "5");
    choose("lineThrough", "crossing of B, C");
    EXPECT_EQ(placeOf("A"), Place(ByAngle{Edge::Bottom, 5, CrossingOf{"B", "C"}}));
    EXPECT_EQ(box("lineThrough")->currentText(), QStringLiteral("crossing of B, C"));
    choose("lineThrough", "a point");
    EXPECT_EQ(placeOf("A"), Place(ByAngle{Edge::Bottom, 5, Point{110, 146}}));
}

TEST_F(LineOnTheForm, TwoPointsAreTyped) {
    choose("lineWay", "through two points");
    type("lineNumber1", "95");
    EXPECT_EQ(placeOf("A"), Place(ByPoints{{0, 95}, {400, 90}}));
    type("lineNumber2", "300");
    EXPECT_EQ(placeOf("A"), Place(ByPoints{{0, 95}, {300, 90}}));
}

// Expected from: pencil. The left edge begins at the top: y 90 is 160 along it.
TEST_F(LineOnTheForm, EdgeMarksAreChosenAndTyped) {
    choose("lineWay", "between two edge marks");
    ASSERT_EQ(placeOf("A"), Place(ByMarks{{Edge::Left, 160}, {Edge::Right, 90}}));
    type("lineNumber0", "150");
    EXPECT_EQ(placeOf("A"), Place(ByMarks{{Edge::Left, 150}, {Edge::Right, 90}}));
    choose("lineEdgeB", "top edge");
    EXPECT_EQ(placeOf("A"), Place(ByMarks{{Edge::Left, 150}, {Edge::Top, 90}}));
    type("lineNumber0", "260");
    EXPECT_EQ(placeOf("A"), Place(ByMarks{{Edge::Left, 150}, {Edge::Top, 90}}));
    EXPECT_FALSE(trouble().isEmpty());
}

// Expected from: pencil. D at 290 is the image of C at 110; about the level centre line it would lie on itself, which C does.
TEST_F(LineOnTheForm, AMirrorImageTakesAnotherLineAndAnotherAxis) {
    m_window.selection().pickLine("D");
    choose("lineWay", "as a mirror image");
    EXPECT_EQ(placeOf("D"), Place(ByMirror{"C", Centre::Upright}));
    EXPECT_EQ(run("D").first.x, 290);
    choose("lineOf", "line A");
    EXPECT_EQ(placeOf("D"), Place(ByMirror{"A", Centre::Upright}));
    choose("lineAbout", "line B");
    EXPECT_EQ(placeOf("D"), Place(ByMirror{"A", LineId("B")}));
    EXPECT_EQ(run("D").first.y, 202);
}

TEST_F(LineOnTheForm, CutOrMarkFaceExtentAndSawAreChosen) {
    choose("lineExtent", "stopped");
    EXPECT_EQ(line("A").extent, Extent::Stopped);
    choose("lineSaw", "rail");
    EXPECT_EQ(line("A").saw, std::optional<std::string>("rail"));
    choose("lineSaw", "as the plan chooses");
    EXPECT_FALSE(line("A").saw);
    choose("lineMeans", "a mark only");
    EXPECT_FALSE(line("A").cut);
    EXPECT_FALSE(box("lineSaw")->isVisible());
    choose("lineFace", "the back");
    EXPECT_EQ(line("A").drawnOn, Face::Back);
}

TEST_F(LineOnTheForm, ANameIsTypedAndAnothersIsRefusedInASentence) {
    m_window.session().change(QStringLiteral("Hang"), [this] {
        Project next = project();
        LayoutLine hung;
        hung.id = "E";
        hung.place = ByOffset{LineId("A"), 20};
        next.lines.push_back(hung);
        return next;
    }());
    type("lineName", "sole");
    EXPECT_EQ(project().lines.front().id, "sole");
    EXPECT_EQ(placeOf("E"), Place(ByOffset{LineId("sole"), 20}));
    EXPECT_EQ(m_window.selection().line(), "sole");
    type("lineName", "B");
    EXPECT_EQ(project().lines.front().id, "sole");
    EXPECT_TRUE(trouble().contains(QStringLiteral("There is a line B already")));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(project().lines.front().id, "A");
}

TEST_F(LineOnTheForm, WithNothingPickedItSaysWhatToDo) {
    m_window.selection().clear();
    EXPECT_TRUE(trouble().contains(QStringLiteral("Pick a line")));
    EXPECT_FALSE(box("lineWay")->isVisible());
}

// Expected from: pencil. 90 from the bottom stays 90, 290 from the left 290; E, 30 over A, follows A; the image F of A about the
// level centre line of a panel 300 high is y 210 and follows both.
TEST_F(LineOnTheForm, WhatWasLaidFromAPanelEdgeOrALineMovesWithIt) {
    Project next = project();
    LayoutLine hung;
    hung.id = "E";
    hung.place = ByOffset{LineId("A"), 30};
    next.lines.push_back(hung);
    hung.id = "F";
    hung.place = ByMirror{"A", Centre::Level};
    next.lines.push_back(hung);
    hung.id = "G";
    hung.place = ByMarks{{Edge::Left, 50}, {Edge::Right, 100}};
    next.lines.push_back(hung);
    m_window.session().change(QStringLiteral("Hang"), next);
    key(Qt::Key_F6);
    type("panelHeight", "300");
    EXPECT_EQ(run("A").first.y, 90);
    EXPECT_EQ(run("E").first.y, 120);
    EXPECT_EQ(run("F").first.y, 210);
    EXPECT_EQ(run("G").first.y, 250);  // 50 down from the top left corner
    m_window.chooseTool(MainWindow::PickAt);
    drag({200, 90}, {200, 100});
    EXPECT_EQ(run("A").first.y, 100);
    EXPECT_EQ(run("E").first.y, 130);
    EXPECT_EQ(run("F").first.y, 200);
}

}  // namespace
}  // namespace kerfwall

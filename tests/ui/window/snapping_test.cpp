// SPDX-License-Identifier: GPL-3.0-or-later
// One test for each thing a line in hand holds on to; what it says at the pointer with it.
#include "tests/ui/window/hand_on_sheet.h"

namespace kerfwall {
namespace {

class SnappingByHand : public HandOnSheet {
protected:
    void lay(const LineId& id, const Place& place) {
        Project next = project();
        LayoutLine line;
        line.id = id;
        line.place = place;
        next.lines.push_back(line);
        m_window.session().change(QStringLiteral("Lay"), next);
    }
    void layGrid() {
        lay("A", ByOffset{Edge::Bottom, 90});
        lay("B", ByOffset{Edge::Bottom, 146});
        lay("C", ByOffset{Edge::Left, 110});
        lay("D", ByOffset{Edge::Left, 290});
    }
    /// The middle of the grid cut out, its two lower corners bored to 20.
    void boreGrid() {
        layGrid();
        Project next = project();
        next.cutouts.push_back({"cutout-1", {{200, 118}}, {{"A", "C", 20, {}}, {"A", "D", 20, {}}}, {}, {}});
        m_window.session().changeWhole(QStringLiteral("Bore"), next);
    }
    /// Drags without letting go, and gives what stands at the pointer.
    QString dragged(Point from, Point to) {
        m_window.chooseTool(MainWindow::LayAt);
        press(from);
        moveTo({(from.x + to.x) / 2, (from.y + to.y) / 2});
        moveTo(to);
        return note();
    }
    bool noteHas(const char* words) { return note().contains(QString::fromLatin1(words)); }
    std::size_t holdsShown() { return m_window.plan().tool()->inHand().holds.size(); }
};

TEST_F(SnappingByHand, WholeStepsAndParallel) {
    dragged({0, 71.2}, {400, 70.4});
    EXPECT_TRUE(noteHas("parallel to the bottom edge")) << note().toStdString();
    EXPECT_EQ(m_window.plan().tool()->inHand().references.size(), 1U);
    release({400, 70.4});
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 71}));
}

TEST_F(SnappingByHand, SquareToTheReferenceEdge) {
    dragged({150, 0}, {151, 250});
    EXPECT_TRUE(noteHas("square to the bottom edge"));
    release({151, 250});
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Left, 150}));
}

TEST_F(SnappingByHand, ParallelAndSquareToASlantingLine) {
    lay("A", ByPoints{{0, 50}, {400, 150}});
    dragged({0, 100}, {400, 200.6});
    EXPECT_TRUE(noteHas("parallel to line A"));
    release({400, 200.6});
    EXPECT_TRUE(std::holds_alternative<ByOffset>(placeOf("B")));
    dragged({100, 250}, {162, 0});
    EXPECT_TRUE(noteHas("square to line A"));
    release({162, 0});
    EXPECT_EQ(placeOf("C"), Place(ByAngle{LineId("A"), 90, Point{100, 250}}));
}

// Expected from: pencil. tan 6 degrees over 400 is 42.04, tan 6.5 degrees 45.58.
TEST_F(SnappingByHand, WholeAndHalfDegrees) {
    dragged({0, 40}, {400, 82.3});
    EXPECT_TRUE(note().contains(QStringLiteral("6° to the bottom edge"))) << note().toStdString();
    release({400, 82.3});
    EXPECT_EQ(placeOf("A"), Place(ByAngle{Edge::Bottom, 6, Point{0, 40}}));
    dragged({0, 150}, {400, 195.6});
    EXPECT_TRUE(note().contains(QStringLiteral("6.5° to the bottom edge"))) << note().toStdString();
    release({400, 195.6});
    EXPECT_EQ(placeOf("B"), Place(ByAngle{Edge::Bottom, 6.5, Point{0, 150}}));
}

TEST_F(SnappingByHand, TheEndOfALineAndTheMiddleOfAnEdge) {
    lay("A", ByMarks{{Edge::Left, 150.35}, {Edge::Bottom, 80.4}});
    dragged({0, 100.5}, {400, 100.2});
    EXPECT_TRUE(noteHas("at the end of line A"));
    EXPECT_GE(holdsShown(), 2U);
    release({400, 100.2});
    const Place laid = placeOf("B");
    ASSERT_TRUE(std::holds_alternative<ByOffset>(laid));
    EXPECT_NEAR(std::get<ByOffset>(laid).distance, 99.65, 1e-9);
    dragged({201.2, 0}, {200.6, 250});
    EXPECT_TRUE(noteHas("at the middle of the bottom edge"));
    release({200.6, 250});
    EXPECT_EQ(placeOf("C"), Place(ByOffset{Edge::Left, 200}));
}

TEST_F(SnappingByHand, ThroughTheCrossingItWasDraggedFrom) {
    layGrid();
    dragged({111, 91}, {270, 250});
    EXPECT_TRUE(noteHas("through the crossing of A and C"));
    release({270, 250});
    EXPECT_EQ(placeOf("E"), Place(ByAngle{Edge::Bottom, 45, CrossingOf{"A", "C"}}));
}

// Expected from: pencil. Moved up by 10, A crosses C at (110, 100), and the line by that crossing goes along.
TEST_F(SnappingByHand, ALineDrawnToACrossingMovesAlongWithIt) {
    layGrid();
    dragged({21, 0}, {271, 250});
    EXPECT_TRUE(noteHas("through the crossing of A and C"));
    release({271, 250});
    ASSERT_EQ(placeOf("E"), Place(ByAngle{Edge::Bottom, 45, CrossingOf{"A", "C"}}));
    m_window.chooseTool(MainWindow::PickAt);
    drag({200, 90}, {200, 100});
    ASSERT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 100}));
    const SolvedLine* line = findLine(m_window.session().solved(), "E");
    ASSERT_TRUE(line);
    EXPECT_NEAR(line->from.x, 10, 1e-9);
}

TEST_F(SnappingByHand, ThroughAPointOfAnotherLine) {
    lay("A", ByPoints{{50, 60}, {300, 200}});
    dragged({51, 61}, {50.4, 250});
    EXPECT_TRUE(noteHas("through a point of line A"));
    release({50.4, 250});
    EXPECT_EQ(placeOf("B"), Place(ByOffset{Edge::Left, 50}));
}

TEST_F(SnappingByHand, FromACornerOfThePanel) {
    dragged({1, 0}, {250, 250});
    EXPECT_TRUE(noteHas("from a corner of the panel"));
    release({250, 250});
    EXPECT_EQ(placeOf("A"), Place(ByAngle{Edge::Bottom, 45, Point{0, 0}}));
}

TEST_F(SnappingByHand, TangentToABore) {
    boreGrid();
    dragged({0, 110}, {127, 129});
    EXPECT_TRUE(noteHas("tangent to the bore at")) << note().toStdString();
    release({127, 129});
    const SolvedLine* line = findLine(m_window.session().solved(), "E");
    ASSERT_TRUE(line);
    EXPECT_NEAR(std::abs(cross(unit(line->to - line->from), Point{130, 110} - line->from)), 20, 1e-9);
}

TEST_F(SnappingByHand, MirrorOfALineAboutACentreLine) {
    layGrid();
    dragged({0, 160.3}, {400, 160});
    EXPECT_TRUE(noteHas("mirror of A about the level centre line"));
    EXPECT_EQ(m_window.plan().tool()->inHand().references.size(), 2U);
    release({400, 160});
    EXPECT_EQ(placeOf("E"), Place(ByMirror{"A", Centre::Level}));
}

// Expected from: pencil. x 110 about x 150 is x 190.
TEST_F(SnappingByHand, MirrorOfALineAboutTheOneThatIsPicked) {
    layGrid();
    lay("M", ByOffset{Edge::Left, 150});
    m_window.chooseTool(MainWindow::PickAt);
    click({150, 40});
    ASSERT_EQ(m_window.selection().line(), "M");
    dragged({190.3, 0}, {190, 250});
    EXPECT_TRUE(noteHas("mirror of C about line M"));
    release({190, 250});
    EXPECT_EQ(project().lines.back().place, Place(ByMirror{"C", LineId("M")}));
}

// Expected from: the rule that Alt suspends all snapping: the start stays on its hundredth, beside the crossing.
TEST_F(SnappingByHand, AltSuspendsAll) {
    layGrid();
    m_window.chooseTool(MainWindow::LayAt);
    press({111, 92}, Qt::AltModifier);
    release({270, 250}, Qt::AltModifier);
    ASSERT_EQ(project().lines.size(), 5U);
    EXPECT_TRUE(std::holds_alternative<ByPoints>(placeOf("E")));
}

// Expected from: pencil. 6.35 - 5.85 sin 45 degrees is 2.2134: 2.22 under the work's edge at 120. With a margin of 1 it is
// 6.35 - 5.35 sin 45 degrees = 2.5670: 2.57.
TEST_F(SnappingByHand, ClearOfTheWorksSawnCornerByTheMarginInTheEntryLine) {
    Project next = project();
    next.workpiece = Workpiece{};
    next.workpiece->outline = {{50, 50}, {350, 50}, {350, 120}, {150, 120}, {150, 220}, {50, 220}};
    m_window.session().change(QStringLiteral("Work"), next);
    dragged({0, 118.6}, {400, 118.4});
    EXPECT_TRUE(noteHas("clears the work's sawn corner by 0.5 mm")) << note().toStdString();
    ASSERT_TRUE(std::holds_alternative<ByOffset>(placeOf("A")));
    EXPECT_NEAR(std::get<ByOffset>(placeOf("A")).distance, 117.78, 1e-9);
    auto* margin = m_window.findChild<QLineEdit*>(QStringLiteral("entry3"));
    ASSERT_TRUE(margin->isVisible());
    margin->setFocus();
    margin->selectAll();
    QTest::keyClicks(margin, QStringLiteral("1"));
    EXPECT_NEAR(std::get<ByOffset>(placeOf("A")).distance, 117.43, 1e-9);
    QTest::keyClick(margin, Qt::Key_Return);
    release({400, 118.4});
    EXPECT_NEAR(std::get<ByOffset>(placeOf("A")).distance, 117.43, 1e-9);
}

}  // namespace
}  // namespace kerfwall

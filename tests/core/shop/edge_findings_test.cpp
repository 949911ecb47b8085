// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "core/geometry/solve.h"
#include "core/shop/finding_groups.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall::test {
namespace {

std::vector<Finding> mindedOf(Project project, Place place, SquareCorner corner) {
    project.lines = {lineAt("K", std::move(place))};
    project.panel.squareCorner = corner;
    return edgeFindings(project, solve(project));
}

bool isTold(Edge from, SquareCorner corner) { return !mindedOf(panelOf(400, 250), ByOffset{from, 60}, corner).empty(); }

// Expected from: the project file: the reference edge is true; its ends where their corner is; the edge opposite only
// where all four corners are.
TEST(EdgeFindings, WhichEdgesMayBeMeasuredFrom) {
    using enum SquareCorner;
    for (const SquareCorner corner : {Start, End, Both, None, All}) {
        EXPECT_FALSE(isTold(Edge::Bottom, corner));
        EXPECT_EQ(isTold(Edge::Top, corner), corner != All);
        EXPECT_EQ(isTold(Edge::Left, corner), corner == End || corner == None);
        EXPECT_EQ(isTold(Edge::Right, corner), corner == Start || corner == None);
    }
}

// Expected from: the same with the reference edge on the right: its start corner is the bottom one.
TEST(EdgeFindings, GoByTheReferenceEdge) {
    Project project = panelOf(400, 250);
    project.panel.referenceEdge = Edge::Right;
    const auto told = [&](Edge from) { return !mindedOf(project, ByOffset{from, 60}, SquareCorner::Start).empty(); };
    EXPECT_FALSE(told(Edge::Right));
    EXPECT_FALSE(told(Edge::Bottom));
    EXPECT_TRUE(told(Edge::Top));
    EXPECT_TRUE(told(Edge::Left));
}

// Expected from: pencil: 60 from the right edge of a panel 400 wide is 340 from the left.
TEST(EdgeFindings, TellTheSameLineFromTheEdgeThatIsTrue) {
    const auto found = mindedOf(panelOf(400, 250), ByOffset{Edge::Right, 60}, SquareCorner::Start);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].code, "edge-untrue");
    EXPECT_EQ(found[0].severity, Severity::Care);
    EXPECT_EQ(found[0].lines, (std::vector<LineId>{"K"}));
    EXPECT_EQ(found[0].at, (Point{340, 125}));
    EXPECT_EQ(found[0].text,
              "K is laid 60.0 mm from the right edge, which is not said to be true. Check the bottom-right corner with "
              "a square and say that it is true, or lay K 340.0 mm from the left edge.");
}

// Expected from: an angle to an edge is as untrue as a distance from it; marks and mirror images are measured anew.
TEST(EdgeFindings, AnAngleToAnUntrueEdgeIsToldMarksAndMirrorImagesAreNot) {
    const auto angled = mindedOf(panelOf(400, 250), ByAngle{Edge::Top, 3, Point{200, 100}}, SquareCorner::Start);
    ASSERT_EQ(angled.size(), 1u);
    EXPECT_NE(angled[0].text.find("by an angle of 3° to the top edge"), std::string::npos) << angled[0].text;
    EXPECT_TRUE(mindedOf(panelOf(400, 250), ByMarks{{Edge::Top, 60}, {Edge::Bottom, 340}}, SquareCorner::Start).empty());
    Project project = panelOf(400, 250);
    project.lines = {offsetLine("C", Edge::Left, 110), lineAt("D", ByMirror{"C", Centre::Upright})};
    EXPECT_TRUE(edgeFindings(project, solve(project)).empty());
}

}  // namespace
}  // namespace kerfwall::test

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/relaying.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

/// Where the line lies once its place is laid that other way.
std::pair<Point, Point> runAfter(Project project, const LineId& id, const Place& place) {
    std::ranges::find(project.lines, id, &LayoutLine::id)->place = place;
    const auto run = runOf(solve(project), id);
    EXPECT_TRUE(run);
    return run.value_or(std::pair<Point, Point>{});
}

constexpr std::array kPlainWays{Way::Offset, Way::Angle, Way::Points, Way::Marks};

// Expected from: the rule that another way of laying keeps a line where it is.
TEST(Relaying, ALevelLineKeepsItsPlaceByEveryWay) {
    const Project project = gridOfFour();
    const Solved solved = solve(project);
    for (const Way way : kPlainWays) {
        const auto place = relaid(project, solved, "A", way);
        ASSERT_TRUE(place);
        EXPECT_EQ(wayOf(*place), way);
        const auto run = runAfter(project, "A", *place);
        EXPECT_EQ(run.first, (Point{0, 90})) << static_cast<int>(way);
        EXPECT_EQ(run.second, (Point{400, 90})) << static_cast<int>(way);
    }
}

TEST(Relaying, ASlantingLineKeepsItsPlaceByAngleByPointsAndByMarks) {
    Project project = blankPanel();
    addLine(project, "A", ByMarks{{Edge::Left, 200}, {Edge::Right, 113}});
    const Solved solved = solve(project);
    for (const Way way : {Way::Angle, Way::Points, Way::Marks}) {
        const auto place = relaid(project, solved, "A", way);
        ASSERT_TRUE(place);
        const auto run = runAfter(project, "A", *place);
        EXPECT_NEAR(distance(run.first, {0, 50}), 0, 1e-5) << static_cast<int>(way);
        EXPECT_NEAR(distance(run.second, {400, 113}), 0, 1e-5) << static_cast<int>(way);
    }
}

// Expected from: pencil. The line's middle lies 81.5 above the bottom edge, which it runs along.
TEST(Relaying, ASlantingLineByADistanceTurnsAboutItsMiddle) {
    Project project = blankPanel();
    addLine(project, "A", ByMarks{{Edge::Left, 200}, {Edge::Right, 113}});
    EXPECT_EQ(*relaid(project, solve(project), "A", Way::Offset), Place(ByOffset{Edge::Bottom, 81.5}));
}

// Expected from: pencil. D at 290 is C at 110 mirrored about x 200.
TEST(Relaying, ALineThatIsAMirrorImageAlreadyStaysAsOne) {
    const Project project = gridOfFour();
    EXPECT_EQ(*relaid(project, solve(project), "D", Way::Mirror), Place(ByMirror{"C", Centre::Upright}));
}

TEST(Relaying, ALineAloneHasNothingToMirror) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 90});
    EXPECT_EQ(relaid(project, solve(project), "A", Way::Mirror).error(), NoRelaying::NoOtherLine);
}

// Expected from: pencil. B hangs 20 to the left of A, which runs to the right: y 120. Laid by the bottom edge, A would keep its
// direction; by the top edge B would lie at y 80. A was laid by points from left to right.
TEST(Relaying, ALineThatOthersHangOnKeepsItsDirection) {
    Project project = blankPanel();
    project.panel.referenceEdge = Edge::Top;
    addLine(project, "A", ByPoints{{0, 100}, {400, 100}});
    addLine(project, "B", ByOffset{LineId("A"), 20});
    const auto place = relaid(project, solve(project), "A", Way::Offset);
    EXPECT_EQ(*place, Place(ByOffset{Edge::Bottom, 100}));
    EXPECT_EQ(runAfter(project, "A", *place).first, (Point{0, 100}));
}

TEST(Relaying, NoLineIsOfferedToBeLaidFromWhatHangsOnIt) {
    Project project = gridOfFour();
    addLine(project, "E", ByOffset{LineId("A"), 10});
    addLine(project, "F", ByMirror{"E", Centre::Level});
    EXPECT_EQ(linesFor(project, "A"), (std::vector<LineId>{"B", "C", "D"}));
    EXPECT_EQ(basesFor(project, "F").size(), 9U);
}

// Expected from: pencil. E by 45 degrees through (20, 0) passes (110, 90), where A and C cross; B and C cross 56 higher.
TEST(Relaying, CrossingsAreOfferedNearestFirst) {
    Project project = gridOfFour();
    addLine(project, "E", ByAngle{Edge::Bottom, 45, Point{20, 0}});
    const auto crossings = crossingsFor(project, solve(project), "E", 2);
    ASSERT_EQ(crossings.size(), 2U);
    EXPECT_EQ(crossings.front(), (CrossingOf{"A", "C"}));
    const Place through = laidThrough(project, solve(project), "E", crossings.front());
    EXPECT_EQ(through, Place(ByAngle{Edge::Bottom, 45, CrossingOf{"A", "C"}}));
    project.lines.back().place = through;
    EXPECT_EQ(laidThrough(project, solve(project), "E", std::nullopt), Place(ByAngle{Edge::Bottom, 45, Point{110, 90}}));
}

}  // namespace
}  // namespace kerfwall

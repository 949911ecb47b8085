// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/carrying.h"

#include <gtest/gtest.h>

#include "core/geometry/fence_place.h"
#include "core/geometry/marking.h"
#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

Place placeOf(const Project& project, const LineId& id) { return findLine(project, id)->place; }

Project carry(const Project& project, const Picked& picked, const Motion& motion) {
    const auto next = carried(project, solve(project), picked, motion);
    EXPECT_TRUE(next.has_value());
    return next.value_or(project);
}

// Expected from: pencil. 10 to the right and 5 up: A 95, B 151, C 120, D 300, the seed from (200, 118) to (210, 123).
TEST(Carrying, ACutoutTakesItsWallsSeedsBoresAndWishAlong) {
    Project project = sheetOfThings();
    project.cutouts.front().corners.push_back({"A", "C", 10, {}});
    project.cutouts.front().wanted = Wanted{{{120, 100}, {280, 100}, {280, 136}}, 5, {}};
    const Project next = carry(project, onlyCutout("window"), shiftBy({10, 5}));
    EXPECT_EQ(placeOf(next, "A"), Place(ByOffset{Edge::Bottom, 95}));
    EXPECT_EQ(placeOf(next, "B"), Place(ByOffset{Edge::Bottom, 151}));
    EXPECT_EQ(placeOf(next, "C"), Place(ByOffset{Edge::Left, 120}));
    EXPECT_EQ(placeOf(next, "D"), Place(ByOffset{Edge::Left, 300}));
    EXPECT_EQ(next.cutouts.front().seeds, (std::vector<Point>{{210, 123}}));
    EXPECT_EQ(next.cutouts.front().corners, project.cutouts.front().corners);
    EXPECT_EQ(next.cutouts.front().wanted->outline, (std::vector<Point>{{130, 105}, {290, 105}, {290, 141}}));
}

TEST(Carrying, AllWallsOfACutoutBringTheCutout) {
    const Project project = sheetOfThings();
    EXPECT_EQ(withWalls(project, solve(project), {{"A", "B", "C", "D"}, {}, {}, {}, false}).cutouts, std::vector<std::string>{"window"});
    EXPECT_TRUE(withWalls(project, solve(project), {{"A", "B", "C"}, {}, {}, {}, false}).cutouts.empty());
}

// A window carried across a line that stays: it is seeded on both sides of it.
TEST(Carrying, ACutoutCarriedAcrossALineIsMarkedOnBothSides) {
    Project project = sheetOfThings();
    addLine(project, "E", ByOffset{Edge::Left, 350});
    const Solved solved = solve(project);
    const Project next = carry(project, onlyCutout("window"), shiftBy({80, 0}));
    EXPECT_EQ(next.cutouts.front().seeds.size(), 2U);
    EXPECT_EQ(carryCutouts(project, solved, next), next);
    EXPECT_NEAR(solve(next).cutouts.front().drawnArea, 180 * 56, 1e-6);
}

TEST(Carrying, ALineLaidFromAnotherThatIsCarriedKeepsItsNumbers) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 90});
    addLine(project, "B", ByOffset{LineId("A"), 56});
    const Project next = carry(project, {{"A", "B"}, {}, {}, {}, false}, shiftBy({0, 5}));
    EXPECT_EQ(placeOf(next, "A"), Place(ByOffset{Edge::Bottom, 95}));
    EXPECT_EQ(placeOf(next, "B"), Place(ByOffset{LineId("A"), 56}));
}

// Expected from: pencil. C x 110 and its image x 290, both 10 to the right: x 120 and 300, no longer images.
TEST(Carrying, AMirrorImageThatCannotFollowIsLaidFromTheEdges) {
    Project project = blankPanel();
    addLine(project, "C", ByOffset{Edge::Left, 110});
    addLine(project, "D", ByMirror{"C", Centre::Upright});
    const Project next = carry(project, {{"C", "D"}, {}, {}, {}, false}, shiftBy({10, 0}));
    EXPECT_EQ(placeOf(next, "C"), Place(ByOffset{Edge::Left, 120}));
    EXPECT_EQ(placeOf(next, "D"), Place(ByOffset{Edge::Left, 300}));
    // Up and down the image stands for itself.
    EXPECT_EQ(placeOf(carry(project, {{"C", "D"}, {}, {}, {}, false}, shiftBy({0, 10})), "D"), placeOf(project, "D"));
}

// Expected from: pencil. A sixteenth of an inch is 1.5875 mm: the image to the right is the original to the left.
TEST(Carrying, ANudgedMirrorImageMovesWhatItMirrors) {
    Project project = blankPanel();
    addLine(project, "C", ByOffset{Edge::Left, 110});
    addLine(project, "D", ByMirror{"C", Centre::Upright});
    const Project next = nudged(project, solve(project), onlyLine("D"), {1.5875, 0});
    EXPECT_EQ(placeOf(next, "C"), Place(ByOffset{Edge::Left, 108.4125}));
    EXPECT_EQ(placeOf(next, "D"), placeOf(project, "D"));
}

// Expected from: pencil. (0, 90) turned by 30 degrees about (200, 90): 200 - 200 cos 30, 90 - 200 sin 30.
TEST(Carrying, ATurnedOffsetIsLaidByAngle) {
    const Project next = carry(gridOfFour(), onlyLine("A"), turnAbout({200, 90}, 30));
    EXPECT_EQ(placeOf(next, "A"), Place(ByAngle{Edge::Bottom, 30, Point{26.794919, -10}}));
}

// Expected from: pencil. A quarter turn about (200, 125) takes y 90 to x 235.
TEST(Carrying, AQuarterTurnKeepsAnOffset) {
    const Project next = carry(gridOfFour(), onlyLine("A"), turnAbout({200, 125}, 90));
    EXPECT_EQ(placeOf(next, "A"), Place(ByOffset{Edge::Left, 235}));
}

// Expected from: pencil. The mirror about x 200 takes (0, 100) to (400, 100) and a climb of 3 degrees to a fall of 3.
TEST(Carrying, AMirroredAngleFallsWhereItClimbed) {
    Project project = blankPanel();
    addLine(project, "A", ByAngle{Edge::Bottom, 3, Point{0, 100}});
    const Project next = carry(project, onlyLine("A"), mirrorAbout({200, 0}, {0, 1}));
    EXPECT_EQ(placeOf(next, "A"), Place(ByAngle{Edge::Bottom, -3, Point{400, 100}}));
}

// Expected from: pencil, by marks on the left and right edge: 10 up is 10 less down the left, 10 more up the right.
TEST(Carrying, MarksRunAlongTheirEdges) {
    Project project = blankPanel();
    addLine(project, "A", ByMarks{{Edge::Left, 150}, {Edge::Right, 160}});
    const Project next = carry(project, onlyLine("A"), shiftBy({0, 10}));
    EXPECT_EQ(placeOf(next, "A"), Place(ByMarks{{Edge::Left, 140}, {Edge::Right, 170}}));
}

// Expected from: pencil. Half a turn about the panel's middle takes x 60 on the bottom to x 340 on the top, 60 from its start.
TEST(Carrying, AHoleTurnsFromEdgeToEdgeAndNowhereElse) {
    const Project project = sheetOfThings();
    const Project next = carry(project, onlyHole(0), turnAbout({200, 125}, 180));
    EXPECT_EQ(next.clampHoles.front().edge, Edge::Top);
    EXPECT_EQ(next.clampHoles.front().at, 60);
    EXPECT_EQ(carried(project, solve(project), onlyHole(0), turnAbout({200, 125}, 30)).error(), NoCarrying::HoleOffEdges);
    EXPECT_EQ(carry(project, onlyHole(0), shiftBy({-100, 7})).clampHoles.front().at, 0);
}

// Expected from: pencil. The fence over x 310 to 380 mirrored about x 200 lies over x 20 to 90.
TEST(Carrying, AFenceIsMirroredShiftedAndNotTurnedIntoTheOpen) {
    const Project project = sheetOfThings();
    const Fence mirrored = carry(project, onlyFence(0), mirrorAbout({200, 0}, {0, 1})).fences.front();
    EXPECT_EQ(mirrored.from, 20);
    EXPECT_EQ(mirrored.to, 90);
    EXPECT_EQ(mirrored.offset, 20);
    EXPECT_EQ(mirrored.body, Side::Left);
    const Fence level = carry(project, onlyFence(0), mirrorAbout({200, 125}, {1, 0})).fences.front();
    EXPECT_EQ(level.offset, 230);
    EXPECT_EQ(level.body, Side::Right);
    EXPECT_EQ(carried(project, solve(project), onlyFence(0), turnAbout({200, 125}, 30)).error(), NoCarrying::FenceAlone);
}

TEST(Carrying, AFenceTurnsWithTheLineItRunsAlong) {
    Project project = sheetOfThings();
    project.fences.front().along = LineId{"A"};
    const Solved solved = solve(project);
    const Motion turn = turnAbout({200, 90}, 20);
    const Project next = carry(project, {{"A"}, {}, {}, {0}, false}, turn);
    EXPECT_EQ(next.fences.front().along, Base(LineId{"A"}));
    const std::vector<Point> before = fenceBody(project, solved, project.fences.front());
    const std::vector<Point> after = fenceBody(next, solve(next), next.fences.front());
    ASSERT_EQ(after.size(), 4U);
    for (std::size_t i = 0; i < 4; ++i) EXPECT_LT(distance(after[i], moved(turn, before[i])), 1e-5);
}

// Expected from: pencil. A quarter turn takes a grain of 20 degrees to 110.
TEST(Carrying, TheWorkpieceTurnsWithItsGrain) {
    Project project = blankPanel();
    project.workpiece = Workpiece{{{100, 50}, {200, 50}, {200, 150}}, 20.0, 20.0, {}, {}};
    const Project next = carry(project, onlyWorkpiece(), turnAbout({100, 50}, 90));
    EXPECT_EQ(next.workpiece->outline, (std::vector<Point>{{100, 50}, {100, 150}, {0, 150}}));
    EXPECT_EQ(next.workpiece->grain, 110);
}

TEST(Carrying, ATurnThatTakesALineOffThePanelIsRefused) {
    const Project project = gridOfFour();
    EXPECT_EQ(carried(project, solve(project), onlyLine("A"), turnAbout({500, 500}, 90)).error(), NoCarrying::OffThePanel);
}

// A law: there and back again is where it was, to the nanometre.
TEST(Carrying, TurningThereAndBackGivesTheSameLines) {
    Project project = sheetOfThings();
    addLine(project, "E", ByMarks{{Edge::Left, 20}, {Edge::Right, 40}});
    addLine(project, "F", ByPoints{{10, 20}, {390, 60}});
    addLine(project, "G", ByAngle{LineId("E"), 12, CrossingOf{"A", "C"}});
    const Picked lines{{"A", "C", "E", "F", "G"}, {}, {}, {}, false};
    const Project there = carry(project, lines, turnAbout({210, 110}, 7));
    const Solved back = solve(carry(there, lines, turnAbout({210, 110}, -7)));
    for (const SolvedLine& line : solve(project).lines) {
        const SolvedLine* again = findLine(back, line.id);
        ASSERT_TRUE(again) << line.id;
        const bool sameWay = distance(line.from, again->from) < distance(line.from, again->to);
        EXPECT_LT(distance(line.from, sameWay ? again->from : again->to), 1e-4) << line.id;
        EXPECT_LT(distance(line.to, sameWay ? again->to : again->from), 1e-4) << line.id;
    }
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/copying.h"

#include <gtest/gtest.h>

#include "core/geometry/snippet.h"
#include "core/says/project_text.h"
#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

Place placeOf(const Project& project, const LineId& id) { return findLine(project, id)->place; }

std::expected<Copies, NoCarrying> copy(const Project& project, const Picked& picked, const std::vector<Motion>& motions) {
    const Solved solved = solve(project);
    return copiedOnto(project, {project, solved, picked}, motions, 0);
}

TEST(Copying, ALineIsRepeatedAtADistance) {
    const auto copies = copy(gridOfFour(), onlyLine("A"), {shiftBy({0, 20}), shiftBy({0, 40}), shiftBy({0, 60})});
    ASSERT_TRUE(copies.has_value());
    EXPECT_EQ(copies->picked.lines, (std::vector<LineId>{"E", "F", "G"}));
    EXPECT_EQ(placeOf(copies->project, "E"), Place(ByOffset{Edge::Bottom, 110}));
    EXPECT_EQ(placeOf(copies->project, "F"), Place(ByOffset{Edge::Bottom, 130}));
    EXPECT_EQ(placeOf(copies->project, "G"), Place(ByOffset{Edge::Bottom, 150}));
}

TEST(Copying, WhatIsLaidFromACopiedLineIsLaidFromItsCopy) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 90});
    addLine(project, "B", ByOffset{LineId("A"), 56});
    addLine(project, "C", ByOffset{LineId("A"), 100});
    const auto copies = copy(project, {{"A", "B"}, {}, {}, {}, false}, {shiftBy({0, -30})});
    ASSERT_TRUE(copies.has_value());
    EXPECT_EQ(placeOf(copies->project, "D"), Place(ByOffset{Edge::Bottom, 60}));
    EXPECT_EQ(placeOf(copies->project, "E"), Place(ByOffset{LineId("D"), 56}));
}

// Expected from: pencil. 60 up: walls y 150 and 206 are new, x 110 and 290 are there; the seed from (200, 118) to (200, 178).
TEST(Copying, ACutoutBringsWallsBoresAndWishAndSharesLinesThatAreThere) {
    Project project = sheetOfThings();
    project.cutouts.front().corners.push_back({"A", "C", 10, {}});
    const auto copies = copy(project, onlyCutout("window"), {shiftBy({0, 60})});
    ASSERT_TRUE(copies.has_value());
    EXPECT_EQ(copies->picked, (Picked{{"E", "F"}, {"cutout-1"}, {}, {}, false}));
    ASSERT_EQ(copies->project.cutouts.size(), 2U);
    const Cutout& made = copies->project.cutouts.back();
    EXPECT_EQ(made.seeds, (std::vector<Point>{{200, 178}}));
    ASSERT_EQ(made.corners.size(), 1U);
    EXPECT_EQ(made.corners.front().first, "E");
    EXPECT_EQ(made.corners.front().second, "C");
    EXPECT_NEAR(solve(copies->project).cutouts.back().drawnArea, 180 * 56, 1e-6);
    EXPECT_EQ(copies->project.cutouts.front(), project.cutouts.front());
}

// Expected from: pencil. Three windows 60 apart to the right share y 90 to 146: each new wall crosses the ones before.
TEST(Copying, WindowsThatCrossTheWallsOfOthersStayWhole) {
    Project project = gridOfFour();
    project.lines.back().place = ByOffset{Edge::Left, 160};  // x 110 to 160
    project.cutouts.push_back({"window", {{130, 118}}, {}, {}, {}});
    addLine(project, "E", ByOffset{Edge::Bottom, 30});
    project.lines[1].place = ByOffset{LineId("A"), 56};
    const auto copies = copy(project, onlyCutout("window"), {shiftBy({60, 20}), shiftBy({120, 40})});
    ASSERT_TRUE(copies.has_value());
    const Solved solved = solve(copies->project);
    ASSERT_EQ(solved.cutouts.size(), 3U);
    for (const SolvedCutout& cutout : solved.cutouts) EXPECT_NEAR(cutout.drawnArea, 50 * 56, 1e-6) << cutout.id;
    EXPECT_EQ(copy(project, onlyCutout("window"), {shiftBy({20, 20})})->picked.cutouts.size(), 0U);
}

TEST(Copying, HolesFencesAndLinesAreNotDoubled) {
    const Project project = sheetOfThings();
    EXPECT_EQ(copy(project, onlyLine("A"), {shiftBy({10, 0})}).error(), NoCarrying::NothingNew);
    EXPECT_EQ(copy(project, onlyHole(0), {shiftBy({0, 10})}).error(), NoCarrying::NothingNew);
    const auto hole = copy(project, onlyHole(0), {shiftBy({10, 0}), shiftBy({20, 0})});
    ASSERT_TRUE(hole.has_value());
    ASSERT_EQ(hole->project.clampHoles.size(), 3U);
    EXPECT_EQ(hole->project.clampHoles.back().at, 80);
    const auto fence = copy(project, onlyFence(0), {shiftBy({-100, 30})});
    ASSERT_TRUE(fence.has_value());
    EXPECT_EQ(fence->project.fences.back().from, 210);
    EXPECT_EQ(fence->project.fences.back().offset, 50);
    EXPECT_EQ(copy(project, onlyLine("A"), {shiftBy({0, 200})}).error(), NoCarrying::OffThePanel);
}

TEST(Copying, AMirroredCopyFollowsWhatItMirrors) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Left, 60});
    const Solved solved = solve(project);
    auto copies = mirroredCopies({project, solved, onlyLine("A")}, Centre::Upright, 0);
    ASSERT_TRUE(copies.has_value());
    EXPECT_EQ(placeOf(copies->project, "B"), Place(ByMirror{"A", Centre::Upright}));
    // An image of the image is the line itself.
    const Solved again = solve(copies->project);
    EXPECT_EQ(mirroredCopies({copies->project, again, onlyLine("B")}, Centre::Upright, 0).error(), NoCarrying::NothingNew);
}

// Expected from: pencil. About the line y 160 the window over y 90 to 146 lies over y 174 to 230.
TEST(Copying, ACutoutIsMirroredAboutALine) {
    Project project = sheetOfThings();
    addLine(project, "E", ByOffset{Edge::Bottom, 160});
    const Solved solved = solve(project);
    const auto copies = mirroredCopies({project, solved, onlyCutout("window")}, LineId("E"), 0);
    ASSERT_TRUE(copies.has_value());
    EXPECT_EQ(copies->picked, (Picked{{"F", "G"}, {"cutout-1"}, {}, {}, false}));
    EXPECT_EQ(copies->project.cutouts.back().seeds, (std::vector<Point>{{200, 202}}));
}

TEST(Snippet, LaysFromTheEdgesWhatWasLaidFromOthers) {
    Project project = blankPanel();
    addLine(project, "A", ByOffset{Edge::Bottom, 90});
    addLine(project, "B", ByOffset{LineId("A"), 56});
    const Project snippet = snippetOf({project, solve(project), onlyLine("B")});
    ASSERT_EQ(snippet.lines.size(), 1U);
    EXPECT_EQ(snippet.lines.front().place, Place(ByOffset{Edge::Bottom, 146}));
}

TEST(Snippet, BringsWallsAndTheLinesOfFencesAndReadsBackTheSame) {
    Project project = sheetOfThings();
    project.title = "Crate end";
    addLine(project, "E", ByOffset{Edge::Bottom, 200});
    project.fences.front().along = LineId{"E"};
    const Project snippet = snippetOf({project, solve(project), {{}, {"window"}, {0}, {0}, false}});
    EXPECT_EQ(snippet.lines.size(), 5U);
    EXPECT_EQ(snippet.cutouts, project.cutouts);
    EXPECT_EQ(snippet.clampHoles, project.clampHoles);
    EXPECT_TRUE(snippet.title.empty());
    EXPECT_EQ(readProject(writeProject(snippet)), snippet);
}

TEST(Snippet, IsPutWhereItWasWhereThatIsFree) {
    const Project project = sheetOfThings();
    const Project snippet = snippetOf({project, solve(project), {{}, {"window"}, {0}, {0}, false}});
    const auto pasted1 = pasted(blankPanel(), snippet, 10, 0);
    ASSERT_TRUE(pasted1.has_value());
    EXPECT_EQ(placeOf(pasted1->project, "A"), Place(ByOffset{Edge::Bottom, 90}));
    EXPECT_EQ(pasted1->project.cutouts.front().seeds, (std::vector<Point>{{200, 118}}));
    EXPECT_EQ(pasted1->project.clampHoles.front().at, 60);
    EXPECT_EQ(pasted1->project.fences.front().from, 310);
}

// Expected from: pencil. A clamp hole at 60 is taken, so the copy lies at 70 and the next at 80.
TEST(Snippet, IsPutAStepAsideWhereThatIsTaken) {
    const Project project = sheetOfThings();
    const Project snippet = snippetOf({project, solve(project), onlyHole(0)});
    const auto once = pasted(project, snippet, 10, 0);
    ASSERT_TRUE(once.has_value());
    EXPECT_EQ(once->project.clampHoles.back().at, 70);
    const auto twice = pasted(once->project, snippet, 10, 0);
    ASSERT_TRUE(twice.has_value());
    EXPECT_EQ(twice->project.clampHoles.back().at, 80);
    EXPECT_EQ(pasted(project, snippetOf({project, solve(project), onlyLine("A")}), 10, 0)->picked.lines, std::vector<LineId>{"E"});
}

}  // namespace
}  // namespace kerfwall

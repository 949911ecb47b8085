// SPDX-License-Identifier: GPL-3.0-or-later
// Layouts on which a search found the engine wrong in silence, each with the fewest lines that showed it.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/geometry/solve.h"
#include "tests/oracle/drafts.h"
#include "tests/oracle/judged.h"

namespace kerfwall::oracle {
namespace {

const Tools kTwelve{12, 3, 160, 6};

void bore(Project& project, const LineId& first, const LineId& second, double radius) {
    project.cutouts.back().corners.push_back({first, second, radius, ""});
}

bool isDoubted(const Project& project, std::size_t cutout) {
    return !solve(project).cutouts.at(cutout).doubts.empty();
}

// Expected from: pencil. The lines are one but for rounding, the panel below them is 100 (84.45 + 9.45) / 2, and a
// bore at a corner of 180 degrees takes nothing. Its tangent points are one place, which gives no direction.
TEST(FoundByFuzzing, ABoreAtAFlatCornerStandsOnItsLines) {
    Project project = emptyPanel(100, 100, kTwelve);
    addLine(project, "A", ByPoints{{76.6, 27}, {60.599999999999994, 39}});
    addLine(project, "B", ByPoints{{76.6, 27}, {60.6, 39}});
    addCutout(project, {{29, 12}});
    bore(project, "A", "B", 20);
    EXPECT_EQ(judge(project).verdict, Verdict::Agrees) << judge(project).why;
    EXPECT_NEAR(solve(project).cutouts[0].opening.area, 4695, 1e-4);
}

// Expected from: a point of wood at the panel's very edge, with a kerf beyond it. The opening and the place where
// the bit dips into that kerf touch in the point; whether they are one is not to be told.
TEST(FoundByFuzzing, AnOpeningThatComesToAPointAtTheEdgeIsDoubted) {
    Project project = emptyPanel(200, 200, kTwelve);
    addLine(project, "A", ByOffset{Edge::Bottom, 51});
    addLine(project, "B", ByPoints{{0, 51}, {200, 50.9}});
    addCutout(project, {{93, 101}});
    addCutout(project, {{104, 46}});
    EXPECT_NE(judge(project).verdict, Verdict::Wrong) << judge(project).why;
    EXPECT_TRUE(isDoubted(project, 0));
}

// Expected from: wood between lines 1e-9 radians apart is thinner than a nanometre along the whole panel.
TEST(FoundByFuzzing, WoodBetweenLinesAHairOutOfParallelIsDoubted) {
    Project project = emptyPanel(100, 100, kTwelve);
    addLine(project, "A", ByOffset{Edge::Bottom, 32});
    addLine(project, "B", ByPoints{{0, 32}, {100, 31.9999999}});
    addCutout(project, {{1, 27}});
    addCutout(project, {{3, 82}});
    EXPECT_TRUE(isDoubted(project, 0));
    EXPECT_TRUE(isDoubted(project, 1));
}

// Expected from: what the two kerfs leave of the panel's right edge is 3.5e-7 mm thick, too little to stand on.
TEST(FoundByFuzzing, AStubOfRimIsNobodysWall) {
    Project project = emptyPanel(250, 100, kTwelve);
    addLine(project, "A", ByPoints{{249.999999989, 100}, {250, 34}});
    addLine(project, "B", ByPoints{{249.999999654, 0}, {250, 34}});
    addCutout(project, {{167, 14}});
    project.use.byBush = true;
    project.use.bush = 40;
    project.use.bit = 8;
    EXPECT_NE(judge(project).verdict, Verdict::Wrong) << judge(project).why;
}

// Expected from: the exact route. The wall ends at the panel's edge before its one corner's arc begins: the kerf
// has no full depth on the panel, and its round ends short of it.
TEST(FoundByFuzzing, AStoppedKerfAtTheEdgeEndsAtItsOneArc) {
    Project project = emptyPanel(200, 40, kTwelve);
    addLine(project, "A", ByPoints{{2, 0}, {115, 40}});
    addLine(project, "B", ByPoints{{112, 40}, {200, 32}}, Extent::Stopped);
    addCutout(project, {{92, 37}});
    const Judgement judged = judge(project);
    EXPECT_EQ(judged.verdict, Verdict::Agrees) << judged.why;
}

// Expected from: pencil. A and B turn from one another by 1.5e-5 and cross at (30, 30); C crosses them near (30, 80)
// and ends the sliver above it, 7.5e-4 mm wide: too short to count, and no reason for a corner 50 mm away.
TEST(FoundByFuzzing, NearlyParallelNeighboursOfAStretchTooShortToCountMeetAtIt) {
    Project project = emptyPanel(100, 100, kTwelve);
    addLine(project, "A", ByPoints{{30, 30}, {30, 130}});
    addLine(project, "B", ByPoints{{30, 30}, {29.9985, 130}});
    addLine(project, "C", ByOffset{Edge::Bottom, 80});
    addCutout(project, {{10, 10}, {10, 90}, {29.9995, 90}});
    const std::vector<Corner> corners = solve(project).cutouts[0].corners;
    EXPECT_TRUE(std::ranges::any_of(corners, [](const Corner& corner) {
        return distance(corner.point, {30, 80}) < 0.001;
    }));
    EXPECT_EQ(judge(project).verdict, Verdict::Agrees) << judge(project).why;
}

}  // namespace
}  // namespace kerfwall::oracle

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/solve.h"

#include <gtest/gtest.h>

#include <numbers>

#include "tests/core/geometry/projects.h"

namespace kerfwall::test {
namespace {

constexpr double kPi = std::numbers::pi;

// Expected from: pencil. 180 x 56 less four corners of (1 - pi / 4) r², r 6.35.
TEST(Solve, AWindowLosesFourRounds) {
    const Solved solved = solve(windowProject());
    const SolvedCutout& window = solved.cutouts.at(0);
    EXPECT_FALSE(window.open);
    EXPECT_DOUBLE_EQ(window.drawnArea, 10080);
    EXPECT_NEAR(window.opening.area, 10080 - (4 - kPi) * 6.35 * 6.35, 1e-9);
    EXPECT_NEAR(window.opening.perimeter, 2 * (180 + 56) - (8 - 2 * kPi) * 6.35, 1e-9);
    ASSERT_EQ(window.opening.loops.size(), 1u);
    EXPECT_EQ(window.opening.loops[0].size(), 8u);
    EXPECT_EQ(window.corners.size(), 4u);
    for (const Corner& corner : window.corners) {
        EXPECT_EQ(corner.regime, Regime::Sound);
        EXPECT_DOUBLE_EQ(corner.angle, 90);
        EXPECT_NEAR(corner.shortBy, 6.35 * (std::numbers::sqrt2 - 1), 1e-12);
        EXPECT_EQ(corner.step, 0);
    }
    EXPECT_EQ(window.parts, 1);
    EXPECT_TRUE(window.doubts.empty());
    EXPECT_TRUE(window.hollows.empty());
}

// Expected from: pencil. Bush 24 and bit 12.7: every side moves in by 5.65, the corners take the cutter's radius.
TEST(Solve, ABushCutsASmallerWindowInTheWork) {
    Project project = windowProject();
    project.use.byBush = true;
    project.use.bush = 24;
    project.use.bit = 12.7;
    const SolvedCutout window = solve(project).cutouts.at(0);
    EXPECT_NEAR(window.work.area, 168.7 * 44.7 - (4 - kPi) * 6.35 * 6.35, 1e-9);
    EXPECT_NEAR(window.work.bounds.low.x, 115.65, 1e-9);
    EXPECT_NEAR(window.work.bounds.high.y, 140.35, 1e-9);
}

// Expected from: pencil. Trimmed with radius 6.35, followed by a bearing of radius 3 and its own cutter: the
// template's rounds of 6.35 stay as they are.
TEST(Solve, ASmallerBearingFollowsWhatWasTrimmed) {
    Project project = windowProject();
    project.use.bit = 6;
    project.use.bearing = 6;
    const SolvedCutout window = solve(project).cutouts.at(0);
    EXPECT_NEAR(window.work.area, window.opening.area, 1e-7);
    EXPECT_TRUE(window.doubts.empty());
}

// Expected from: pencil. Bush 6.35 below a bit of 12.7 and a cutter of 4: sides in by 1.175, rounds of
// 6.35 - 3.175 + 2.
TEST(Solve, ABushSmallerThanTheTrimmingBitKeepsItsRounds) {
    Project project = windowProject();
    project.use.byBush = true;
    project.use.bush = 6.35;
    project.use.bit = 4;
    const SolvedCutout window = solve(project).cutouts.at(0);
    const double round = 6.35 - 3.175 + 2;
    EXPECT_NEAR(window.work.area, (180 - 2.35) * (56 - 2.35) - (4 - kPi) * round * round, 1e-7);
}

// Expected from: pencil. Joined to the face right of it the window is open at the panel's right edge: two rounds.
TEST(Solve, AnOpenCutoutHasNoRoundsAtItsMouth) {
    Project project = windowProject();
    project.cutouts[0].seeds.push_back({350, 120});
    const SolvedCutout open = solve(project).cutouts.at(0);
    EXPECT_TRUE(open.open);
    EXPECT_FALSE(open.mouthClosed);
    EXPECT_EQ(open.corners.size(), 2u);
    EXPECT_NEAR(open.opening.area, 290 * 56 - (2 - kPi / 2) * 6.35 * 6.35, 1e-9);
    EXPECT_NEAR(open.opening.perimeter, 2 * 290 + 2 * 56 - (4 - kPi) * 6.35, 1e-9);
    EXPECT_EQ(open.opening.bounds.high.x, 400);
}

// Expected from: pencil. A slot with full-round ends: bored to half its width, both bores of an end are one circle,
// and the end wall is gone. 180 x 56 less four corners of (1 - pi / 4) 28².
TEST(Solve, ASlotBoredToHalfItsWidthHasFullRoundEnds) {
    for (const bool inKerfs : {false, true}) {
        Project project = windowProject();
        project.cutouts[0].corners = {{"A", "C", 28, ""}, {"C", "B", 28, ""}, {"B", "D", 28, ""}, {"D", "A", 28, ""}};
        project.use.byBush = true;
        project.use.bush = 16;
        project.use.bit = 8;
        project.use.inKerfs = inKerfs;
        const Solved solved = solve(project);
        ASSERT_TRUE(solved.troubles.empty());
        const SolvedCutout& slot = solved.cutouts.at(0);
        EXPECT_TRUE(slot.doubts.empty());
        EXPECT_NEAR(slot.opening.area, 10080 - (4 - kPi) * 28 * 28, 1e-9);
        // Clear of the kerfs every side moves in by 8 - 4.
        if (!inKerfs) {
            EXPECT_NEAR(slot.work.area, 172 * 48 - (4 - kPi) * 24 * 24, 1e-9);
        }
        for (const Corner& corner : slot.corners) EXPECT_EQ(corner.regime, Regime::Bored);
    }
}

// Expected from: pencil. Bored round to 20 at one corner: that corner loses (1 - pi / 4) 400 instead.
TEST(Solve, ABoredCornerKeepsTheBoresRound) {
    Project project = windowProject();
    project.cutouts[0].corners = {{"A", "C", 20, ""}};
    const SolvedCutout window = solve(project).cutouts.at(0);
    EXPECT_NEAR(window.opening.area, 10080 - (1 - kPi / 4) * (3 * 6.35 * 6.35 + 400), 1e-9);
    EXPECT_TRUE(window.doubts.empty());
    for (const Corner& corner : window.corners) {
        const bool bored = corner.point == Point{110, 90};
        EXPECT_EQ(corner.regime, bored ? Regime::Bored : Regime::Sound);
        EXPECT_DOUBLE_EQ(corner.radius, bored ? 20 : 6.35);
        EXPECT_EQ(corner.drill.has_value(), !bored);
    }
}

TEST(Solve, ABoreNotLargerThanTheBitIsLeftToTheBit) {
    Project project = windowProject();
    project.cutouts[0].corners = {{"A", "C", 5, ""}};
    const SolvedCutout window = solve(project).cutouts.at(0);
    EXPECT_NEAR(window.opening.area, 10080 - (4 - kPi) * 6.35 * 6.35, 1e-9);
}

TEST(Solve, ABoreWhereLinesDoNotMeetIsTroubleOfDrawing) {
    Project project = windowProject();
    project.cutouts[0].corners = {{"A", "B", 20, ""}};
    const Solved solved = solve(project);
    ASSERT_EQ(solved.troubles.size(), 1u);
    EXPECT_EQ(solved.troubles[0].pointer, "/cutouts/0/corners/0");
    EXPECT_TRUE(solved.cutouts.empty());
}

// Expected from: pencil. An L: its inward corner's kerfs run on and nick the far walls: the bit dips
// r - sqrt(r² - w²/4) = 0.2046 there (w 3.2, r 6.35).
TEST(Solve, AKerfThatRunsOnNicksTheWallItCrosses) {
    Project project = panelOf(400, 300);
    project.lines = {offsetLine("A", Edge::Bottom, 50),  offsetLine("B", Edge::Bottom, 120),
                     offsetLine("C", Edge::Bottom, 250), offsetLine("D", Edge::Left, 60),
                     offsetLine("E", Edge::Left, 140),   offsetLine("F", Edge::Left, 340)};
    project.cutouts = {cutoutAt("elbow", {{100, 80}, {250, 80}, {100, 200}})};
    setTools(project, 3.2, 12.7);
    for (LayoutLine& line : project.lines) line.extent = Extent::Through;
    const SolvedCutout elbow = solve(project).cutouts.at(0);
    const double dip = 6.35 - std::sqrt(6.35 * 6.35 - 1.6 * 1.6);
    // B runs on through D's wall, E through A's.
    ASSERT_EQ(elbow.hollows.size(), 2u);
    for (const Hollow& hollow : elbow.hollows) {
        EXPECT_NEAR(hollow.depth, dip, 1e-9);
        EXPECT_FALSE(hollow.corner);
    }
    EXPECT_EQ(elbow.corners.size(), 6u);
    // Each dip is the bit's slice beyond a chord of 3.2; five outward corners lose their rounds, the inward one
    // keeps its point.
    const double half = std::asin(1.6 / 6.35);
    const double slice = 6.35 * 6.35 * (half - std::sin(half) * std::cos(half));
    EXPECT_NEAR(elbow.opening.area, 280 * 70 + 80 * 130 - 5 * (1 - kPi / 4) * 6.35 * 6.35 + 2 * slice, 1e-9);
}

// Expected from: pencil. With B and E stopped at the elbow the nicks are gone.
TEST(Solve, AStoppedKerfLeavesTheFarWallWhole) {
    Project project = panelOf(400, 300);
    project.lines = {offsetLine("A", Edge::Bottom, 50),  offsetLine("B", Edge::Bottom, 120),
                     offsetLine("C", Edge::Bottom, 250), offsetLine("D", Edge::Left, 60),
                     offsetLine("E", Edge::Left, 140),   offsetLine("F", Edge::Left, 340)};
    project.lines[1].extent = project.lines[4].extent = Extent::Stopped;
    project.cutouts = {cutoutAt("elbow", {{100, 80}, {250, 80}, {100, 200}})};
    const SolvedCutout elbow = solve(project).cutouts.at(0);
    EXPECT_TRUE(elbow.hollows.empty());
    EXPECT_NEAR(elbow.opening.area, 280 * 70 + 80 * 130 - 5 * (1 - kPi / 4) * 6.35 * 6.35, 1e-9);
}

// Expected from: pencil. A ring of 100-wide paths round a 100 x 100 island: four outer rounds lost; at the
// island's corners the kerfs of the inner lines run on and nick the outer walls twice a side.
TEST(Solve, AnIslandStaysStandingInsideARing) {
    Project project = panelOf(500, 500);
    Cutout ring = cutoutAt("ring", {});
    for (const int i : {0, 1, 2, 3}) {
        project.lines.push_back(offsetLine("H" + std::to_string(i), Edge::Bottom, 100 + 100 * i));
        project.lines.push_back(offsetLine("V" + std::to_string(i), Edge::Left, 100 + 100 * i));
    }
    for (const int x : {150, 250, 350}) {
        for (const int y : {150, 250, 350}) {
            if (x != 250 || y != 250) ring.seeds.push_back({double(x), double(y)});
        }
    }
    project.cutouts = {ring};
    setTools(project, 3.2, 12.7);
    for (LayoutLine& line : project.lines) line.extent = Extent::Through;
    const SolvedCutout solved = solve(project).cutouts.at(0);
    ASSERT_EQ(solved.opening.loops.size(), 2u);
    const double half = std::asin(1.6 / 6.35);
    const double slice = 6.35 * 6.35 * (half - std::sin(half) * std::cos(half));
    EXPECT_NEAR(solved.opening.area, 80000 - (4 - kPi) * 6.35 * 6.35 + 8 * slice, 1e-8);
    EXPECT_EQ(solved.hollows.size(), 8u);
}

// Expected from: pencil. A slot 10 wide does not let a 12.7 bit in; one of 12.7 is on the border and said so.
TEST(Solve, ASlotNarrowerThanTheBitIsNotEntered) {
    Project project = windowProject();
    project.lines[1] = offsetLine("B", Edge::Bottom, 100);
    project.cutouts[0].seeds = {{200, 95}};
    SolvedCutout slot = solve(project).cutouts.at(0);
    EXPECT_EQ(slot.parts, 0);
    EXPECT_TRUE(slot.opening.loops.empty());
    EXPECT_EQ(slot.opening.area, 0);
    EXPECT_TRUE(slot.doubts.empty());
    project.lines[1] = offsetLine("B", Edge::Bottom, 102.7);
    slot = solve(project).cutouts.at(0);
    EXPECT_FALSE(slot.doubts.empty());
}

// Expected from: the law that the order of lines changes nothing.
TEST(Solve, TheOrderOfLinesChangesNothing) {
    Project project = windowProject();
    const SolvedCutout before = solve(project).cutouts.at(0);
    std::swap(project.lines[0], project.lines[3]);
    std::swap(project.lines[1], project.lines[2]);
    const SolvedCutout after = solve(project).cutouts.at(0);
    EXPECT_NEAR(before.opening.area, after.opening.area, 1e-9);
    EXPECT_NEAR(before.work.perimeter, after.work.perimeter, 1e-9);
    EXPECT_EQ(before.corners.size(), after.corners.size());
}

// Expected from: pencil, the report's example: walls 56 and 180 apart.
TEST(FacingSizes, OfAWindowAreItsTwoWidths) {
    const SolvedCutout window = solve(windowProject()).cutouts.at(0);
    ASSERT_EQ(window.sizes.size(), 2u);
    for (const FacingSize& size : window.sizes) {
        const bool level = size.first == "A" || size.first == "B";
        EXPECT_NEAR(size.distance, level ? 56 : 180, 1e-12);
        EXPECT_FALSE(size.atEnds);
    }
}

// Expected from: pencil. Wall A is x = 100, wall B leans from (200, 0) to (225, 250). Square to A they are 100
// and 125 apart at the ends. Square to B (5 in 50.249): 100 x 50.249 / 50 at its foot, and opposite A's top
// end, 237.624 up, (100 + 23.762) x 50.249 / 50.
TEST(FacingSizes, OfSplayedWallsAreGivenAtBothEnds) {
    Project project = panelOf(400, 250);
    project.lines = {offsetLine("A", Edge::Left, 100), lineAt("B", ByPoints{{200, 0}, {225, 250}})};
    project.cutouts = {cutoutAt("taper", {{150, 100}})};
    const SolvedCutout taper = solve(project).cutouts.at(0);
    ASSERT_EQ(taper.sizes.size(), 1u);
    const FacingSize& size = taper.sizes[0];
    ASSERT_TRUE(size.atEnds);
    const double secant = std::sqrt(250. * 250 + 25 * 25) / 250;
    const double narrow = size.first == "A" ? 100 : 100 * secant;
    // (100, 250) projected on B: (-100, 250) . (25, 250) = 60000 of B's 63125.
    const double wide = size.first == "A" ? 125 : (100 + 25 * 60000. / 63125) * secant;
    EXPECT_NEAR(std::min(size.atEnds->first, size.atEnds->second), narrow, 1e-9);
    EXPECT_NEAR(std::max(size.atEnds->first, size.atEnds->second), wide, 1e-9);
    EXPECT_NEAR(size.distance, (size.atEnds->first + size.atEnds->second) / 2, 1e-12);
}

// Expected from: the report, version 1: a bored corner's arc is whole between its tangent points. Two windows on the
// lines A and B, the first one's corner of A and C bored with 20: the second's kerf along A leaves it whole.
TEST(Solve, ABoredCornerStaysWholeWhereItsLineBoundsAnotherCutout) {
    Project project = panelOf(600, 250);
    project.lines = {offsetLine("A", Edge::Bottom, 90), offsetLine("B", Edge::Bottom, 146), offsetLine("C", Edge::Left, 110),
                     offsetLine("D", Edge::Left, 290),  offsetLine("E", Edge::Left, 350),   offsetLine("F", Edge::Left, 500)};
    project.cutouts = {cutoutAt("one", {{200, 120}}), cutoutAt("two", {{425, 120}})};
    project.cutouts[0].corners = {{"A", "C", 20, ""}};
    const Solved solved = solve(project);
    EXPECT_NEAR(solved.cutouts.at(0).opening.area, 10080 - (1 - kPi / 4) * (20 * 20 + 3 * 6.35 * 6.35), 1e-8);
    EXPECT_NEAR(solved.cutouts.at(1).opening.area, 150 * 56 - (4 - kPi) * 6.35 * 6.35, 1e-8);
    EXPECT_TRUE(solved.cutouts[0].hollows.empty());
}

}  // namespace
}  // namespace kerfwall::test

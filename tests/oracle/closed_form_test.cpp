// SPDX-License-Identifier: GPL-3.0-or-later
// Whole projects against figures worked by pencil.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/geometry/solve.h"
#include "tests/oracle/drafts.h"

namespace kerfwall::oracle {
namespace {

constexpr double kPi = std::numbers::pi;

double widthOf(const Outline& outline) { return outline.bounds.high.x - outline.bounds.low.x; }
double heightOf(const Outline& outline) { return outline.bounds.high.y - outline.bounds.low.y; }

double deepest(const SolvedCutout& cutout) {
    double depth = 0;
    for (const Hollow& hollow : cutout.hollows) depth = std::max(depth, hollow.depth);
    return depth;
}

// A window 200 by 80 over y = 100, and below it a strip between two lines that cross its lower wall at
// `degrees`; their kerfs run on through that wall.
Project crossedWall(double degrees, double kerf, double radius) {
    Project project = emptyPanel(400, 300, {2 * radius, kerf, 160, 6});
    addLine(project, "S", ByOffset{Edge::Bottom, 100});
    addLine(project, "E", ByOffset{Edge::Left, 330});
    addLine(project, "N", ByOffset{Edge::Bottom, 220});
    addLine(project, "W", ByOffset{Edge::Left, 50});
    addLine(project, "X", ByAngle{Edge::Bottom, degrees, Point{150, 100}});
    addLine(project, "Y", ByAngle{Edge::Bottom, degrees, Point{210, 100}});
    addLine(project, "T", ByOffset{Edge::Bottom, 60});
    addLine(project, "U", ByOffset{Edge::Bottom, 30});
    // Along level 101 and 219 every face of the window shows: the slanting lines split it in three.
    const double lean = std::tan((90 - degrees) * kPi / 180);
    addCutout(project, {{60, 101}, {180, 101}, {320, 101}});
    addCutout(project, {{180 + (45 - 100) * lean, 45}});
    return project;
}

// Expected from: the dip between two lips a gap w / sin(phi) apart; deep where it is tangent to the
// other line's extension. 90 degrees, w 3.2, r 9.5: 0.1357.
TEST(ClosedForm, AKerfAcrossAWallLetsTheBearingDip) {
    for (const double degrees : {90.0, 75.0, 60.0, 50.0})
        for (const double radius : {9.5, 6.35}) {
            SCOPED_TRACE(degrees);
            const Solved solved = solve(crossedWall(degrees, 3.2, radius));
            ASSERT_EQ(solved.cutouts.size(), 2u);
            const double s = std::sin(degrees * kPi / 180);
            ASSERT_LE(3.2, 2 * radius * s * s);
            EXPECT_NEAR(deepest(solved.cutouts[0]),
                        radius - std::sqrt(radius * radius - 3.2 * 3.2 / (4 * s * s)), 1e-6);
        }
    EXPECT_NEAR(deepest(solve(crossedWall(90, 3.2, 9.5)).cutouts[0]), 0.1357, 5e-5);
}

// Expected from: the deep dip r (1 - |cos|) + w |cos| - sin sqrt(w (2r - w)), past w = 2 r sin^2.
TEST(ClosedForm, AKerfAcrossAWallAtAFlatAngleDipsDeep) {
    const double t = 25 * kPi / 180;
    const double expected =
        6.35 * (1 - std::cos(t)) + 3.2 * std::cos(t) - std::sin(t) * std::sqrt(3.2 * (12.7 - 3.2));
    EXPECT_NEAR(deepest(solve(crossedWall(25, 3.2, 6.35)).cutouts[0]), expected, 1e-6);
}

// Expected from: pencil. Sides less eight tangent lengths, four quarter rounds.
TEST(ClosedForm, RectangleWithRoundedCorners) {
    for (const double bit : {8.0, 12.7, 19.0}) {
        const Solved solved = solve(windowProject({100, 90}, {230.5, 180.2}, {bit, 3.2, 160, 6}));
        ASSERT_EQ(solved.cutouts.size(), 1u);
        const SolvedCutout& cutout = solved.cutouts[0];
        const double r = bit / 2;
        EXPECT_NEAR(cutout.drawnArea, 130.5 * 90.2, 1e-9);
        EXPECT_NEAR(cutout.opening.area, 130.5 * 90.2 - (4 - kPi) * r * r, 1e-8);
        EXPECT_NEAR(cutout.opening.perimeter, 2 * (130.5 + 90.2) - 8 * r + 2 * kPi * r, 1e-8);
        EXPECT_NEAR(cutout.widest, 90.2, 1e-9);
        EXPECT_TRUE(cutout.hollows.empty());
        EXPECT_EQ(cutout.parts, 1);
        for (const Corner& corner : cutout.corners) {
            EXPECT_NEAR(corner.angle, 90, 1e-9);
            EXPECT_NEAR(corner.shortBy, r * (std::numbers::sqrt2 - 1), 1e-9);
        }
    }
}

// Expected from: pencil. A bored corner loses (1 - pi/4) R^2; a bore no larger than the bit is the bit's.
TEST(ClosedForm, RectangleWithBoredCorners) {
    Project project = windowProject({100, 90}, {230, 180}, {12.7, 3.2, 160, 6});
    project.cutouts[0].corners = {{"S", "E", 25, ""}, {"N", "W", 30, ""}, {"S", "W", 5, ""}};
    const Solved solved = solve(project);
    ASSERT_EQ(solved.cutouts.size(), 1u);
    const double lost = (1 - kPi / 4) * (25 * 25 + 30 * 30 + 2 * 6.35 * 6.35);
    EXPECT_NEAR(solved.cutouts[0].opening.area, 130 * 90 - lost, 1e-8);
}

// Expected from: opening = template - (B - c), trade formula worked by pencil: rows 117.3 with 30 and 12.7
// -> 100; 67 with 17 and 10 -> 60; 59.65 with 16 and 6.35 -> 50. Corners c/2 where the bush fits them.
TEST(ClosedForm, TheOpeningInTheWorkIsSmallerByBushLessCutter) {
    struct Row {
        double opening, bush, cutter, work;
    };
    for (const Row& row : {Row{117.3, 30, 12.7, 100}, Row{67, 17, 10, 60}, Row{59.65, 16, 6.35, 50}}) {
        Project project = windowProject({100, 90}, {100 + row.opening, 90 + row.opening}, {8, 2.2, 160, 6});
        project.use.byBush = true;
        project.use.bush = row.bush;
        project.use.bit = row.cutter;
        project.use.inKerfs = false;
        const Solved solved = solve(project);
        ASSERT_EQ(solved.cutouts.size(), 1u);
        const Outline& work = solved.cutouts[0].work;
        EXPECT_NEAR(widthOf(work), row.work, 1e-9);
        EXPECT_NEAR(heightOf(work), row.work, 1e-9);
        const double r = row.cutter / 2;
        EXPECT_NEAR(work.area, row.work * row.work - (4 - kPi) * r * r, 1e-7);
    }
}

double cornerRadius(const Outline& outline) {
    double radius = 0;
    for (const OutlineLoop& loop : outline.loops)
        for (const OutlinePiece& piece : loop)
            if (piece.isArc) radius = std::max(radius, piece.radius);
    return radius;
}

// Expected from: trade formula. Corner in the work: c/2 where the template's radius is under B/2, else
// rt - (B - c)/2: with 30 and 12.7, rt 5 gives 6.35 and rt 25 gives 16.35.
TEST(ClosedForm, CornersInTheWork) {
    Project project = windowProject({100, 90}, {230, 200}, {10, 2.2, 160, 6});
    project.use.byBush = true;
    project.use.bush = 30;
    project.use.bit = 12.7;
    project.use.inKerfs = false;
    EXPECT_NEAR(cornerRadius(solve(project).cutouts[0].work), 6.35, 1e-9);
    project.cutouts[0].corners = {
        {"S", "E", 25, ""}, {"E", "N", 25, ""}, {"N", "W", 25, ""}, {"W", "S", 25, ""}};
    const Outline work = solve(project).cutouts[0].work;
    EXPECT_NEAR(cornerRadius(work), 16.35, 1e-9);
    const double side[] = {130 - 17.3, 110 - 17.3};
    EXPECT_NEAR(work.area, side[0] * side[1] - (4 - kPi) * 16.35 * 16.35, 1e-7);
}

// Expected from: pencil. The same bit and bearing ride the trimmed wall: the work gets the template's
// opening.
TEST(ClosedForm, ABearingOfTheBitsSizeCopiesTheTemplate) {
    Project project = windowProject({100, 90}, {230, 200}, {12.7, 3.2, 160, 6});
    project.use.inKerfs = false;
    const Solved solved = solve(project);
    EXPECT_NEAR(solved.cutouts[0].work.area, solved.cutouts[0].opening.area, 1e-9);
}

// Expected from: s = sqrt(d (D - d)), the chord of a circle: the table's rows for blades that can stop.
TEST(ClosedForm, RunOutOfAStoppedKerf) {
    struct Row {
        double blade, depth, runOut;
    };
    for (const Row& row :
         {Row{250, 6, 38.262}, Row{254, 6, 38.575}, Row{160, 6, 30.397}, Row{165, 6, 30.887},
          Row{305, 6, 42.356}, Row{315, 6, 43.058}, Row{216, 5.5, 34.026}, Row{184, 5, 29.917}}) {
        SCOPED_TRACE(row.blade);
        const Solved solved =
            solve(windowProject({130, 100}, {270, 200}, {12.7, 2.2, row.blade, row.depth}, Extent::Stopped));
        const SolvedLine* level = findLine(solved, "S");
        ASSERT_NE(level, nullptr);
        ASSERT_EQ(level->kerfs.size(), 1u);
        const Kerf& kerf = level->kerfs[0];
        EXPECT_TRUE(kerf.stopped);
        EXPECT_NEAR(kerf.fullFrom, 130 + 6.35, 1e-9);  // tangent points of the bit's arcs
        EXPECT_NEAR(kerf.fullTo, 270 - 6.35, 1e-9);
        EXPECT_NEAR(kerf.fullFrom - kerf.surfaceFrom, row.runOut, 5e-4);
        EXPECT_NEAR(kerf.surfaceTo - kerf.fullTo, row.runOut, 5e-4);
    }
}

// Expected from: pencil. Through kerfs run from edge to edge.
TEST(ClosedForm, AThroughKerfRunsFromEdgeToEdge) {
    const Solved solved = solve(windowProject({130, 100}, {270, 200}, {12.7, 3.2, 254, 6}));
    for (const SolvedLine& line : solved.lines) {
        const double run = distance(line.from, line.to);
        ASSERT_EQ(line.kerfs.size(), 1u);
        EXPECT_FALSE(line.kerfs[0].stopped);
        EXPECT_EQ(line.kerfs[0].fullFrom, 0);
        EXPECT_EQ(line.kerfs[0].surfaceFrom, 0);
        EXPECT_NEAR(line.kerfs[0].fullTo, run, 1e-9);
        EXPECT_NEAR(line.kerfs[0].surfaceTo, run, 1e-9);
    }
}

}  // namespace
}  // namespace kerfwall::oracle

// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/shop/finding_fixture.h"

namespace kerfwall {
namespace {

using namespace testing_bench;

// A window of 100 x 50 on 400 x 250, and one clamp hole.
struct HoleBench {
    Project project;
    Solved solved;

    HoleBench(double thickness, Edge edge, double at, double diameter, double depth)
        : project(panelOf(400, 250, thickness)) {
        solved = answerFor(project);
        put(project, solved, rectangle("window", {{150, 100}, {250, 150}}, 6.35));
        ClampHole hole;
        hole.edge = edge;
        hole.at = at;
        hole.diameter = diameter;
        hole.depth = depth;
        project.clampHoles = {hole};
    }
    ClampHole& hole() { return project.clampHoles.front(); }
    [[nodiscard]] std::vector<Finding> minded(const std::string& code) const {
        return only(findings(project, solved), code);
    }
};

// Expected from: pencil. From the left edge, 125 below the top corner, towards the wall at x = 150. Limits 5
// and 1 mm, common practice.
TEST(HoleFindings, ThePointNearAnOpening) {
    EXPECT_TRUE(HoleBench(18, Edge::Left, 125, 8, 145).minded("hole-through").empty());
    const Finding care = HoleBench(18, Edge::Left, 125, 8, 147).minded("hole-through").at(0);
    EXPECT_EQ(care.severity, Severity::Care);
    EXPECT_NEAR(*care.value, 3, 1e-12);
    EXPECT_EQ(care.limit, 5);
    EXPECT_EQ(care.hole, 0u);
    EXPECT_EQ(care.cutout, "window");
    EXPECT_EQ(care.at, (Point{147, 125}));
    EXPECT_NE(care.text.find("Drill it 145.0 mm deep or less"), std::string::npos) << care.text;
    EXPECT_EQ(HoleBench(18, Edge::Left, 125, 8, 149).minded("hole-through").at(0).severity, Severity::Care);
    EXPECT_EQ(HoleBench(18, Edge::Left, 125, 8, 149.1).minded("hole-through").at(0).severity, Severity::Stop);
}

// Expected from: pencil. 200 deep ends inside the window, 300 deep beyond it.
TEST(HoleFindings, AHoleThatRunsIntoAnOpeningLeavesNothing) {
    for (const double depth : {200.0, 300.0}) {
        const Finding finding = HoleBench(18, Edge::Left, 125, 8, depth).minded("hole-through").at(0);
        EXPECT_EQ(finding.severity, Severity::Stop);
        EXPECT_EQ(finding.value, 0);
        EXPECT_TRUE(saysANumber(finding.text));
    }
}

// Expected from: pencil. Across a panel of 400, 396 deep from the right edge leaves 4; across 250, 246 from
// the top.
TEST(HoleFindings, ThePointNearTheOppositeEdge) {
    EXPECT_NEAR(*HoleBench(18, Edge::Right, 50, 8, 396).minded("hole-through").at(0).value, 4, 1e-12);
    EXPECT_NEAR(*HoleBench(18, Edge::Top, 50, 8, 246).minded("hole-through").at(0).value, 4, 1e-12);
    EXPECT_TRUE(HoleBench(18, Edge::Right, 50, 8, 300).minded("hole-through").empty());
}

// Expected from: pencil. Each edge begins at its start corner: the same place, (147, 125) or beside the
// window's other walls, from left (at 125), right (at 125), bottom (at 200) and top (at 200).
TEST(HoleFindings, FromEveryEdge) {
    EXPECT_NEAR(*HoleBench(18, Edge::Left, 130, 8, 147).minded("hole-through").at(0).value, 3, 1e-12);
    EXPECT_NEAR(*HoleBench(18, Edge::Right, 130, 8, 148).minded("hole-through").at(0).value, 2, 1e-12);
    EXPECT_NEAR(*HoleBench(18, Edge::Bottom, 170, 8, 96).minded("hole-through").at(0).value, 4, 1e-12);
    EXPECT_NEAR(*HoleBench(18, Edge::Top, 170, 8, 97).minded("hole-through").at(0).value, 3, 1e-12);
    EXPECT_EQ(HoleBench(18, Edge::Left, 130, 8, 147).minded("hole-through").at(0).at, (Point{147, 120}));
    EXPECT_EQ(HoleBench(18, Edge::Top, 170, 8, 97).minded("hole-through").at(0).at, (Point{230, 153}));
}

// Expected from: (T - diameter) / 2: 12 in 18 leaves 3, 11 leaves 3.5, 13.2 leaves 2.4; limits 3.5 and 2.5.
TEST(HoleFindings, WoodAboveAndBelow) {
    EXPECT_TRUE(HoleBench(18, Edge::Left, 125, 11, 60).minded("hole-wall").empty());
    const Finding care = HoleBench(18, Edge::Left, 125, 12, 60).minded("hole-wall").at(0);
    EXPECT_EQ(care.severity, Severity::Care);
    EXPECT_EQ(care.value, 3);
    EXPECT_EQ(care.limit, 3.5);
    EXPECT_EQ(care.at, (Point{0, 125}));
    EXPECT_NE(care.text.find("above and below it"), std::string::npos) << care.text;
    EXPECT_NE(care.text.find("Take a drill of 11.0 mm or less, or a panel of 19.0 mm or more."),
              std::string::npos)
        << care.text;
    EXPECT_EQ(HoleBench(18, Edge::Left, 125, 13, 60).minded("hole-wall").at(0).severity, Severity::Care);
    EXPECT_EQ(HoleBench(18, Edge::Left, 125, 13.2, 60).minded("hole-wall").at(0).severity, Severity::Stop);
    EXPECT_TRUE(HoleBench(24, Edge::Left, 125, 12, 60).minded("hole-wall").empty());
}

// Expected from: pencil. 8 in 18 with its axis 11 below the face: 7 above, 18 - 11 - 4 = 3 below.
TEST(HoleFindings, WoodBelowAHoleThatSitsLow) {
    HoleBench bench(18, Edge::Left, 125, 8, 60);
    bench.hole().height = 11;
    const Finding finding = bench.minded("hole-wall").at(0);
    EXPECT_EQ(finding.value, 3);
    EXPECT_NE(finding.text.find("below it"), std::string::npos);
    EXPECT_NE(finding.text.find("Put its axis 9.0 mm below the layout face."), std::string::npos)
        << finding.text;
}

// Expected from: pencil. Below the window, the axis at y = 94, radius 4: 2 of wood to the wall at y = 100.
// On the left edge that is 250 - 94 = 156 from its start.
TEST(HoleFindings, WoodBesideAHole) {
    const HoleBench bench(18, Edge::Left, 156, 8, 200);
    const Finding flank = bench.minded("hole-wall").at(0);
    EXPECT_EQ(flank.severity, Severity::Stop);
    EXPECT_NEAR(*flank.value, 2, 1e-12);
    EXPECT_NE(flank.text.find("cutout window"), std::string::npos);
    EXPECT_TRUE(HoleBench(18, Edge::Left, 158, 8, 200).minded("hole-wall").empty());
    EXPECT_NEAR(*HoleBench(18, Edge::Left, 7, 8, 60).minded("hole-wall").at(0).value, 3, 1e-12);
    EXPECT_NEAR(*HoleBench(18, Edge::Left, 243, 8, 60).minded("hole-wall").at(0).value, 3, 1e-12);
}

// Expected from: pencil. Axes 10 apart, holes of 8 and 6: 10 - 4 - 3 = 3; the second at 9 + 4 below:
// sqrt(100 + 16) - 7 = 3.77. Tip to tip, 4 apart, nothing is said of their flanks.
TEST(HoleFindings, WoodBetweenTwoHoles) {
    HoleBench bench(18, Edge::Left, 50, 8, 60);
    ClampHole other = bench.hole();
    other.at = 60;
    other.diameter = 6;
    bench.project.clampHoles.push_back(other);
    ASSERT_EQ(bench.minded("hole-wall").size(), 2u);
    EXPECT_NEAR(*bench.minded("hole-wall")[0].value, 3, 1e-12);
    EXPECT_EQ(bench.minded("hole-wall")[1].hole, 1u);
    bench.project.panel.thickness = 26;
    bench.project.clampHoles[0].height = 9;
    bench.project.clampHoles[1].height = 13;
    EXPECT_TRUE(bench.minded("hole-wall").empty());
    bench.project.clampHoles[1] = bench.hole();
    bench.project.clampHoles[1].edge = Edge::Right;
    bench.project.clampHoles[1].at = 200;
    bench.project.clampHoles[1].depth = 336;
    EXPECT_TRUE(bench.minded("hole-wall").empty());
}

// Expected from: pencil. An 8 mm hole in 18 begins 5 below the face: a kerf 6 deep that crosses it runs in,
// one 5 deep does not; nor does one beyond the point at x = 60.
TEST(HoleFindings, AKerfRunsIntoAHole) {
    HoleBench bench(18, Edge::Left, 50, 8, 60);
    bench.solved.lines = {lineWithKerf("C", {40, 250}, {40, 0}, Side::Left)};
    const Finding finding = bench.minded("hole-kerf").at(0);
    EXPECT_EQ(finding.severity, Severity::Care);
    EXPECT_EQ(finding.lines, std::vector<LineId>{"C"});
    EXPECT_EQ(finding.value, 6);
    EXPECT_EQ(finding.limit, 5);
    EXPECT_EQ(finding.hole, 0u);
    // Drilled in from the left edge it meets the kerf at x = 40.
    EXPECT_NEAR(distance(*finding.at, {40, 200}), 0, 1e-6);
    EXPECT_NE(finding.text.find("Drill it 40.0 mm deep or less"), std::string::npos) << finding.text;
    bench.solved.lines = {lineWithKerf("C", {60.1, 250}, {60.1, 0}, Side::Left)};
    EXPECT_TRUE(bench.minded("hole-kerf").empty());
    bench.solved.lines = {lineWithKerf("C", {40, 250}, {40, 0}, Side::Left, 3.2, 5)};
    EXPECT_TRUE(bench.minded("hole-kerf").empty());
}

// Expected from: pencil. Along the hole, a kerf 6 deep meets it where its top lies above 6: within
// sqrt(16 - 9) = 2.646 of the axis at y = 200.
TEST(HoleFindings, AKerfAlongAHoleCountsWhereItReachesIt) {
    HoleBench bench(18, Edge::Left, 50, 8, 60);
    bench.solved.lines = {lineWithKerf("B", {0, 202.6}, {400, 202.6}, Side::Left)};
    ASSERT_EQ(bench.minded("hole-kerf").size(), 1u);
    EXPECT_NE(bench.minded("hole-kerf")[0].text.find("Move it along the edge by up to 11.2 mm"),
              std::string::npos);
    bench.solved.lines = {lineWithKerf("B", {0, 202.7}, {400, 202.7}, Side::Left)};
    EXPECT_TRUE(bench.minded("hole-kerf").empty());
}

// Expected from: pencil. 12 in 24 begins 6 + 6 - 6 = 6 below; a kerf 4 deep over it leaves 2.
TEST(HoleFindings, WoodBetweenAHoleAndTheKerfOverIt) {
    HoleBench bench(24, Edge::Left, 50, 12, 60);
    bench.solved.lines = {lineWithKerf("C", {40, 250}, {40, 0}, Side::Left, 3.2, 4)};
    const Finding finding = bench.minded("hole-wall").at(0);
    EXPECT_NEAR(*finding.value, 2, 1e-12);
    EXPECT_EQ(finding.severity, Severity::Stop);
    EXPECT_NE(finding.text.find("kerf of C"), std::string::npos);
}

}  // namespace
}  // namespace kerfwall

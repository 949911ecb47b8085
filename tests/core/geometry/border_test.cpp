// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/border.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "tests/core/geometry/projects.h"

namespace kerfwall::test {
namespace {

Border borderOfFirst(const Project& project, double bitRadius) {
    const Arranged arranged = arrange(project);
    return borderOf(project, arranged, arranged.cutouts.at(0), bitRadius);
}

const Corner& cornerAt(const Border& border, Point place) {
    for (const Corner& corner : border.corners) {
        if (distance(corner.point, place) < 1e-9) return corner;
    }
    throw std::runtime_error("no corner there");
}

void expectAt(Point place, Point expected) {
    EXPECT_NEAR(place.x, expected.x, 1e-9);
    EXPECT_NEAR(place.y, expected.y, 1e-9);
}

/// Legs of 120 and 160 along A (50 up) and C (100 in), the third side H from (220, 50) to (100, 210): 3-4-5.
Project triangleProject() {
    Project project = panelOf(400, 250);
    project.lines = {offsetLine("A", Edge::Bottom, 50), offsetLine("C", Edge::Left, 100),
                     lineAt("H", ByPoints{{220, 50}, {100, 210}})};
    project.cutouts = {cutoutAt("brace", {{130, 90}})};
    return project;
}

/// An L: 200 x 100 from (100, 50) without its upper right quarter, which begins at (200, 100).
Project steppedProject() {
    Project project = panelOf(400, 250);
    project.lines = {offsetLine("A", Edge::Bottom, 50), offsetLine("B", Edge::Bottom, 150),
                     offsetLine("C", Edge::Left, 100),  offsetLine("D", Edge::Left, 300),
                     offsetLine("E", Edge::Bottom, 100), offsetLine("F", Edge::Left, 200)};
    project.cutouts = {cutoutAt("step", {{150, 75}, {250, 75}, {150, 125}})};
    return project;
}

// Expected from: pencil. The third side climbs 4 for every 3 across: the half corners there have tangents 1/2
// and 1/3, so a bit of radius 6 touches 12 and 18 from the points.
TEST(Border, ACornersAngleTangentsAndShortfall) {
    const Border border = borderOfFirst(triangleProject(), 6);
    ASSERT_EQ(border.corners.size(), 3u);
    const Corner& foot = cornerAt(border, {220, 50});
    EXPECT_EQ(foot.first, "A");
    EXPECT_EQ(foot.second, "H");
    EXPECT_NEAR(foot.angle, 53.130102354, 1e-8);
    EXPECT_EQ(foot.radius, 6);
    EXPECT_EQ(foot.regime, Regime::Sound);
    expectAt(foot.firstTangent, {208, 50});
    expectAt(foot.secondTangent, {212.8, 59.6});
    EXPECT_NEAR(foot.shortBy, 6 * (std::sqrt(5) - 1), 1e-9);
    const Corner& top = cornerAt(border, {100, 210});
    EXPECT_NEAR(top.angle, 36.869897646, 1e-8);
    expectAt(top.firstTangent, {110.8, 195.6});
    expectAt(top.secondTangent, {100, 192});
    EXPECT_NEAR(top.shortBy, 6 * (std::sqrt(10) - 1), 1e-9);
    EXPECT_NEAR(cornerAt(border, {100, 50}).angle, 90, 1e-9);
}

// Expected from: pencil. The half angles have tangents 1/2, 1 and 2 (3-4-5 triangles).
TEST(Border, TheTangentLengthIsTheRadiusOverTheHalfAnglesTangent) {
    EXPECT_NEAR(tangentLength(10, 53.13010235415598), 20, 1e-9);
    EXPECT_NEAR(tangentLength(10, 90), 10, 1e-9);
    EXPECT_NEAR(tangentLength(10, 126.86989764584402), 5, 1e-9);
}

// Expected from: pencil. A and E run right with the cutout above and below them; C and F run down.
TEST(Border, TheWallsRunRoundTheCutoutWithItOnTheirLeft) {
    const Border border = borderOfFirst(steppedProject(), 6);
    ASSERT_EQ(border.walls.size(), 6u);
    EXPECT_FALSE(border.open);
    const struct { const char* line; Point from, to; Side waste; } expected[] = {
        {"A", {100, 50}, {300, 50}, Side::Left},    {"D", {300, 50}, {300, 100}, Side::Right},
        {"E", {300, 100}, {200, 100}, Side::Right}, {"F", {200, 100}, {200, 150}, Side::Right},
        {"B", {200, 150}, {100, 150}, Side::Right}, {"C", {100, 150}, {100, 50}, Side::Left}};
    for (const auto& want : expected) {
        const auto wall = std::ranges::find(border.walls, want.line, &Wall::line);
        ASSERT_NE(wall, border.walls.end()) << want.line;
        EXPECT_EQ(wall->from, want.from) << want.line;
        EXPECT_EQ(wall->to, want.to) << want.line;
        EXPECT_EQ(wall->waste, want.waste) << want.line;
        ASSERT_TRUE(wall->startCorner && wall->endCorner) << want.line;
        EXPECT_EQ(border.corners[*wall->startCorner].point, want.from) << want.line;
        EXPECT_EQ(border.corners[*wall->endCorner].point, want.to) << want.line;
    }
    EXPECT_NEAR(border.drawn.area, 200 * 50 + 100 * 50, 1e-9);
}

// Expected from: pencil: three quarters of a turn lie inside; the report says nothing more of such a corner.
TEST(Border, AnInwardCornerHasItsAngleAndNothingElse) {
    const Border border = borderOfFirst(steppedProject(), 6);
    ASSERT_EQ(border.corners.size(), 6u);
    const Corner& inward = cornerAt(border, {200, 100});
    EXPECT_EQ(inward.first, "E");
    EXPECT_EQ(inward.second, "F");
    EXPECT_NEAR(inward.angle, 270, 1e-9);
    EXPECT_EQ(inward.radius, 0);
    EXPECT_EQ(inward.shortBy, 0);
    EXPECT_EQ(std::ranges::count_if(border.corners, [](const Corner& c) { return std::abs(c.angle - 90) < 1e-9; }), 5);
}

// Expected from: pencil. A notch 180 x 90 open to the bottom: three walls, two corners, none at the edge.
TEST(Border, AtThePanelsEdgeThereIsNoCorner) {
    Project project = panelOf(400, 250);
    project.lines = {offsetLine("A", Edge::Bottom, 90), offsetLine("C", Edge::Left, 110), offsetLine("D", Edge::Left, 290)};
    project.cutouts = {cutoutAt("notch", {{200, 45}})};
    const Border border = borderOfFirst(project, 6);
    EXPECT_TRUE(border.open);
    ASSERT_EQ(border.walls.size(), 3u);
    ASSERT_EQ(border.corners.size(), 2u);
    const auto wall = [&](const char* line) { return *std::ranges::find(border.walls, line, &Wall::line); };
    EXPECT_FALSE(wall("D").startCorner);
    EXPECT_TRUE(wall("D").endCorner);
    EXPECT_FALSE(wall("C").endCorner);
    ASSERT_EQ(border.drawn.loops.size(), 1u);
    const OutlineLoop& loop = border.drawn.loops[0];
    const auto edge = std::ranges::find(loop, std::string("bottom"), &OutlinePiece::on);
    ASSERT_NE(edge, loop.end());
    EXPECT_EQ(edge->from, (Point{110, 0}));
    EXPECT_EQ(edge->to, (Point{290, 0}));
}

// Expected from: the report: a bore larger than the bit makes the corner's arc, another leaves it the bit's.
TEST(Border, ABoreLargerThanTheBitMakesTheCorner) {
    Project project = triangleProject();
    project.cutouts[0].corners = {{"H", "A", 20, ""}, {"A", "C", 6, ""}};
    const Border border = borderOfFirst(project, 6);
    EXPECT_TRUE(border.troubles.empty());
    const Corner& bored = cornerAt(border, {220, 50});
    EXPECT_EQ(bored.regime, Regime::Bored);
    EXPECT_EQ(bored.radius, 20);
    expectAt(bored.firstTangent, {180, 50});
    const Corner& left = cornerAt(border, {100, 50});
    EXPECT_EQ(left.regime, Regime::Sound);
    EXPECT_EQ(left.radius, 6);
    EXPECT_EQ(left.boreRadius, 6);
    EXPECT_FALSE(cornerAt(border, {100, 210}).boreRadius);
}

// Expected from: the project file: lines that do not meet at a corner, and an inward corner, are errors.
TEST(Border, ABoreWhereNoOutwardCornerIsIsTrouble) {
    Project project = steppedProject();
    project.cutouts[0].corners = {{"A", "D", 20, ""}, {"A", "B", 20, ""}, {"F", "E", 20, ""}};
    const Border border = borderOfFirst(project, 6);
    ASSERT_EQ(border.troubles.size(), 2u);
    EXPECT_EQ(border.troubles[0].pointer, "/cutouts/0/corners/1");
    EXPECT_EQ(border.troubles[0].lines, (std::vector<LineId>{"A", "B"}));
    EXPECT_EQ(border.troubles[1].pointer, "/cutouts/0/corners/2");
    EXPECT_EQ(border.troubles[1].cutout, "step");
}

}  // namespace
}  // namespace kerfwall::test

// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "core/geometry/distance.h"
#include "tests/core/shop/finding_fixture.h"

namespace kerfwall {
namespace {

using namespace testing_bench;

std::vector<Finding> bordersOf(Box first, std::optional<Box> second = std::nullopt) {
    Project project = panelOf(400, 250, 12);
    Solved solved = answerFor(project);
    put(project, solved, rectangle("window", first, 6.35));
    if (second) {
        put(project, solved, rectangle("hatch", *second, 6.35));
    }
    return only(findings(project, solved), "border-thin");
}

// Expected from: the limits 25 and 10 mm to an edge, common practice.
TEST(BorderFindings, ToAnEdge) {
    EXPECT_TRUE(bordersOf({{25, 100}, {150, 150}}).empty());
    const Finding care = bordersOf({{24, 100}, {150, 150}}).at(0);
    EXPECT_EQ(care.severity, Severity::Care);
    EXPECT_NEAR(*care.value, 24, 1e-12);
    EXPECT_EQ(care.limit, 25);
    EXPECT_EQ(care.lines, std::vector<LineId>{"C"});
    EXPECT_NE(care.text.find("Move it 1.0 mm or more away"), std::string::npos) << care.text;
    EXPECT_EQ(bordersOf({{10, 100}, {150, 150}}).at(0).severity, Severity::Care);
    EXPECT_EQ(bordersOf({{9.9, 100}, {150, 150}}).at(0).severity, Severity::Stop);
    EXPECT_EQ(bordersOf({{9.9, 100}, {150, 240.5}}).size(), 2u);
}

// Expected from: the limits 15 and 8 mm between openings, common practice; corner to corner by Pythagoras:
// rounds of 6.35 about (193.65, 143.65) and (206.35 + a, 156.35 + a), centres sqrt 2 (12.7 + a) apart.
TEST(BorderFindings, BetweenOpenings) {
    EXPECT_TRUE(bordersOf({{100, 100}, {200, 150}}, Box{{215, 100}, {300, 150}}).empty());
    const Finding care = bordersOf({{100, 100}, {200, 150}}, Box{{214, 100}, {300, 150}}).at(0);
    EXPECT_EQ(care.severity, Severity::Care);
    EXPECT_NEAR(*care.value, 14, 1e-12);
    EXPECT_EQ(care.limit, 15);
    EXPECT_EQ(bordersOf({{100, 100}, {200, 150}}, Box{{208, 100}, {300, 150}}).at(0).severity,
              Severity::Care);
    EXPECT_EQ(bordersOf({{100, 100}, {200, 150}}, Box{{207.9, 100}, {300, 150}}).at(0).severity,
              Severity::Stop);
    const Finding corners = bordersOf({{100, 100}, {200, 150}}, Box{{205, 155}, {300, 210}}).at(0);
    EXPECT_NEAR(*corners.value, std::sqrt(2.0) * 17.7 - 12.7, 1e-9);
}

TEST(BorderFindings, TheProjectsLimitReplacesBothPairs) {
    Project project = panelOf(400, 250, 12);
    Solved solved = answerFor(project);
    put(project, solved, rectangle("window", {{20, 100}, {200, 150}}, 6.35));
    put(project, solved, rectangle("hatch", {{214, 100}, {300, 150}}, 6.35));
    EXPECT_EQ(only(findings(project, solved), "border-thin").size(), 2u);
    project.limits["border-thin"].care = 12;
    EXPECT_TRUE(only(findings(project, solved), "border-thin").empty());
}

// Expected from: pencil. Open at the bottom: its two walls run out at that edge, its head stands 230 up, 20
// under the top edge; its left wall 30 from the left edge.
TEST(BorderFindings, AnOpenCutoutIsNotMeasuredAtItsMouth) {
    Project project = panelOf(400, 250, 12);
    Solved solved = answerFor(project);
    SolvedCutout frame = rectangle("frame", {{30, 0}, {300, 230}}, 0);
    frame.open = true;
    frame.opening.loops[0][0].on = "bottom";
    put(project, solved, frame);
    const auto some = only(findings(project, solved), "border-thin");
    ASSERT_EQ(some.size(), 1u);
    EXPECT_NEAR(*some[0].value, 20, 1e-12);
    EXPECT_EQ(some[0].lines, std::vector<LineId>{"B"});
}

// Expected from: pencil. A shallow open recess, 20 deep: between its floor and the edge there is air.
TEST(BorderFindings, TheAirInAShallowRecessIsNoBorder) {
    Project project = panelOf(400, 250, 12);
    Solved solved = answerFor(project);
    SolvedCutout recess = rectangle("recess", {{100, 0}, {300, 20}}, 0);
    recess.open = true;
    recess.opening.loops[0][0].on = "bottom";
    put(project, solved, recess);
    EXPECT_TRUE(only(findings(project, solved), "border-thin").empty());
}

}  // namespace
}  // namespace kerfwall

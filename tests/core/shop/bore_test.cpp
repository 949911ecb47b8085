// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/bore.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

/// A corner of `angle` degrees at the origin, its first line along x, with an arc of `radius`.
Corner cornerOf(double angle, double radius) {
    const double half = angle * std::numbers::pi / 360;
    const double along = radius / std::tan(half);
    Corner corner;
    corner.angle = angle;
    corner.firstTangent = {along, 0};
    corner.secondTangent = {along * std::cos(2 * half), along * std::sin(2 * half)};
    return corner;
}

// Expected from: radius / sin(angle / 2) by pencil: 5 at 90 degrees 7.0711, at 60 10, at 120 5.7735; 10 at
// 135 10.8239.
TEST(Bore, CentreStandsOffTheCornerAlongItsBisector) {
    for (const auto& [angle, radius, off] :
         {std::tuple{90.0, 5.0, 7.0711}, {60.0, 5.0, 10.0}, {120.0, 5.0, 5.7735}, {135.0, 10.0, 10.8239}}) {
        const Point centre = centreOf(cornerOf(angle, radius), radius);
        EXPECT_NEAR(length(centre), off, 5e-5);
        EXPECT_NEAR(centre.y, radius, 1e-9) << "it touches the first line";
    }
}

// Expected from: pencil. 40 is on the bench; 44 is not: a circle of radius 22 with an 8 mm bit is set to 14
// and
// 22. Without a circle bit nothing is left.
TEST(Bore, TakesADrillFromTheBenchElseTheCircleJig) {
    Bench bench = hand::workshop();
    EXPECT_TRUE(boreToolFor(bench, 20).drill);
    const BoreTool jig = boreToolFor(bench, 22);
    EXPECT_FALSE(jig.drill);
    EXPECT_DOUBLE_EQ(*jig.pivotToNear, 14);
    EXPECT_DOUBLE_EQ(*jig.pivotToFar, 22);
    bench.circleBit.reset();
    EXPECT_EQ(boreToolFor(bench, 22), BoreTool{});
}

/// The window with its lower corners bored to `radius`.
hand::Job boredJob(double radius) {
    hand::Job job = hand::windowJob();
    for (const std::size_t corner : {0u, 3u}) {
        job.solved.cutouts[0].corners[corner].regime = Regime::Bored;
        job.solved.cutouts[0].corners[corner].boreRadius = radius;
    }
    return job;
}

// Expected from: pencil. Window from (110, 90): a bore of 20 touches both lines with its centre at (130, 110); the
// corner of A with D at (290, 90): (270, 110). At a fence beyond the panel, its face up, the left end lies to the right.
TEST(Bore, TellsFenceStopAndCentres) {
    const hand::Job job = boredJob(20);
    const std::vector<WorkStep> steps = boreSteps(job.project, job.solved);
    ASSERT_EQ(steps.size(), 1u);
    EXPECT_NEAR(steps[0].setting.fence.value_or(0), 110, 1e-9);
    EXPECT_FALSE(steps[0].setting.stop) << "two bores, two stops";
    EXPECT_EQ(steps[0].against, Edge::Bottom);
    EXPECT_EQ(steps[0].stopEdge, Edge::Left);
    EXPECT_EQ(steps[0].stopSide, Side::Right);
    EXPECT_EQ(steps[0].text,
              "Bore through with the 40.0 mm drill or hole saw, backed up from below. At the drill press lay the panel "
              "layout face up with its bottom edge on the fence, 110.0 mm from its face to the spindle's centre. Set the "
              "stop on the right, the panel's left edge to it, by the distance from the left edge. Corner of C with A: "
              "centre 130.0 mm from the left edge and 110.0 mm from the bottom edge. Corner of A with D: centre 270.0 mm "
              "from the left edge and 110.0 mm from the bottom edge.");
    EXPECT_EQ(steps[0].lines, (std::vector<LineId>{"C", "A", "D"}));
    EXPECT_EQ(steps[0].bores.size(), 2u);
}

TEST(Bore, ASingleBoreHasItsStop) {  // Expected from: pencil, the centre of C with A.
    hand::Job job = boredJob(20);
    job.solved.cutouts[0].corners[0].regime = Regime::Sound;
    job.solved.cutouts[0].corners[0].boreRadius.reset();
    EXPECT_NEAR(boreSteps(job.project, job.solved).at(0).setting.stop.value_or(0), 130, 1e-9);
}

TEST(Bore, AtNoTrueCornerThereIsNoStop) {  // Expected from: the project file: with "none" only the reference edge is true.
    hand::Job job = boredJob(20);
    job.project.panel.squareCorner = SquareCorner::None;
    const WorkStep step = boreSteps(job.project, job.solved).at(0);
    EXPECT_TRUE(step.setting.fence);
    EXPECT_FALSE(step.setting.stop || step.stopEdge || step.stopSide);
    EXPECT_NE(step.text.find("Set no stop"), std::string::npos) << step.text;
}

// Expected from: a circle jig turns about its pivot and knows no fence: 22 is not on the bench.
TEST(Bore, TheCircleJigHasNoFence) {
    const hand::Job job = boredJob(22);
    const std::vector<WorkStep> steps = boreSteps(job.project, job.solved);
    ASSERT_EQ(steps.size(), 1u);
    EXPECT_FALSE(steps[0].setting.fence || steps[0].against || steps[0].stopEdge);
    EXPECT_NE(steps[0].text.find("14.0 mm to the near side of the cut, 22.0 mm to its far side"), std::string::npos);
}

// Expected from: sqrt(20^2 - 19.5^2) = 4.4441: rests that long, up to the tangent points of the bit's arc as drawn.
TEST(Bore, WhatIsLeftByHandIsAsLongAsTheRestIsThin) {
    const hand::Job job = boredJob(20);
    const std::vector<WorkStep> steps = handSteps(job.project, job.solved);
    ASSERT_EQ(steps.size(), 1u);
    EXPECT_NE(steps[0].text.find("Corner of A with D: 4.44 mm long on each wall"), std::string::npos) << steps[0].text;
    EXPECT_NE(steps[0].text.find("up to 0.5 mm thick"), std::string::npos);
}

// Expected from: the project file, version 1: a bore no larger than the bit leaves the bit's arc; it is not
// bored.
TEST(Bore, LeavesWhatTheBitDoesByItself) {
    hand::Job job = hand::windowJob();
    job.solved.cutouts[0].corners[0].regime = Regime::Bored;
    job.solved.cutouts[0].corners[0].boreRadius = 6;
    EXPECT_TRUE(boreSteps(job.project, job.solved).empty());
    EXPECT_TRUE(handSteps(job.project, job.solved).empty());
}

}  // namespace
}  // namespace kerfwall

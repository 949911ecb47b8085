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

// Expected from: pencil. Window from (110, 90): a bore of 20 touches both lines with its centre at (130,
// 110); the corner of A with D at (290, 90): (270, 110).
TEST(Bore, TellsWhereTheCentresLie) {
    hand::Job job = hand::windowJob();
    for (const std::size_t corner : {0u, 3u}) {
        job.solved.cutouts[0].corners[corner].regime = Regime::Bored;
        job.solved.cutouts[0].corners[corner].boreRadius = 20;
    }
    const std::vector<WorkStep> steps = boreSteps(job.project, job.solved);
    ASSERT_EQ(steps.size(), 1u);
    EXPECT_EQ(
        steps[0].text,
        "Bore through with the 40.0 mm drill or hole saw, backed up from below. The kerfs must touch the "
        "bores, so "
        "the bores come first. Corner of A with D: centre 270.0 mm from the left edge and 110.0 mm from the "
        "bottom "
        "edge. Corner of C with A: centre 130.0 mm from the left edge and 110.0 mm from the bottom edge.");
    EXPECT_EQ(steps[0].lines, (std::vector<LineId>{"A", "D", "C"}));
    EXPECT_EQ(handSteps(job.project, job.solved).size(), 1u);
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

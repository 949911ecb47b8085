// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/relief_hole.h"

#include <gtest/gtest.h>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

// Expected from: pencil. A hole whose centre stands 5.04 from both lines of the corner at (110, 90).
TEST(ReliefHole, TellsWhereItsCentreLies) {
    hand::Job job = hand::windowJob();
    job.solved.cutouts[0].corners[3].drill = ReliefHole{{115.04, 95.04}, 8};
    const std::vector<WorkStep> steps = drillSteps(job.project, job.solved);
    ASSERT_EQ(steps.size(), 1u);
    EXPECT_EQ(steps[0].text,
              "Drill the relief holes in the corners of window through with 8.0 mm, backed up from below. "
              "Corner of C with "
              "A: centre 115.04 mm from the left edge and 95.04 mm from the bottom edge.");
}

// Expected from: common practice, no source: a closed cutout needs a hole for the jigsaw's blade, 8 to 10; an
// open one is sawn into from the edge. The middle of the window: (200, 118).
TEST(ReliefHole, AClosedCutoutWithoutOneGetsAStarterHole) {
    hand::Job job = hand::windowJob();
    const std::vector<WorkStep> steps = drillSteps(job.project, job.solved);
    ASSERT_EQ(steps.size(), 1u);
    EXPECT_NE(steps[0].text.find("200.0 mm from the left edge and 118.0 mm from the bottom edge"),
              std::string::npos);
    job.solved.cutouts[0].open = true;
    EXPECT_TRUE(drillSteps(job.project, job.solved).empty());
    job.solved.cutouts[0].open = false;
    job.solved.cutouts[0].corners[0].regime = Regime::Bored;
    job.solved.cutouts[0].corners[0].boreRadius = 20;
    EXPECT_TRUE(drillSteps(job.project, job.solved).empty()) << "the saw starts from the bore";
}

TEST(ReliefHole, ADrillTooSmallForTheBladeDoesNotStandInForAStarterHole) {  // Expected from: as above, 8.
    hand::Job job = hand::windowJob();
    job.solved.cutouts[0].corners[3].drill = ReliefHole{{115, 95}, 5};
    EXPECT_EQ(drillSteps(job.project, job.solved).size(), 2u);
}

}  // namespace
}  // namespace kerfwall

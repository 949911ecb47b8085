// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/trimming.h"

#include <gtest/gtest.h>

#include "core/shop/relief_hole.h"
#include "core/shop/rough_cut.h"
#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

// Expected from: a drawing of bit, bearing and panel: a bearing at the tip is far from the router, and the
// kerfs must be there; at the shank they must be next to the router.
TEST(Trimming, TheFaceThatIsUpPutsTheKerfsWhereTheBearingIs) {
    EXPECT_TRUE(isTrimmedFaceUp(Router::Table, BearingAt::Tip));
    EXPECT_FALSE(isTrimmedFaceUp(Router::Table, BearingAt::Shank));
    EXPECT_FALSE(isTrimmedFaceUp(Router::Hand, BearingAt::Tip));
    EXPECT_TRUE(isTrimmedFaceUp(Router::Hand, BearingAt::Shank));
    EXPECT_EQ(bearingInKerf(Router::Table, BearingAt::Both), BearingAt::Tip);
    EXPECT_EQ(bearingInKerf(Router::Hand, BearingAt::Both), BearingAt::Shank);
}

// Expected from: pencil. 18 thick, kerf 7 deep: a web of 11 under the floor, the bearing 1 above it: 12. Next
// to the router the floor is 7 away, the bearing 1 short of it: 6.
TEST(Trimming, TheBearingRunsOneMillimetreOffTheFloor) {
    EXPECT_DOUBLE_EQ(bearingHeight(18, 7, BearingAt::Tip), 12);
    EXPECT_DOUBLE_EQ(bearingHeight(18, 7, BearingAt::Shank), 6);
}

// Expected from: pencil. Kerfs 6 deep in 12, one only 5.5: 12 - 5.5 + 1 = 7.5; bite 3.2 - 0.5; a router table
// goes anticlockwise round an opening.
TEST(Trimming, GoesByTheShallowestFloor) {
    hand::Job job = hand::windowJob();
    job.solved.lines[2].kerfs[0].depth = 5.5;
    const std::vector<WorkStep> steps = trimSteps(job.project, job.solved);
    ASSERT_EQ(steps.size(), 1u);
    EXPECT_DOUBLE_EQ(*steps[0].setting.bearing, 7.5);
    EXPECT_DOUBLE_EQ(*steps[0].setting.bite, 2.7);
    EXPECT_EQ(steps[0].setting.feedClockwise, false);
    EXPECT_TRUE(steps[0].faceUp);
    EXPECT_NE(steps[0].text.find("7.5 mm above the table"), std::string::npos) << steps[0].text;
}

// Expected from: pencil. In the hand, bearing at the tip: face down, 12 - 6 + 1 = 7 below the base,
// clockwise.
TEST(Trimming, ByHandIsClockwiseWithTheFaceDown) {
    hand::Job job = hand::windowJob();
    job.project.bench->trimWith = Router::Hand;
    const WorkStep step = trimSteps(job.project, job.solved).at(0);
    EXPECT_FALSE(step.faceUp);
    EXPECT_DOUBLE_EQ(*step.setting.bearing, 7);
    EXPECT_EQ(step.setting.feedClockwise, true);
    EXPECT_NE(step.text.find("7.0 mm below the router's base"), std::string::npos) << step.text;
}

// Expected from: pencil. 1.5 at once: 1.5 is one pass, 1.6 and 3 are two, 3.1 three; nothing left is still one.
TEST(Trimming, ABiteIsTakenInPassesByWidth) {
    EXPECT_EQ(passesFor(0.4), 1);
    EXPECT_EQ(passesFor(1.5), 1);
    EXPECT_EQ(passesFor(1.6), 2);
    EXPECT_EQ(passesFor(3), 2);
    EXPECT_EQ(passesFor(3.1), 3);
    EXPECT_EQ(passesFor(0), 1);
    const hand::Job job = hand::windowJob();
    const WorkStep step = trimSteps(job.project, job.solved).at(0);
    EXPECT_EQ(step.setting.passes, 2);
    EXPECT_NE(step.text.find("Up to 2.7 mm is left to trim: 2 passes by width, never by depth"), std::string::npos) << step.text;
}

// Expected from: pencil. Face up on a table: anticlockwise, so along A, below the opening, from C on the left to D; by
// hand with the face down, clockwise as it lies, it is the same along A.
TEST(Trimming, TellsTheWayAlongAWall) {
    hand::Job job = hand::windowJob();
    const auto says = [&](const std::string& words) {
        return trimSteps(job.project, job.solved).at(0).text.find(words) != std::string::npos;
    };
    EXPECT_TRUE(says("bearing at the tip. Lay the panel layout face up on the router table."));
    EXPECT_TRUE(says("Along A that is from C to D."));
    job.project.bench->trimWith = Router::Hand;
    EXPECT_TRUE(says("Along A that is from C to D."));
    job.project.bench->trimBit->bearingAt = BearingAt::Shank;
    EXPECT_TRUE(says("bearing at the shank. Lay the panel layout face up and clamp it"));
    EXPECT_TRUE(says("Along A that is from D to C."));
}

// Expected from: a bit that does not fit trims nothing, and no hole or rough cut helps.
TEST(Trimming, SaysSoWhereTheBitDoesNotFit) {
    hand::Job job = hand::windowJob();
    job.solved.cutouts[0].parts = 0;
    const WorkStep step = trimSteps(job.project, job.solved).at(0);
    EXPECT_FALSE(step.setting.bearing || step.setting.bite || step.setting.feedClockwise);
    EXPECT_NE(step.text.find("the 12.7 mm bit does not fit"), std::string::npos);
    EXPECT_TRUE(roughSteps(job.project, job.solved).empty());
    EXPECT_TRUE(drillSteps(job.project, job.solved).empty());
}

}  // namespace
}  // namespace kerfwall

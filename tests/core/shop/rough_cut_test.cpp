// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/rough_cut.h"

#include <gtest/gtest.h>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

// Expected from: r (1 - sin(angle / 2)) worked by pencil: 6.35 x 0.292893 = 1.860, 9.5 x 0.292893 = 2.782,
// 6.35 x (1 - 0.382683) = 3.920.
TEST(RoughCut, KerfThatClearsTheBitsRound) {
    EXPECT_NEAR(kerfThatClears(6.35, 90), 1.860, 5e-4);
    EXPECT_NEAR(kerfThatClears(9.5, 90), 2.782, 5e-4);
    EXPECT_NEAR(kerfThatClears(6.35, 45), 3.920, 5e-4);
}

// Expected from: pencil. Kerf 3.2: 0.5 to 2.7; wider than 1.86, so no corner asks for more.
TEST(RoughCut, LeavesHalfAMillimetreToTheKerfLessHalf) {
    const hand::Job job = hand::windowJob();
    const RoughCut rough = roughCutOf(job.solved, job.solved.cutouts[0]);
    EXPECT_DOUBLE_EQ(rough.leastLeft, 0.5);
    EXPECT_DOUBLE_EQ(rough.mostLeft, 2.7);
    EXPECT_TRUE(rough.sawOn.empty());
}

// Expected from: pencil. A bit of 25.4 needs 12.7 x 0.292893 = 3.72 at 90 degrees: every corner.
TEST(RoughCut, SawsOnToTheCrossingWhereTheKerfIsNarrowerThanTheBitsRound) {
    hand::Job job = hand::windowJob();
    job.solved.bitRadius = 12.7;
    EXPECT_EQ(roughCutOf(job.solved, job.solved.cutouts[0]).sawOn, (std::vector<std::size_t>{0, 1, 2, 3}));
}

// Expected from: pencil. A's kerf of 1.8 < 1.86 touches two corners, and is the narrowest: 1.3.
TEST(RoughCut, GoesByTheNarrowerOfTheTwoKerfs) {
    hand::Job job = hand::windowJob();
    job.solved.lines[0].kerfs[0].width = 1.8;
    const RoughCut rough = roughCutOf(job.solved, job.solved.cutouts[0]);
    EXPECT_EQ(rough.sawOn, (std::vector<std::size_t>{0, 3}));
    EXPECT_DOUBLE_EQ(rough.mostLeft, 1.3);
}

// Expected from: pencil. A bored corner has its round already, an inward corner none.
TEST(RoughCut, LeavesBoredAndInwardCornersAlone) {
    hand::Job job = hand::windowJob();
    job.solved.bitRadius = 12.7;
    SolvedCutout& cutout = job.solved.cutouts[0];
    cutout.corners[0].regime = Regime::Bored;
    cutout.corners[0].boreRadius = 20;
    cutout.corners[1].angle = 270;
    EXPECT_EQ(roughCutOf(job.solved, cutout).sawOn, (std::vector<std::size_t>{2, 3}));
}

// Expected from: pencil. In a kerf of 0.8 there is no room for half a millimetre on both sides: its middle.
TEST(RoughCut, GoesDownTheMiddleOfANarrowKerf) {
    hand::Job job = hand::windowJob();
    job.solved.lines[0].kerfs[0].width = 0.8;
    const RoughCut rough = roughCutOf(job.solved, job.solved.cutouts[0]);
    EXPECT_DOUBLE_EQ(rough.leastLeft, 0.4);
    EXPECT_DOUBLE_EQ(rough.mostLeft, 0.4);
}

// Expected from: the order of work: a closed cutout is sawn from a hole, an open one from the edge.
TEST(RoughCut, SaysWhichSawAndWhereItGoesIn) {
    hand::Job job = hand::windowJob();
    const auto says = [&](const std::string& words) {
        return roughSteps(job.project, job.solved).at(0).text.find(words) != std::string::npos;
    };
    EXPECT_TRUE(says("with a jigsaw, in from its starter hole."));
    job.solved.cutouts[0].corners[1].drill = ReliefHole{{285, 141}, 8};
    EXPECT_TRUE(says("with a jigsaw, in from a relief hole."));
    job.solved.cutouts[0].corners[0].regime = Regime::Bored;
    job.solved.cutouts[0].corners[0].boreRadius = 20;
    EXPECT_TRUE(says("with a jigsaw, in from a bore."));
    job.solved.cutouts[0].open = true;
    EXPECT_TRUE(says("with the band saw, or a jigsaw where the panel is too large for it, in from the panel's edge."));
}

// Expected from: pencil. 0.5 and 3.2 - 0.5; a kerf of 0.8 down its middle; a bit of 25.4 stands 12.7 (1 - sin 45) = 3.72
// off the lines.
TEST(RoughCut, SaysByHowMuchAndWhereOn) {
    hand::Job job = hand::windowJob();
    const auto text = [&] { return roughSteps(job.project, job.solved).at(0).text; };
    EXPECT_NE(text().find("Saw inside the kerfs and leave 0.5 mm to 2.7 mm of each kerf's floor"), std::string::npos) << text();
    job.solved.bitRadius = 12.7;
    job.project.bench->trimBit->diameter = 25.4;
    EXPECT_NE(text().find("the 25.4 mm bit stands up to 3.72 mm off the lines there"), std::string::npos) << text();
    job.solved.lines[0].kerfs[0].width = 0.8;
    EXPECT_NE(text().find("Saw inside the kerfs along their middle, 0.4 mm off each wall"), std::string::npos) << text();
}

}  // namespace
}  // namespace kerfwall

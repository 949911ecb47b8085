// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/kerf_steps.h"

#include <gtest/gtest.h>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

WorkStep cutting(const KerfSteps& kerfs, const LineId& line) {
    OrderOfWork order;
    order.steps = kerfs.steps;
    return hand::stepFor(order, line);
}

// Expected from: pencil, 400 x 250, kerf 3.2, bottom edge and bottom-left corner true. A at 90 has the waste
// beyond: fence 90.0. B at 146 has it between: 142.8. C at 110 from the left end, beyond: stop 110.0. D at
// 290, between: 286.8. The left end lies to the operator's right. Blade 6, and 18 through the sled.
TEST(KerfSteps, OfAWindowOn400By250) {
    const hand::Job job = hand::windowJob();
    const KerfSteps kerfs = kerfSteps(job.project, job.solved);
    EXPECT_EQ(kerfs.setups, 4);
    ASSERT_EQ(kerfs.steps.size(), 4u);
    EXPECT_DOUBLE_EQ(*cutting(kerfs, "A").setting.fence, 90.0);
    EXPECT_DOUBLE_EQ(*cutting(kerfs, "B").setting.fence, 142.8);
    EXPECT_DOUBLE_EQ(*cutting(kerfs, "C").setting.stop, 110.0);
    EXPECT_DOUBLE_EQ(*cutting(kerfs, "D").setting.stop, 286.8);
    EXPECT_DOUBLE_EQ(*cutting(kerfs, "A").setting.bladeHeight, 6.0);
    EXPECT_DOUBLE_EQ(*cutting(kerfs, "D").setting.bladeHeight, 18.0);
    EXPECT_EQ(cutting(kerfs, "C").stopSide, Side::Right);
    EXPECT_EQ(cutting(kerfs, "C").stopEdge, Edge::Left);
}

// Expected from: pencil. True at the right end instead: C is 290 from it, between: 286.8; D is 110, beyond.
TEST(KerfSteps, FromTheOtherSquareCorner) {
    hand::Job job = hand::windowJob();
    job.project.panel.squareCorner = SquareCorner::End;
    const KerfSteps kerfs = kerfSteps(job.project, job.solved);
    EXPECT_DOUBLE_EQ(*cutting(kerfs, "C").setting.stop, 286.8);
    EXPECT_DOUBLE_EQ(*cutting(kerfs, "D").setting.stop, 110.0);
    EXPECT_EQ(cutting(kerfs, "C").stopSide, Side::Left);
    EXPECT_EQ(cutting(kerfs, "C").stopEdge, Edge::Right);
}

// Expected from: pencil. Reference edge at the top: A is 160 from it, its waste between: 156.8; B is 104,
// beyond. The top edge runs from the right corner, so the right end leads.
TEST(KerfSteps, FromTheTopEdge) {
    hand::Job job = hand::windowJob();
    job.project.panel.referenceEdge = Edge::Top;
    const KerfSteps kerfs = kerfSteps(job.project, job.solved);
    EXPECT_DOUBLE_EQ(*cutting(kerfs, "A").setting.fence, 156.8);
    EXPECT_DOUBLE_EQ(*cutting(kerfs, "B").setting.fence, 104.0);
    EXPECT_EQ(cutting(kerfs, "A").leads, Edge::Right);
    EXPECT_EQ(cutting(kerfs, "C").stopEdge, Edge::Right) << "the top edge starts at the right";
}

// Expected from: pencil. Two lines laid on one another's setting: 90 with the waste beyond, and 93.2 with the
// waste between (93.2 - 3.2 = 90.0).
TEST(KerfSteps, KerfsOfOneSettingShareAStep) {
    hand::Job job = hand::windowJob();
    job.solved.lines.push_back(hand::level(job.project, "E", 93.2, Side::Right));
    const KerfSteps kerfs = kerfSteps(job.project, job.solved);
    EXPECT_EQ(kerfs.setups, 4);
    const WorkStep step = cutting(kerfs, "E");
    EXPECT_EQ(step.lines, (std::vector<LineId>{"A", "E"}));
    EXPECT_EQ(step.sides, (std::vector<Side>{Side::Left, Side::Right}));
}

// Expected from: the report, version 1: the side of the stop and the angle are part of the setting.
TEST(KerfSteps, AStopOnTheOtherSideIsAnotherSetup) {
    Way way;
    way.saw = 1;
    way.setting.stop = 110;
    way.stopSide = Side::Left;
    Way other = way;
    other.stopSide = Side::Right;
    EXPECT_NE(setupKey(way, "C"), setupKey(other, "D"));
    other = way;
    other.stopEdge = Edge::Left;
    other.against = Edge::Top;
    other.faceUp = false;
    EXPECT_EQ(setupKey(way, "C"), setupKey(other, "D"));
    other.setting.angle = 3;
    EXPECT_NE(setupKey(way, "C"), setupKey(other, "D"));
}

// Expected from: the report, version 1: cut to marks, each line is a set-up, both its sides are one.
TEST(KerfSteps, CutToMarksEachLineIsASetup) {
    hand::Job job = hand::windowJob();
    job.project.panel.squareCorner = SquareCorner::None;
    job.solved.lines[3].kerfs.push_back(job.solved.lines[3].kerfs[0]);
    job.solved.lines[3].kerfs[1].side = Side::Right;
    const KerfSteps kerfs = kerfSteps(job.project, job.solved);
    EXPECT_EQ(kerfs.setups, 4);
    EXPECT_EQ(kerfs.steps.size(), 5u);
    const WorkStep step = cutting(kerfs, "C");
    EXPECT_FALSE(step.setting.stop || step.stopEdge);
    EXPECT_EQ(step.against, Edge::Bottom);
}

// Expected from: pencil. Face down on the rip fence the left end leads: A stands 250 - 90 = 160 from the left
// edge's start (its top). On the sled the top edge is free: C stands 400 - 110 = 290 from its start (right).
TEST(KerfSteps, ShowsTheMarkThatMeetsTheBlade) {
    const hand::Job job = hand::windowJob();
    const KerfSteps kerfs = kerfSteps(job.project, job.solved);
    EXPECT_EQ(cutting(kerfs, "A").see, (std::vector<EdgeMark>{{Edge::Left, 160}}));
    EXPECT_EQ(cutting(kerfs, "C").see, (std::vector<EdgeMark>{{Edge::Top, 290}}));
}

TEST(KerfSteps, ShowsBothMarksAtTheRail) {  // Expected from: pencil, as above; bottom starts at the left.
    hand::Job job = hand::windowJob();
    job.solved.lines[2].kerfs[0].saw = 3;
    const WorkStep step = cutting(kerfSteps(job.project, job.solved), "C");
    EXPECT_EQ(step.saw, "rail");
    EXPECT_EQ(step.see, (std::vector<EdgeMark>{{Edge::Bottom, 110}, {Edge::Top, 290}}));
    EXPECT_TRUE(step.faceUp);
}

// Expected from: pencil. A fence on the far side turns the panel half round and hides the bottom edge.
TEST(KerfSteps, OnASledWithItsFenceFar) {
    hand::Job job = hand::windowJob();
    job.project.bench->saws[1].fenceFar = true;
    const WorkStep step = cutting(kerfSteps(job.project, job.solved), "C");
    EXPECT_EQ(step.stopSide, Side::Left);
    EXPECT_EQ(step.leads, Edge::Bottom);
    EXPECT_EQ(step.see, (std::vector<EdgeMark>{{Edge::Top, 290}}));
}

TEST(KerfSteps, SaysSoWhereNoSawCanCut) {  // Expected from: a kerf nobody can cut is not passed over.
    hand::Job job = hand::windowJob();
    job.solved.lines[0].kerfs[0].saw = std::nullopt;
    job.solved.lines[1].kerfs[0].saw = 1;  // the sled cannot cut along its own fence
    const KerfSteps kerfs = kerfSteps(job.project, job.solved);
    EXPECT_NE(cutting(kerfs, "A").text.find("No saw on the bench can cut A"), std::string::npos);
    EXPECT_NE(cutting(kerfs, "B").text.find("The saw sled cannot make the cut B"), std::string::npos);
    EXPECT_EQ(kerfs.setups, 4);
}

// Expected from: the settings above, said in words: the number and the mark to cut to.
TEST(KerfSteps, SaysTheNumberAndTheMark) {
    const hand::Job job = hand::windowJob();
    const KerfSteps kerfs = kerfSteps(job.project, job.solved);
    EXPECT_EQ(
        cutting(kerfs, "B").text,
        "On the table saw (rip) set the rip fence, on the right of the blade, 142.8 mm from its face to the "
        "nearer face of the blade. Set the blade 6.0 mm above the table. Lay the panel layout face down with "
        "its "
        "bottom edge on the fence; the left end leads. Cut B to its mark 146.0 mm from the bottom-left "
        "corner on "
        "the left edge, the kerf on the ticked side of the line.");
    EXPECT_EQ(cutting(kerfs, "D").text,
              "On the crosscut sled (sled) set the blade 18.0 mm above the table, 6.0 mm above the sled's "
              "base of 12.0 mm. "
              "Lay the panel layout face down with its bottom edge on the sled's fence, which is near to "
              "you; the top "
              "edge leads. Set the stop on the right of the blade, 286.8 mm from its face to the nearer face "
              "of the "
              "blade, and hold the panel's left edge to it. Cut D to its mark 290.0 mm from the top-left "
              "corner on the "
              "top edge, the kerf on the ticked side of the line.");
}

// Expected from: pencil. Pushed down a line of 250 from its upper end, places count from there: full depth
// from 250 - 200 = 50 to 250 - 90 = 160, run-outs from 20 to 190.
TEST(KerfSteps, TellsAStoppedCutFromWhereTheSawStarts) {
    hand::Job job = hand::windowJob();
    SolvedLine& line = job.solved.lines[3];
    Kerf& kerf = line.kerfs[0];
    kerf.saw = 3;
    kerf.stopped = true;
    kerf.surfaceFrom = 60;
    kerf.fullFrom = 90;
    kerf.fullTo = 200;
    kerf.surfaceTo = 230;
    const WorkStep step = cutting(kerfSteps(job.project, job.solved), "D");
    EXPECT_EQ(step.leads, Edge::Top);
    EXPECT_EQ(step.setting.plunge, (PlungeMarks{90, 200, 60, 230}));
    EXPECT_NE(step.text.find(
                  "starts on the top edge: plunge so that the blade meets the face at 20.0 mm and is at full "
                  "depth at 50.0 mm; stop with the blade at full depth at 160.0 mm, its run out ending at "
                  "190.0 mm."),
              std::string::npos)
        << step.text;
}

TEST(KerfSteps, PutsThroughKerfsOfASawBeforeStoppedOnes) {  // Expected from: the order of work's rule.
    hand::Job job = hand::windowJob();
    for (SolvedLine& line : job.solved.lines) {
        line.kerfs[0].saw = 3;
    }
    job.solved.lines[0].kerfs[0].stopped = true;
    EXPECT_EQ(kerfSteps(job.project, job.solved).steps.back().lines, std::vector<LineId>{"A"});
}

// Expected from: pencil. On 400 x 250 true all round A at 100 with the waste above and B at 150 with it below both
// come out of a fence at 100.0, the bottom edge on it and then the top.
TEST(KerfSteps, SaysThatTheSettingStaysWhereThePanelIsTurned) {
    hand::Job job = hand::windowJob();
    job.project.panel.squareCorner = SquareCorner::All;
    job.project.plan.prefer = Prefer::FewestSetups;
    job.solved.lines = {hand::level(job.project, "A", 100, Side::Left), hand::level(job.project, "B", 150, Side::Right)};
    // Of the ways at the rip fence the second has the top edge on it.
    job.solved.lines[1].kerfs[0].way = 1;
    const KerfSteps kerfs = kerfSteps(job.project, job.solved);
    EXPECT_EQ(kerfs.setups, 1);
    ASSERT_EQ(kerfs.steps.size(), 2u);
    EXPECT_EQ(kerfs.steps[1].against, Edge::Top);
    EXPECT_DOUBLE_EQ(*kerfs.steps[1].setting.fence, 100.0);
    EXPECT_TRUE(kerfs.steps[1].text.starts_with(
        "The setting stays as it is: turn the panel end for end, and A and B come out at the same distance from "
        "their edges, centred by themselves. On the table saw"))
        << kerfs.steps[1].text;
    EXPECT_TRUE(kerfs.steps[0].text.starts_with("On the table saw"));
}

}  // namespace
}  // namespace kerfwall

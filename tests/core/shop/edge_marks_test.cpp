// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/edge_marks.h"

#include <gtest/gtest.h>

#include "core/shop/kerf_steps.h"
#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

// Expected from: pencil. A line 80 above the bottom of a 250 panel stands 170 from the left edge's start, its
// top corner, and 80 from the right edge's; a maker measures 80 from the bottom corners on both.
TEST(EdgeMarks, AreMeasuredFromTheReferenceEdgeAndTickedTowardsTheWaste) {
    const Project project = hand::panelOf(400, 250);
    const SolvedLine line = hand::level(project, "A", 80, Side::Left);
    EXPECT_EQ(line.marks[0].mark, (EdgeMark{Edge::Left, 170}));
    EXPECT_EQ(tickedMarkText(project, line.marks[0]),
              "left edge 80.0 mm from the bottom, tick to the top");
    EXPECT_EQ(tickedMarkText(project, line.marks[1]),
              "right edge 80.0 mm from the bottom, tick to the top");
}

// Expected from: pencil. An upright line 110 from the left is 290 from the right, where the true corner is.
TEST(EdgeMarks, AreMeasuredFromTheTrueCorner) {
    Project project = hand::panelOf(400, 250);
    const SolvedLine line = hand::upright(project, "C", 110, Side::Right);
    EXPECT_EQ(tickedMarkText(project, line.marks[1]),
              "top edge 110.0 mm from the left, tick to the right");
    project.panel.squareCorner = SquareCorner::End;
    EXPECT_EQ(tickedMarkText(project, line.marks[0]), "bottom edge 290.0 mm from the right, tick to the right");
}

TEST(EdgeMarks, AreTickedOnBothSidesOfALineWithTwoKerfs) {  // Expected from: the project file, version 1.
    const Project project = hand::panelOf(400, 250);
    EXPECT_EQ(tickedMarkText(project, {{Edge::Right, 80}, true, true}),
              "right edge 80.0 mm from the bottom, ticks on both sides");
}

// Expected from: the order of work: the edge is trued and its corner checked before anything is measured.
TEST(EdgeMarks, ComeAfterTheEdgeIsChecked) {
    hand::Job job = hand::windowJob();
    const std::vector<WorkStep> steps = markSteps(job.project, job.solved, kerfSteps(job.project, job.solved).steps);
    ASSERT_EQ(steps.size(), 2u);
    EXPECT_EQ(steps[0].text,
              "Check the bottom edge with a straightedge and true it: a factory edge is no reference until "
              "it is checked. "
              "Check with a square that the bottom-left corner is a true right angle.");
    EXPECT_EQ(steps[1].lines, (std::vector<LineId>{"A", "B", "C", "D"}));
}

// Expected from: pencil. Rip fence, bottom edge on it, left end leading: A's and B's marks on the left edge are in view.
// On the sled the bottom edge lies on the fence: C's and D's on the top edge. The other four are hidden or not looked at.
TEST(EdgeMarks, AreOnlyThoseAStepLooksAt) {
    const hand::Job job = hand::windowJob();
    const WorkStep step = markSteps(job.project, job.solved, kerfSteps(job.project, job.solved).steps).at(1);
    EXPECT_EQ(step.see, (std::vector<EdgeMark>{{Edge::Left, 160}, {Edge::Left, 104}, {Edge::Top, 290}, {Edge::Top, 110}}));
    EXPECT_EQ(step.text,
              "Mark the edges, with a tick on the waste side of each mark. Carry those of A, B, C and D square over the edge "
              "to the back: the panel lies face down where they are cut.\n"
              "A: left edge 90.0 mm from the bottom, tick to the top.\n"
              "B: left edge 146.0 mm from the bottom, tick to the bottom.\n"
              "C: top edge 110.0 mm from the left, tick to the right.\n"
              "D: top edge 290.0 mm from the left, tick to the left.");
}

// Expected from: a rail lies on its line's marks at both ends, the panel face up: nothing to carry over.
TEST(EdgeMarks, ARailIsLaidOnBothMarks) {
    hand::Job job = hand::windowJob();
    job.solved.lines = {hand::level(job.project, "A", 90, Side::Left, 3)};
    job.project.lines.resize(1);
    job.project.lines[0].id = "A";
    job.project.lines[0].saw = "rail";
    const WorkStep step = markSteps(job.project, job.solved, kerfSteps(job.project, job.solved).steps).at(1);
    EXPECT_EQ(step.see, (std::vector<EdgeMark>{{Edge::Left, 160}, {Edge::Right, 90}}));
    EXPECT_EQ(step.text.find("Carry"), std::string::npos);
}

// Expected from: a line that bounds nothing is not cut; a foot line is marked though it is not.
TEST(EdgeMarks, LeaveOutLinesThatAreNotCutAndKeepFootLines) {
    hand::Job job = hand::windowJob();
    job.solved.lines[0].kerfs.clear();
    job.solved.lines[1].kerfs.clear();
    job.solved.lines[1].cut = false;
    const WorkStep step = markSteps(job.project, job.solved, kerfSteps(job.project, job.solved).steps).at(1);
    EXPECT_EQ(step.lines, (std::vector<LineId>{"B", "C", "D"}));
    EXPECT_NE(step.text.find("B (a foot line, not cut): "), std::string::npos);
}

}  // namespace
}  // namespace kerfwall

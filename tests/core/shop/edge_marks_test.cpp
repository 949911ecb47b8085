// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/edge_marks.h"

#include <gtest/gtest.h>

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
              "80.0 mm from the bottom-left corner on the left edge, tick towards the top-left corner");
    EXPECT_EQ(tickedMarkText(project, line.marks[1]),
              "80.0 mm from the bottom-right corner on the right edge, tick towards the top-right corner");
}

// Expected from: pencil. An upright line 110 from the left is 290 from the right, where the true corner is.
TEST(EdgeMarks, AreMeasuredFromTheTrueCorner) {
    Project project = hand::panelOf(400, 250);
    const SolvedLine line = hand::upright(project, "C", 110, Side::Right);
    EXPECT_EQ(tickedMarkText(project, line.marks[1]),
              "110.0 mm from the top-left corner on the top edge, tick towards the top-right corner");
    project.panel.squareCorner = SquareCorner::End;
    EXPECT_EQ(
        tickedMarkText(project, line.marks[0]),
        "290.0 mm from the bottom-right corner on the bottom edge, tick towards the bottom-right corner");
}

TEST(EdgeMarks, AreTickedOnBothSidesOfALineWithTwoKerfs) {  // Expected from: the project file, version 1.
    const Project project = hand::panelOf(400, 250);
    EXPECT_EQ(tickedMarkText(project, {{Edge::Right, 80}, true, true}),
              "80.0 mm from the bottom-right corner on the right edge, ticks on both sides");
}

// Expected from: the order of work: the edge is trued and its corner checked before anything is measured.
TEST(EdgeMarks, ComeAfterTheEdgeIsChecked) {
    hand::Job job = hand::windowJob();
    const std::vector<WorkStep> steps = markSteps(job.project, job.solved);
    ASSERT_EQ(steps.size(), 2u);
    EXPECT_EQ(steps[0].text,
              "Check the bottom edge with a straightedge and true it: a factory edge is no reference until "
              "it is checked. "
              "Check with a square that the bottom-left corner is a true right angle.");
    EXPECT_EQ(steps[1].lines, (std::vector<LineId>{"A", "B", "C", "D"}));
    EXPECT_EQ(steps[1].see.size(), 8u);
}

// Expected from: a line that bounds nothing is not cut; a foot line is marked though it is not.
TEST(EdgeMarks, LeaveOutLinesThatAreNotCutAndKeepFootLines) {
    hand::Job job = hand::windowJob();
    job.solved.lines[0].kerfs.clear();
    job.solved.lines[1].kerfs.clear();
    job.solved.lines[1].cut = false;
    const WorkStep step = markSteps(job.project, job.solved).at(1);
    EXPECT_EQ(step.lines, (std::vector<LineId>{"B", "C", "D"}));
    EXPECT_NE(step.text.find("B (a foot line, not cut): "), std::string::npos);
}

}  // namespace
}  // namespace kerfwall

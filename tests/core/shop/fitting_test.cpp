// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/fitting.h"

#include <gtest/gtest.h>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

// Expected from: pencil. 250 high, bottom edge true: holes 100 and 200 along the left edge, which runs down
// from the top, stand 150 and 50 above the bottom-left corner; half of 18 is 9.
TEST(Fitting, ClampHolesOfOneSettingShareAStep) {
    Project project = hand::panelOf(400, 250, 18);
    project.clampHoles = {{"high", Edge::Left, 100, 10, 60, {}, {}},
                          {"low", Edge::Left, 200, 10, 60, 9.0, {}},
                          {"", Edge::Right, 200, 10, 60, {}, {}}};
    const std::vector<WorkStep> steps = holeSteps(project);
    ASSERT_EQ(steps.size(), 2u);
    EXPECT_EQ(steps[0].text,
              "Drill clamp holes of 10.0 mm into the left edge, 60.0 mm deep to the drill's point by the "
              "depth stop, the "
              "axis 9.0 mm below the layout face: 150.0 mm from the bottom-left corner on the left edge "
              "(high) and 50.0 mm "
              "from the bottom-left corner on the left edge (low).");
    EXPECT_EQ(steps[1].see, (std::vector<EdgeMark>{{Edge::Right, 200}}));
}

TEST(Fitting, AFenceOnTheBackIsFixedWithTheFaceDown) {  // Expected from: the project file, version 1.
    Project project = hand::panelOf(400, 250);
    Fence fence;
    fence.along = Edge::Bottom;
    fence.offset = 30;
    fence.to = 400;
    fence.width = 20;
    fence.height = 15;
    fence.groove = 3;
    fence.face = Face::Back;
    project.fences = {fence};
    const WorkStep step = fenceSteps(project).at(0);
    EXPECT_FALSE(step.faceUp);
    EXPECT_EQ(step.text,
              "Fix a straight fence of 20.0 mm by 15.0 mm to the back face, the face the work touches 30.0 "
              "mm to the left "
              "of the bottom edge, from 0.0 mm to 400.0 mm along it, its body on the left of that face. It "
              "stands in a "
              "groove 3.0 mm deep.");
}

// Expected from: pencil. Face 30 above the bottom edge, body 20 wide on its left: 30 to 50. On the right of the face of a
// stop 60 to the left of upright C at 110, running up: from x = 50 to 110 - 60 + 20 = 70.
TEST(Fitting, AGrooveIsToldFromTheEdgesThatAreMeasuredFrom) {
    hand::Job job = hand::windowJob();
    Fence level;
    level.along = Edge::Bottom;
    level.offset = 30;
    level.to = 400;
    level.width = 20;
    level.groove = 3;
    level.face = Face::Back;
    Fence upright = level;
    upright.along = LineId("C");
    upright.offset = 60;
    upright.body = Side::Right;
    upright.to = 100;
    upright.kind = FenceKind::Stop;
    upright.face = Face::Layout;
    Fence flat = level;
    flat.groove = 0;
    job.project.fences = {flat, level, upright};
    const std::vector<WorkStep> steps = grooveSteps(job.project, job.solved);
    ASSERT_EQ(steps.size(), 2u);
    EXPECT_EQ(steps[0].fence, 1u);
    EXPECT_EQ(steps[0].setting.depth, 3);
    EXPECT_FALSE(steps[0].faceUp);
    EXPECT_EQ(steps[0].text,
              "Cut the groove of the straight fence into the back face, 3.0 mm deep and 20.0 mm wide, its sides 30.0 mm "
              "and 50.0 mm from the bottom edge, from 0.0 mm to 400.0 mm along the bottom edge.");
    EXPECT_TRUE(steps[1].faceUp);
    EXPECT_NE(steps[1].text.find("groove of the stop into the layout face"), std::string::npos) << steps[1].text;
    EXPECT_NE(steps[1].text.find("its sides 50.0 mm and 70.0 mm from the left edge"), std::string::npos) << steps[1].text;
}

TEST(Fitting, TheLabelSaysBushCutterAndFace) {  // Expected from: the use as given.
    Project project = hand::panelOf(400, 250);
    project.title = "Crate end";
    project.use.byBush = true;
    Solved solved;
    solved.use.guide = 24;
    solved.use.cutter = 12.7;
    EXPECT_EQ(
        labelStep(project, solved).text,
        "Write on the template: Crate end; guide bush 24.0 mm, cutter 12.7 mm; layout face on the work.");
}

// Expected from: pencil. Kerfs 6 deep in 12: the bores are unbroken from 6 to 12.
TEST(Fitting, TheLabelSaysWhereBoredCornersAreRidden) {
    hand::Job job = hand::windowJob();
    EXPECT_EQ(labelStep(job.project, job.solved).text.find("ride it"), std::string::npos);
    job.solved.cutouts[0].corners[1].regime = Regime::Bored;
    job.solved.cutouts[0].corners[1].boreRadius = 20;
    const std::string text = labelStep(job.project, job.solved).text;
    EXPECT_NE(text.find("ride it 6.0 mm to 12.0 mm below the layout face"), std::string::npos) << text;
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/panel_after.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

hand::Job openedJob() {
    hand::Job job = hand::windowJob();
    job.solved.cutouts.front().opening = makeOutline({polygonLoop({{110, 90}, {290, 90}, {290, 146}, {110, 146}})});
    return job;
}

std::size_t firstOf(const OrderOfWork& order, Task task) {
    return static_cast<std::size_t>(std::ranges::find(order.steps, task, &WorkStep::task) - order.steps.begin());
}

// A law: the panel before a step is the panel after the one before it.
TEST(PanelAfter, EachStepBeginsWhereTheOneBeforeEnds) {
    const hand::Job job = openedJob();
    const OrderOfWork order = plan(job.project, job.solved);
    ASSERT_GT(order.steps.size(), 6U);
    for (std::size_t i = 1; i < order.steps.size(); ++i) {
        const PanelAfter one = panelAfter(job.solved, order, i - 1);
        std::vector<KerfPlace> kerfs = one.before.kerfs;
        kerfs.insert(kerfs.end(), one.here.kerfs.begin(), one.here.kerfs.end());
        EXPECT_EQ(panelAfter(job.solved, order, i).before.kerfs, kerfs) << i;
    }
}

// A law: every kerf is cut once, by one step.
TEST(PanelAfter, EveryKerfIsCutOnce) {
    const hand::Job job = openedJob();
    const OrderOfWork order = plan(job.project, job.solved);
    const PanelAfter last = panelAfter(job.solved, order, order.steps.size() - 1);
    for (std::size_t line = 0; line < 4; ++line) {
        EXPECT_EQ(std::ranges::count(last.before.kerfs, KerfPlace{line, 0}), 1) << line;
    }
    EXPECT_EQ(last.before.kerfs.size(), 4U);
}

TEST(PanelAfter, AtTheRoughCutTheKerfsAreThereAndNothingIsTrimmed) {
    const hand::Job job = openedJob();
    const OrderOfWork order = plan(job.project, job.solved);
    const PanelAfter after = panelAfter(job.solved, order, firstOf(order, Task::Rough));
    EXPECT_EQ(after.before.kerfs.size(), 4U);
    EXPECT_EQ(after.here.sawnOut, std::vector<std::size_t>{0});
    EXPECT_TRUE(after.before.trimmed.empty());
    EXPECT_TRUE(after.here.trimmed.empty());
}

// A groove is cut before its fence is fixed in it.
TEST(PanelAfter, AFencesGrooveComesBeforeTheFence) {
    hand::Job job = openedJob();
    Fence fence;
    fence.along = Edge::Bottom;
    fence.offset = 20;
    fence.from = 50;
    fence.to = 350;
    fence.width = 20;
    fence.groove = 4;
    job.project.fences = {fence};
    const OrderOfWork order = plan(job.project, job.solved);
    const std::size_t groove = firstOf(order, Task::Fence);
    EXPECT_EQ(panelAfter(job.solved, order, groove).here.grooves, std::vector<std::size_t>{0});
    EXPECT_TRUE(panelAfter(job.solved, order, groove).here.fences.empty());
    const PanelAfter last = panelAfter(job.solved, order, order.steps.size() - 1);
    EXPECT_EQ(last.before.grooves, std::vector<std::size_t>{0});
    EXPECT_EQ(last.before.fences, std::vector<std::size_t>{0});
}

// Two stretches of one line, cut apart: only the plunge marks tell them.
TEST(PanelAfter, TwoStoppedKerfsOfOneLineAreToldApartByTheirPlungeMarks) {
    Solved solved;
    SolvedLine line;
    line.id = "A";
    line.from = {0, 90};
    line.to = {400, 90};
    line.kerfs = {{Side::Left, 3, 2.2, 6, true, 60, 120, 30, 150}, {Side::Left, 3, 2.2, 6, true, 250, 300, 220, 330}};
    solved.lines = {line};
    WorkStep step;
    step.task = Task::Kerf;
    step.lines = {"A"};
    step.sides = {Side::Left};
    step.setting.plunge = PlungeMarks{250, 300, 220, 330};
    EXPECT_EQ(doneBy(solved, step).kerfs, (std::vector<KerfPlace>{{0, 1}}));
}

}  // namespace
}  // namespace kerfwall

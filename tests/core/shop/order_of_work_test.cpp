// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/order_of_work.h"

#include <gtest/gtest.h>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

std::vector<Task> tasksOf(const OrderOfWork& order) {
    std::vector<Task> tasks;
    for (const WorkStep& step : order.steps) {
        if (tasks.empty() || tasks.back() != step.task) {
            tasks.push_back(step.task);
        }
    }
    return tasks;
}

hand::Job everything() {
    hand::Job job = hand::windowJob();
    for (Corner& corner : job.solved.cutouts[0].corners) {
        corner.drill = ReliefHole{corner.point, 8};
    }
    Corner& bored = job.solved.cutouts[0].corners[0];
    bored.regime = Regime::Bored;
    bored.boreRadius = 20;
    bored.drill.reset();
    job.project.clampHoles = {{"one", Edge::Left, 100, 10, 50, {}, {}}};
    job.project.fences.resize(1);
    return job;
}

// Expected from: the rules of the order: edge and marks, bores before the kerfs tangent to them, kerfs before
// relief holes, these before the rough cut, this before trimming, then what is left by hand, fences, clamp holes
// last, label.
TEST(OrderOfWork, KeepsItsRules) {
    const hand::Job job = everything();
    EXPECT_EQ(tasksOf(plan(job.project, job.solved)),
              (std::vector{Task::Mark, Task::Bore, Task::Kerf, Task::Drill, Task::Rough, Task::Trim,
                           Task::Hand, Task::Fence, Task::Hole, Task::Label}));
}

TEST(OrderOfWork, NumbersItsStepsFromOne) {  // Expected from: counting.
    const hand::Job job = everything();
    int number = 0;
    for (const WorkStep& step : plan(job.project, job.solved).steps) {
        EXPECT_EQ(step.number, ++number);
        EXPECT_FALSE(step.text.empty());
        EXPECT_EQ(step.text.back(), '.');
    }
}

TEST(OrderOfWork, IsEmptyForAnEmptyPanel) {  // Expected from: nothing to cut, nothing to do.
    const OrderOfWork order = plan(hand::panelOf(400, 250), {});
    EXPECT_TRUE(order.steps.empty());
    EXPECT_EQ(order.setups, 0);
    EXPECT_EQ(order.lowerBound, 0);
}

TEST(OrderOfWork, IsTheSameForTheSameProject) {  // Expected from: law.
    const hand::Job job = everything();
    EXPECT_EQ(plan(job.project, job.solved).steps, plan(job.project, job.solved).steps);
}

// Expected from: law: the order lines were laid in changes neither set-ups nor bound.
TEST(OrderOfWork, DoesNotCareInWhichOrderLinesWereLaid) {
    hand::Job job = hand::windowJob();
    job.solved.lines.push_back(hand::level(job.project, "E", 93.2, Side::Right));
    const OrderOfWork before = plan(job.project, job.solved);
    std::swap(job.solved.lines[0], job.solved.lines[4]);
    std::swap(job.solved.lines[1], job.solved.lines[2]);
    const OrderOfWork after = plan(job.project, job.solved);
    EXPECT_EQ(before.setups, after.setups);
    EXPECT_EQ(before.lowerBound, after.lowerBound);
}

TEST(OrderOfWork, TellsLengthsInTheProjectsUnits) {  // Expected from: 142.8 / 25.4 = 5.622.
    hand::Job job = hand::windowJob();
    job.project.units = Units::Inches;
    EXPECT_NE(hand::stepFor(plan(job.project, job.solved), "B").text.find("5.622\""), std::string::npos);
}

TEST(OrderOfWork, PrintsTheCautionsOfTheSawThatIsUsed) {  // Expected from: common practice, no source.
    const hand::Job job = hand::windowJob();
    const OrderOfWork order = plan(job.project, job.solved);
    const auto says = [](const WorkStep& step, const std::string& words) {
        for (const std::string& caution : step.cautions) {
            if (caution.find(words) != std::string::npos) {
                return true;
            }
        }
        return false;
    };
    const WorkStep rip = hand::stepFor(order, "A");
    const WorkStep sled = hand::stepFor(order, "C");
    EXPECT_TRUE(says(rip, "push stick at least 450 mm"));
    EXPECT_FALSE(says(sled, "push stick"));
    for (const WorkStep& step : {rip, sled}) {
        EXPECT_TRUE(says(step, "only where your rules allow it"));
        EXPECT_TRUE(says(step, "hidden blade"));
        EXPECT_TRUE(says(step, "manual"));
    }
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/work_reasons.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

/// A window with one bored corner (A with D), relief holes in the others, a fence in a groove and a clamp hole.
hand::Job everything() {
    hand::Job job = hand::windowJob();
    for (Corner& corner : job.solved.cutouts[0].corners) corner.drill = ReliefHole{corner.point, 8};
    Corner& bored = job.solved.cutouts[0].corners[0];
    bored.regime = Regime::Bored;
    bored.boreRadius = 20;
    bored.drill.reset();
    job.project.clampHoles = {{"one", Edge::Left, 100, 10, 50, {}, {}}};
    job.project.fences.resize(1);
    job.project.fences[0].width = 18;
    job.project.fences[0].to = 200;
    job.project.fences[0].groove = 4;
    return job;
}

/// A kerf of `line` stopped between those places along it.
void stop(hand::Job& job, std::size_t line, double from, double to) {
    Kerf& kerf = job.solved.lines.at(line).kerfs.at(0);
    kerf.stopped = true;
    kerf.saw = 3;
    kerf.fullFrom = from;
    kerf.fullTo = to;
    kerf.surfaceFrom = std::max(0.0, from - 30);
    kerf.surfaceTo = to + 30;
    job.project.lines.resize(4);
    job.project.lines[line].extent = Extent::Stopped;
}

std::size_t placeOf(const OrderOfWork& order, const LineId& line) {
    for (std::size_t i = 0; i < order.steps.size(); ++i) {
        const WorkStep& step = order.steps[i];
        if (step.task == Task::Kerf && std::ranges::find(step.lines, line) != step.lines.end()) return i;
    }
    return order.steps.size();
}

// Expected from: the rules themselves, as a law over every pair of steps.
TEST(WorkReasons, NoStepComesBeforeOneItWaitsFor) {
    const hand::Job job = everything();
    const OrderOfWork order = plan(job.project, job.solved);
    for (std::size_t late = 0; late < order.steps.size(); ++late) {
        for (std::size_t early = 0; early < late; ++early) {
            for (const WorkRule& rule : workRules()) {
                const WorkStep& one = order.steps[early];
                const WorkStep& other = order.steps[late];
                const bool broken = rule.first != rule.then && one.task == rule.then && other.task == rule.first &&
                                    !isGroove(one) && !isGroove(other);
                EXPECT_FALSE(broken) << one.text << other.text;
            }
        }
    }
}

// Expected from: the order of work: only A and D touch the bore of their corner; all others are cut to marks.
TEST(WorkReasons, EachStepThatWaitsSaysWhy) {
    const hand::Job job = everything();
    const OrderOfWork order = plan(job.project, job.solved);
    EXPECT_EQ(order.steps[0].because, "");
    EXPECT_EQ(order.steps[1].because, "The edge is trued before anything is measured from it.");
    EXPECT_EQ(order.steps[2].task, Task::Bore);
    EXPECT_EQ(order.steps[2].because, "The edges are checked before centres are measured from them.");
    for (const LineId line : {"A", "D"}) {
        EXPECT_EQ(order.steps[placeOf(order, line)].because, "Bores come before the kerfs that must touch them.");
    }
    for (const LineId line : {"B", "C"}) {
        EXPECT_EQ(order.steps[placeOf(order, line)].because, "Marks come before the kerfs that are cut to them.");
    }
    const auto because = [&](Task task) {
        return std::ranges::find_if(order.steps, [&](const WorkStep& is) { return is.task == task && !isGroove(is); })->because;
    };
    EXPECT_EQ(because(Task::Drill), "Kerfs come before the relief holes, which stand between them.");
    EXPECT_EQ(because(Task::Rough), "Holes come before the rough cut, which starts and turns in them.");
    EXPECT_EQ(because(Task::Trim), "The rough cut comes before trimming: nothing may stand in the bearing's way.");
    EXPECT_EQ(because(Task::Hand), "Trimming stops at the bores; what it leaves there is cleaned after it.");
    EXPECT_EQ(because(Task::Fence), "Fences are fixed when no saw or router has to pass them any more.");
    EXPECT_EQ(because(Task::Hole), "Clamp holes come last, with the depth stop, when nothing more weakens the panel.");
    EXPECT_EQ(because(Task::Label), "");
}

// Expected from: the order of work: grooves while the panel still has its reference edge, so before any sawing out.
TEST(WorkReasons, AFencesGrooveComesBeforeTheRoughCut) {
    const hand::Job job = everything();
    const OrderOfWork order = plan(job.project, job.solved);
    const auto groove = std::ranges::find_if(order.steps, isGroove);
    const auto rough = std::ranges::find(order.steps, Task::Rough, &WorkStep::task);
    ASSERT_NE(groove, order.steps.end());
    EXPECT_LT(groove, rough);
    EXPECT_EQ(groove->because, "Grooves for a fence are cut while the panel still has its reference edge.");
    EXPECT_EQ(std::ranges::count(order.steps, Task::Fence, &WorkStep::task), 2);
}

// Expected from: the report's table: a border is thin under 25; on the limit it is not. C runs 250.
TEST(WorkReasons, ABorderIsThinUnderItsCare) {
    hand::Job job = hand::windowJob();
    const auto thin = [&](double from, double to) {
        stop(job, 2, from, to);
        return sparesThinBorder(job.project, job.solved.lines[2]);
    };
    EXPECT_TRUE(thin(24.9, 100));
    EXPECT_FALSE(thin(25, 100));
    EXPECT_TRUE(thin(90, 225.1));
    EXPECT_FALSE(thin(90, 225));
    EXPECT_FALSE(thin(0, 250));  // it runs out at full depth: no border there
    job.project.limits["border-thin"].care = 30;
    EXPECT_TRUE(thin(25, 100));
    EXPECT_FALSE(sparesThinBorder(job.project, job.solved.lines[0])) << "a through kerf spares none";
}

// Expected from: the same rule where the bench names the rail saw first: C, stopped 20 from the edge, waits all the same.
TEST(WorkReasons, ThroughKerfsComeBeforeOneThatSparesAThinBorder) {
    hand::Job job = hand::windowJob();
    std::ranges::swap(job.project.bench->saws[0], job.project.bench->saws[3]);
    for (SolvedLine& line : job.solved.lines) {
        if (line.kerfs[0].saw == 0) line.kerfs[0].saw = 3;
    }
    stop(job, 2, 20, 160);
    job.solved.lines[2].kerfs[0].saw = 0;
    const OrderOfWork order = plan(job.project, job.solved);
    const std::size_t stopped = placeOf(order, "C");
    for (const LineId line : {"A", "B", "D"}) EXPECT_LT(placeOf(order, line), stopped) << line;
    ASSERT_LT(stopped, order.steps.size());
    EXPECT_EQ(order.steps[stopped].because, "Through kerfs come before stopped ones, which spare a thin border.");
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/same_step.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

WorkStep kerfStep(const std::vector<LineId>& lines, double fence) {
    WorkStep step;
    step.task = Task::Kerf;
    step.lines = lines;
    step.sides.assign(lines.size(), Side::Left);
    step.setting.fence = fence;
    return step;
}

WorkStep stepOf(Task task) {
    WorkStep step;
    step.task = task;
    return step;
}

TEST(SameStep, KeepsItsKerfWhateverItsNumberAndSetting) {
    const std::vector<WorkStep> before{stepOf(Task::Mark), kerfStep({"A"}, 90), kerfStep({"B"}, 142.8)};
    const std::vector<WorkStep> now{stepOf(Task::Mark), stepOf(Task::Bore), kerfStep({"B"}, 142.8), kerfStep({"A"}, 95)};
    EXPECT_EQ(sameStep(before, 1, now), 3U);
    EXPECT_EQ(sameStep(before, 2, now), 2U);
}

TEST(SameStep, IsGoneWithItsLine) {
    const std::vector<WorkStep> before{kerfStep({"A"}, 90), kerfStep({"B"}, 142.8)};
    EXPECT_EQ(sameStep(before, 0, {kerfStep({"B"}, 142.8)}), std::nullopt);
}

TEST(SameStep, TheOtherSideOfALineIsAnotherStep) {
    std::vector<WorkStep> now{kerfStep({"A"}, 90)};
    now.front().sides = {Side::Right};
    EXPECT_EQ(sameStep({kerfStep({"A"}, 90)}, 0, now), std::nullopt);
}

TEST(SameStep, WhereItWasSplitItIsTheOneThatSharesMostKerfs) {
    const std::vector<WorkStep> now{kerfStep({"A"}, 90), kerfStep({"B", "C"}, 90)};
    EXPECT_EQ(sameStep({kerfStep({"A", "B", "C"}, 90)}, 0, now), 1U);
}

TEST(SameStep, OfStepsAboutTheSameLinesTheSecondStaysTheSecond) {
    const std::vector<WorkStep> twice{kerfStep({"A"}, 90), kerfStep({"A"}, 90)};
    EXPECT_EQ(sameStep(twice, 1, {stepOf(Task::Mark), twice[0], twice[1]}), 2U);
    EXPECT_EQ(sameStep(twice, 0, {stepOf(Task::Mark), twice[0], twice[1]}), 1U);
    EXPECT_EQ(sameStep(twice, 1, {twice[0]}), 0U);
}

}  // namespace
}  // namespace kerfwall

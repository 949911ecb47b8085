// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/cautions.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

bool says(const std::vector<std::string>& cautions, const std::string& words) {
    return std::ranges::any_of(cautions, [&](const std::string& is) { return is.find(words) != std::string::npos; });
}

// Expected from: bench practice for circular saws and the machine's own manual first; common practice, no source.
TEST(Cautions, ATableSawSaysWhatItsHiddenBladeAsksFor) {
    const Project project = hand::panelOf(400, 250);
    for (const SawKind kind : {SawKind::RipFence, SawKind::CrosscutSled, SawKind::MitreGauge}) {
        const auto said = sawCautions(project, kind);
        for (const std::string words : {"only where your rules allow it", "Unplug", "riving knife", "hidden blade", "freehand",
                                        "Wait for the blade to stop", "dust", "manual"}) {
            EXPECT_TRUE(says(said, words)) << words;
        }
        EXPECT_EQ(says(said, "push stick at least 450 mm"), kind == SawKind::RipFence);
        EXPECT_EQ(says(said, "crowd the blade"), kind == SawKind::RipFence);
    }
    EXPECT_TRUE(says(sawCautions(project, SawKind::GuideRail), "Clamp the panel and the rail."));
    EXPECT_FALSE(says(sawCautions(project, SawKind::GuideRail), "hidden blade"));
}

// Expected from: limits for wood dust as published: UK 3 with hardwood in the mix and 5 for softwood; USA 15 total to 1.
TEST(Cautions, DustLimitsDifferByCountry) {
    EXPECT_TRUE(says(taskCautions(Task::Rough), "3 to 5 mg/m³ in the UK, 1 to 15 in the USA"));
}

// Expected from: the window: A, then B on the rip fence, C, then D on the sled. The second of each points to the first.
TEST(Cautions, AreSaidInFullAtAMachinesFirstStep) {
    const hand::Job job = hand::windowJob();
    const OrderOfWork order = plan(job.project, job.solved);
    std::vector<std::string> firstOf;
    for (const WorkStep& step : order.steps) {
        if (step.task != Task::Kerf) continue;
        const auto said = stepWithSameCautions(order, step);
        const bool isFirst = std::ranges::find(firstOf, step.saw) == firstOf.end();
        EXPECT_EQ(!said, isFirst) << step.saw;
        EXPECT_TRUE(!said || order.steps.at(static_cast<std::size_t>(*said - 1)).saw == step.saw);
        if (isFirst) firstOf.push_back(step.saw);
    }
    EXPECT_EQ(firstOf.size(), 2u);
    EXPECT_EQ(stepWithSameCautions(order, order.steps.front()), std::nullopt) << "nothing to be hurt by";
}

}  // namespace
}  // namespace kerfwall

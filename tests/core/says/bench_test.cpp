// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/bench.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

// Expected from: the stock bench of the project file, version 1.
TEST(StockBench, HasFourSawsInTheirOrder) {
    const Bench bench = stockBench();
    ASSERT_EQ(bench.saws.size(), 4U);
    EXPECT_EQ(bench.saws[0].id, "rip");
    EXPECT_EQ(bench.saws[1].id, "sled");
    EXPECT_EQ(bench.saws[2].id, "gauge");
    EXPECT_EQ(bench.saws[3].id, "rail");
}

// Expected from: the stock bench of the project file, version 1.
TEST(StockBench, SawsHaveTheirStatedSizes) {
    const Saw rip = stockSaw(SawKind::RipFence);
    EXPECT_EQ(rip.kerf, 3.2);
    EXPECT_EQ(rip.blade, 254);
    EXPECT_EQ(rip.repeatability, 0.15);
    EXPECT_EQ(rip.maxFence, 600);
    EXPECT_EQ(rip.fenceSide, Side::Right);
    const Saw sled = stockSaw(SawKind::CrosscutSled);
    EXPECT_EQ(sled.kerf, 3.2);
    EXPECT_EQ(sled.repeatability, 0.1);
    EXPECT_EQ(sled.base, 12);
    EXPECT_EQ(sled.maxCut, 600);
    EXPECT_EQ(sled.squareness, 0.1);
    EXPECT_FALSE(sled.fenceFar);
    const Saw gauge = stockSaw(SawKind::MitreGauge);
    EXPECT_EQ(gauge.repeatability, 0.2);
    EXPECT_EQ(gauge.maxAngle, 60);
    EXPECT_EQ(gauge.squareness, 0.2);
    EXPECT_TRUE(gauge.stop);
    const Saw rail = stockSaw(SawKind::GuideRail);
    EXPECT_EQ(rail.kerf, 2.2);
    EXPECT_EQ(rail.blade, 160);
    EXPECT_EQ(rail.repeatability, 0.25);
    EXPECT_EQ(rail.rail, 0);
    EXPECT_EQ(rail.railLength, 1400);
    EXPECT_EQ(rail.railWidth, 180);
    EXPECT_EQ(rail.railSide, Side::Left);
    const Saw mitre = stockSaw(SawKind::SlidingMitre);
    EXPECT_EQ(mitre.maxCut, 300);
    EXPECT_EQ(mitre.maxAngle, 60);
    EXPECT_EQ(mitre.repeatability, 0.2);
}

// Expected from: the stock bench of the project file, version 1.
TEST(StockBench, HasItsRouterTools) {
    const Bench bench = stockBench();
    ASSERT_TRUE(bench.trimBit.has_value());
    EXPECT_EQ(bench.trimBit->diameter, 12.7);
    EXPECT_EQ(bench.trimBit->bearingLength, 5);
    EXPECT_EQ(bench.trimBit->cuttingLength, 25);
    EXPECT_EQ(bench.trimBit->bearingAt, BearingAt::Tip);
    EXPECT_EQ(bench.trimWith, Router::Table);
    EXPECT_EQ(bench.cornerDrill, 8);
    EXPECT_EQ(bench.bores, (std::vector<double>{20, 25, 30, 35, 40, 50}));
    EXPECT_EQ(bench.circleBit, 8);
    EXPECT_EQ(bench.base, 150);
    EXPECT_TRUE(bench.clamps.empty());
}

TEST(FindSaw, FindsByIdOrNot) {
    const Bench bench = stockBench();
    ASSERT_NE(findSaw(bench, "gauge"), nullptr);
    EXPECT_EQ(findSaw(bench, "gauge")->kind, SawKind::MitreGauge);
    EXPECT_EQ(findSaw(bench, "none"), nullptr);
}

}  // namespace
}  // namespace kerfwall

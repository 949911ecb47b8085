// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/saw_reach.h"

#include <gtest/gtest.h>

#include <tuple>

#include "core/geometry/kerf_layout.h"
#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

Saw sawOf(SawKind kind, double blade = 254) {
    Saw saw;
    saw.kind = kind;
    saw.blade = blade;
    return saw;
}

bool reachesFromTheBottom(const Saw& saw, Point from, Point to, double depth = 6, bool stopped = false) {
    return reaches(saw, {from, to, depth, stopped}, Edge::Bottom, hand::panelOf(700, 700).panel);
}

// Expected from: sqrt(d (D - d)) with a calculator.
TEST(SawReach, TheShallowEndAtTheFenceIsHalfTheBladesChord) {
    for (const auto& [blade, depth, length] : {std::tuple{250.0, 6.0, 38.262},
                                               {254.0, 6.0, 38.575},
                                               {160.0, 6.0, 30.397},
                                               {165.0, 6.0, 30.887},
                                               {305.0, 6.0, 42.356},
                                               {315.0, 6.0, 43.058},
                                               {216.0, 5.5, 34.026},
                                               {184.0, 5.0, 29.917}}) {
        EXPECT_NEAR(spacerFor(sawOf(SawKind::SlidingMitre, blade), depth), length, 5e-4) << blade;
    }
}

// Expected from: sqrt(R^2 - (R - d + w)^2), 3 of a kerf 6 deep: 27.221 past full depth with a blade of
// 250, 21.703 with 160.
TEST(SawReach, AWallOf3StandsShorterThanTheRunOut) {
    EXPECT_NEAR(reachOfRound(250, 6, 3), 27.221, 5e-4);
    EXPECT_NEAR(reachOfRound(160, 6, 3), 21.703, 5e-4);
}

TEST(SawReach, ATableSawNeverStops) {  // Expected from: the project file, version 1.
    for (const SawKind kind : {SawKind::RipFence, SawKind::CrosscutSled, SawKind::MitreGauge}) {
        EXPECT_FALSE(canStop(kind));
    }
    EXPECT_TRUE(canStop(SawKind::GuideRail));
    EXPECT_TRUE(canStop(SawKind::SlidingMitre));
    EXPECT_TRUE(reachesFromTheBottom(sawOf(SawKind::GuideRail), {100, 0}, {100, 700}, 6, true));
    EXPECT_FALSE(reachesFromTheBottom(sawOf(SawKind::MitreGauge), {100, 0}, {100, 700}, 6, true));
}

// Expected from: each saw's own limit: a fence to 600, a sled that cuts 600, a gauge to 60 degrees, a rail of
// 1400.
TEST(SawReach, KeepsToEachSawsLimit) {
    EXPECT_TRUE(reachesFromTheBottom(sawOf(SawKind::RipFence), {0, 600}, {700, 600}));
    EXPECT_FALSE(reachesFromTheBottom(sawOf(SawKind::RipFence), {0, 600.1}, {700, 600.1}));
    EXPECT_FALSE(reachesFromTheBottom(sawOf(SawKind::RipFence), {0, 300}, {700, 301}));
    EXPECT_TRUE(reachesFromTheBottom(sawOf(SawKind::CrosscutSled), {100, 0}, {100, 600}));
    EXPECT_FALSE(reachesFromTheBottom(sawOf(SawKind::CrosscutSled), {100, 0}, {100, 600.1}));
    // 300 tan 60 is 519.6: from 100 at the bottom to 619.6, 300 up, leans by 60 degrees.
    EXPECT_TRUE(reachesFromTheBottom(sawOf(SawKind::MitreGauge), {100, 0}, {619, 300}));
    EXPECT_FALSE(reachesFromTheBottom(sawOf(SawKind::MitreGauge), {100, 0}, {620, 300}));
    EXPECT_FALSE(reachesFromTheBottom(sawOf(SawKind::MitreGauge), {0, 300}, {700, 300}));
    Saw rail = sawOf(SawKind::GuideRail);
    rail.railLength = 699;
    EXPECT_FALSE(reachesFromTheBottom(rail, {0, 300}, {700, 300}));
}

TEST(SawReach, ABladeMustBeMoreThanTwiceTheKerfsDepth) {  // Expected from: the project file, version 1.
    EXPECT_TRUE(reachesFromTheBottom(sawOf(SawKind::GuideRail, 80), {0, 300}, {700, 300}, 39));
    EXPECT_FALSE(reachesFromTheBottom(sawOf(SawKind::GuideRail, 80), {0, 300}, {700, 300}, 40));
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/saw_limit.h"

#include <gtest/gtest.h>

#include "tests/core/geometry/projects.h"

namespace kerfwall::test {
namespace {

const AskedCut kAlong{{0, 90}, {400, 90}, 6, false};
const AskedCut kSquare{{110, 0}, {110, 250}, 6, false};
const AskedCut kHalf{{0, 0}, {250, 250}, 6, false};  // leans 45 degrees from square

Saw with(SawKind kind, double Saw::* limit, double value) {
    Saw saw = stockSaw(kind);
    saw.*limit = value;
    return saw;
}

std::optional<BeyondSaw> beyond(const Saw& saw, const AskedCut& cut) {
    return limitBeyond(saw, cut, Edge::Bottom, panelOf(400, 250).panel);
}

// Expected from: pencil, on both sides of each limit: 90 from the edge on the fence, runs of 400, 250 and
// 250 sqrt 2, a lean of 45 degrees, a kerf 6 deep.
TEST(SawLimit, TheFenceOpensAsFarAsTheLineLies) {
    EXPECT_EQ(beyond(with(SawKind::RipFence, &Saw::maxFence, 89.9), kAlong), (BeyondSaw{SawLimit::Fence, 90, 89.9}));
    EXPECT_EQ(beyond(with(SawKind::RipFence, &Saw::maxFence, 90), kAlong), std::nullopt);
}
TEST(SawLimit, TheSledCutsAsFarAsTheLineRuns) {
    EXPECT_EQ(beyond(with(SawKind::CrosscutSled, &Saw::maxCut, 249), kSquare), (BeyondSaw{SawLimit::Cut, 250, 249}));
    EXPECT_EQ(beyond(with(SawKind::CrosscutSled, &Saw::maxCut, 250), kSquare), std::nullopt);
}
TEST(SawLimit, TheRailIsAsLongAsTheLine) {
    EXPECT_EQ(beyond(with(SawKind::GuideRail, &Saw::railLength, 399), kAlong), (BeyondSaw{SawLimit::Rail, 400, 399}));
    EXPECT_EQ(beyond(with(SawKind::GuideRail, &Saw::railLength, 400), kAlong), std::nullopt);
}
TEST(SawLimit, TheGaugeTurnsAsFarAsTheLineLeans) {
    const auto told = beyond(with(SawKind::MitreGauge, &Saw::maxAngle, 44.9), kHalf);
    ASSERT_TRUE(told);
    EXPECT_EQ(told->limit, SawLimit::Angle);
    EXPECT_NEAR(told->asked.value_or(0), 45, 1e-9);
    EXPECT_EQ(told->most, 44.9);
    EXPECT_EQ(beyond(with(SawKind::MitreGauge, &Saw::maxAngle, 45.1), kHalf), std::nullopt);
}
// A wedge on a sled slides along the fence when it is steeper than 10 degrees: common practice, no source.
TEST(SawLimit, ASledsWedgeTurnsTenDegrees) {
    const auto told = beyond(stockSaw(SawKind::CrosscutSled), kHalf);
    ASSERT_TRUE(told);
    EXPECT_EQ(told->limit, SawLimit::Angle);
    EXPECT_EQ(told->most, 10);
}
TEST(SawLimit, TheBladeIsWiderThanTwiceTheDepth) {
    EXPECT_EQ(beyond(with(SawKind::RipFence, &Saw::blade, 12), kAlong), (BeyondSaw{SawLimit::Blade, 12, 12}));
    EXPECT_EQ(beyond(with(SawKind::RipFence, &Saw::blade, 12.1), kAlong), std::nullopt);
}
// 250 + sqrt(6 (250 - 6)) = 250 + 38.262: a sliding mitre saw's cut takes the blade's round as well.
TEST(SawLimit, TheMitreSawsCutTakesTheBladesRoundToo) {
    Saw saw = with(SawKind::SlidingMitre, &Saw::blade, 250);
    saw.maxCut = 288;
    const auto told = beyond(saw, kSquare);
    ASSERT_TRUE(told);
    EXPECT_EQ(told->limit, SawLimit::Cut);
    EXPECT_NEAR(told->asked.value_or(0), 288.262, 5e-4);
    saw.maxCut = 288.3;
    EXPECT_EQ(beyond(saw, kSquare), std::nullopt);
}
TEST(SawLimit, OnlyRailAndMitreSawCanStop) {
    AskedCut cut = kAlong;
    cut.stopped = true;
    EXPECT_EQ(beyond(stockSaw(SawKind::RipFence), cut), (BeyondSaw{SawLimit::CannotStop, {}, {}}));
    EXPECT_EQ(beyond(stockSaw(SawKind::GuideRail), cut), std::nullopt);
}
TEST(SawLimit, NoFenceAcrossThePushCutsAlongItselfNorARipFenceAcross) {
    EXPECT_EQ(beyond(stockSaw(SawKind::MitreGauge), kAlong), (BeyondSaw{SawLimit::Direction, {}, {}}));
    EXPECT_EQ(beyond(stockSaw(SawKind::RipFence), kSquare), (BeyondSaw{SawLimit::Direction, {}, {}}));
}

// Expected from: law: a limit is told exactly where the saw does not reach.
TEST(SawLimit, IsToldExactlyWhereTheSawDoesNotReach) {
    const Panel panel = panelOf(400, 250).panel;
    int told = 0, reached = 0;
    for (const SawKind kind : {SawKind::RipFence, SawKind::CrosscutSled, SawKind::MitreGauge, SawKind::GuideRail,
                               SawKind::SlidingMitre}) {
        for (const double most : {100.0, 300.0, 600.0}) {
            Saw saw = stockSaw(kind);
            saw.maxFence = saw.maxCut = saw.railLength = most;
            saw.maxAngle = most / 10;
            for (AskedCut cut : {kAlong, kSquare, kHalf, AskedCut{{110, 0}, {130, 250}, 6, false}}) {
                for (const bool stopped : {false, true}) {
                    cut.stopped = stopped;
                    for (const Edge edge : kEdges) {
                        const bool isBeyond = limitBeyond(saw, cut, edge, panel).has_value();
                        EXPECT_EQ(isBeyond, !reaches(saw, cut, edge, panel));
                        ++(isBeyond ? told : reached);
                    }
                }
            }
        }
    }
    EXPECT_GT(told, 100);
    EXPECT_GT(reached, 50);
}

// Expected from: of the edges said to be true the one that suits the saw best is spoken of.
TEST(SawLimit, SpeaksOfTheEdgeThatSuitsTheSaw) {
    Panel panel = panelOf(400, 250).panel;
    panel.squareCorner = SquareCorner::All;
    const Saw saw = with(SawKind::RipFence, &Saw::maxFence, 50);
    EXPECT_EQ(limitBeyond(saw, kSquare, panel)->limit, SawLimit::Fence);
    EXPECT_EQ(limitBeyond(saw, AskedCut{{380, 0}, {380, 250}, 6, false}, panel), std::nullopt);
}

// Expected from: pencil: 16 in are 406.4 mm.
TEST(SawLimit, SpeaksInTheProjectsUnits) {
    Project project = panelOf(406.4, 250);
    project.units = Units::Inches;
    const BeyondSaw told{SawLimit::Rail, 406.4, 381};
    EXPECT_EQ(limitWords(project, stockSaw(SawKind::GuideRail), told), "its rail lets it cut 15\", and the line runs 16\"");
}

}  // namespace
}  // namespace kerfwall::test

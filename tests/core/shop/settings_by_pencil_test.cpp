// SPDX-License-Identifier: GPL-3.0-or-later
// How a panel lies and where its stop stands, 24 ways by pencil.
#include <gtest/gtest.h>

#include <algorithm>
#include <ostream>

#include "core/shop/stop_setting.h"
#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

constexpr std::size_t kSled = 1;
constexpr std::size_t kGauge = 2;

struct Case {
    const char* what;
    bool fenceFar;
    Edge against;
    Edge stopEdge;
    bool wasteRight;  ///< of the line, seen from the layout face
    double stop;
    Side stopSide;
    Edge leads;
};

std::ostream& operator<<(std::ostream& out, const Case& is) { return out << is.what; }

Project trueAllRound() {
    Project project = hand::panelOf(400, 250);
    project.panel.squareCorner = SquareCorner::All;
    return project;
}

Way wayTo(const Project& project, const Saw& saw, Point from, Point to, bool wasteRight, Edge against, Edge stopEdge) {
    const SolvedLine line = hand::lineOf(project, "A", from, to, wasteRight ? Side::Right : Side::Left, kSled);
    const std::vector<Way> ways = stopWays(project.panel, saw, hand::asked(line), against);
    const auto way = std::ranges::find(ways, std::optional(stopEdge), &Way::stopEdge);
    return way == ways.end() ? Way{} : *way;
}

class OnTheSled : public testing::TestWithParam<Case> {};

// Expected from: pencil. The line stands 60 from the left and 340 from the right of a panel of 400; the kerf
// is 3.2. Where it lies between line and stop, 3.2 less. Turn a sheet of paper over, left for right, lower edge
// towards you: its right end lies to your left. With the fence far it is turned half round, and with the upper
// edge on the fence again.
TEST_P(OnTheSled, StopSideAndLeadingEdge) {
    const Case& is = GetParam();
    const Project project = trueAllRound();
    Saw saw = project.bench->saws[kSled];
    saw.fenceFar = is.fenceFar;
    const Way way = wayTo(project, saw, {60, 0}, {60, 250}, is.wasteRight, is.against, is.stopEdge);
    EXPECT_NEAR(way.setting.stop.value_or(-1), is.stop, 1e-9);
    EXPECT_EQ(way.stopSide, is.stopSide);
    EXPECT_EQ(way.leads, is.leads);
    EXPECT_FALSE(way.faceUp);
}

constexpr Edge B = Edge::Bottom, T = Edge::Top, L = Edge::Left, R = Edge::Right;
INSTANTIATE_TEST_SUITE_P(
    SixteenWays, OnTheSled,
    testing::Values(Case{"near, bottom, left end, waste right", false, B, L, true, 60.0, Side::Right, T},
                    Case{"near, bottom, left end, waste left", false, B, L, false, 56.8, Side::Right, T},
                    Case{"near, bottom, right end, waste right", false, B, R, true, 336.8, Side::Left, T},
                    Case{"near, bottom, right end, waste left", false, B, R, false, 340.0, Side::Left, T},
                    Case{"near, top, left end, waste right", false, T, L, true, 60.0, Side::Left, B},
                    Case{"near, top, left end, waste left", false, T, L, false, 56.8, Side::Left, B},
                    Case{"near, top, right end, waste right", false, T, R, true, 336.8, Side::Right, B},
                    Case{"near, top, right end, waste left", false, T, R, false, 340.0, Side::Right, B},
                    Case{"far, bottom, left end, waste right", true, B, L, true, 60.0, Side::Left, B},
                    Case{"far, bottom, left end, waste left", true, B, L, false, 56.8, Side::Left, B},
                    Case{"far, bottom, right end, waste right", true, B, R, true, 336.8, Side::Right, B},
                    Case{"far, bottom, right end, waste left", true, B, R, false, 340.0, Side::Right, B},
                    Case{"far, top, left end, waste right", true, T, L, true, 60.0, Side::Right, T},
                    Case{"far, top, left end, waste left", true, T, L, false, 56.8, Side::Right, T},
                    Case{"far, top, right end, waste right", true, T, R, true, 336.8, Side::Left, T},
                    Case{"far, top, right end, waste left", true, T, R, false, 340.0, Side::Left, T}));

struct Turned {
    const char* what;
    double top;  ///< where the line leaves at the top; at the bottom it stands at 100
    Edge stopEdge;
    bool wasteRight;
    double stop;
    Side stopSide;
    Side turn;
};

std::ostream& operator<<(std::ostream& out, const Turned& is) { return out << is.what; }

class OnTheGauge : public testing::TestWithParam<Turned> {};

// Expected from: pencil. 10 degrees over 250 is 250 tan 10 = 44.0817. Along the fence the kerf counts
// 3.2 / cos 10 = 3.24937. Leaning to the left as drawn the line leans to the right face down, so the panel is
// turned anticlockwise to bring it along the push.
TEST_P(OnTheGauge, StopSideAndTurn) {
    const Turned& is = GetParam();
    const Project project = trueAllRound();
    const Way way = wayTo(project, project.bench->saws[kGauge], {100, 0}, {is.top, 250}, is.wasteRight, B, is.stopEdge);
    EXPECT_NEAR(way.setting.stop.value_or(-1), is.stop, 1e-4);
    EXPECT_NEAR(way.setting.angle.value_or(-1), 10, 1e-4);
    EXPECT_EQ(way.stopSide, is.stopSide);
    EXPECT_EQ(way.turn, is.turn);
    EXPECT_EQ(way.leads, T);
}

INSTANTIATE_TEST_SUITE_P(
    EightWays, OnTheGauge,
    testing::Values(Turned{"leans left, left end, waste right", 55.9183, L, true, 100.0, Side::Right, Side::Left},
                    Turned{"leans left, left end, waste left", 55.9183, L, false, 96.7506, Side::Right, Side::Left},
                    Turned{"leans left, right end, waste right", 55.9183, R, true, 296.7506, Side::Left, Side::Left},
                    Turned{"leans left, right end, waste left", 55.9183, R, false, 300.0, Side::Left, Side::Left},
                    Turned{"leans right, left end, waste right", 144.0817, L, true, 100.0, Side::Right, Side::Right},
                    Turned{"leans right, left end, waste left", 144.0817, L, false, 96.7506, Side::Right, Side::Right},
                    Turned{"leans right, right end, waste right", 144.0817, R, true, 296.7506, Side::Left, Side::Right},
                    Turned{"leans right, right end, waste left", 144.0817, R, false, 300.0, Side::Left, Side::Right}));

}  // namespace
}  // namespace kerfwall

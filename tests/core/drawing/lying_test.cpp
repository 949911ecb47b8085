// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/lying.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/drawing/plan_parts.h"
#include "core/geometry/edge_place.h"
#include "core/shop/heading.h"
#include "core/shop/lie.h"
#include "core/shop/stop_setting.h"
#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

/// The middle of an edge as the operator sees it.
Point middleOf(const Project& project, const Lying& lying, Edge edge) {
    return lying.put(markPlace(project.panel, {edge, edgeLength(project.panel, edge) / 2}));
}

WorkStep stepAt(const std::string& saw, Edge against, bool faceUp) {
    WorkStep step;
    step.task = Task::Kerf;
    step.saw = saw;
    step.against = against;
    step.faceUp = faceUp;
    return step;
}

// lie.h: face down, the bottom edge on a fence near the operator: the panel lies beyond it, its right end to the left.
TEST(Lying, FaceDownOnANearFenceTheRightEndLiesToTheLeft) {
    const Project project = hand::panelOf(400, 250);
    const Lying lying = lyingAt(project, stepAt("sled", Edge::Bottom, false));
    EXPECT_EQ(lying.put({400, 0}), (Point{-400, 0}));
    EXPECT_EQ(lying.put({0, 250}), (Point{0, 250}));
    EXPECT_TRUE(lying.isMirrored());
}

// lie.h: with the rip fence on the right the panel lies to its left and the left end leads, away from the operator.
TEST(Lying, OnARipFenceTheEdgeRunsTowardsTheOperator) {
    const Project project = hand::panelOf(400, 250);
    const Lying lying = lyingAt(project, stepAt("rip", Edge::Bottom, false));
    EXPECT_EQ(lying.put({400, 0}), (Point{0, -400}));
    EXPECT_EQ(lying.put({0, 250}), (Point{-250, 0}));
}

// A law, on every edge, fence near and far, on either side of the blade, face up and down: what the picture shows lies
// where lie.h says it does, and the picture is mirrored exactly where we look at the back.
TEST(Lying, AgreesWithTheWordsOfTheSettingEverywhere) {
    for (const bool far : {false, true}) {
        Project project = hand::panelOf(400, 250);
        project.bench->saws[1].fenceFar = far;
        project.bench->saws[0].fenceSide = far ? Side::Left : Side::Right;
        Saw mitre;
        mitre.id = "mitre";
        mitre.kind = SawKind::SlidingMitre;
        project.bench->saws.push_back(mitre);
        for (const Edge against : kEdges) {
            const Lying sled = lyingAt(project, stepAt("sled", against, false));
            EXPECT_TRUE(sled.isMirrored());
            const bool endOnLeft = middleOf(project, sled, nextOf(against)).x < middleOf(project, sled, previousOf(against)).x;
            EXPECT_EQ(endOnLeft, sideOfEnd(true, far, false) == Side::Left);
            EXPECT_EQ(middleOf(project, sled, against).y > middleOf(project, sled, oppositeOf(against)).y, far);

            const Lying arm = lyingAt(project, stepAt("mitre", against, true));
            EXPECT_FALSE(arm.isMirrored());
            const bool armEndOnLeft = middleOf(project, arm, nextOf(against)).x < middleOf(project, arm, previousOf(against)).x;
            EXPECT_EQ(armEndOnLeft, sideOfEnd(true, true, true) == Side::Left);
            EXPECT_GT(middleOf(project, arm, against).y, middleOf(project, arm, oppositeOf(against)).y);

            const Lying rip = lyingAt(project, stepAt("rip", against, false));
            const Side fence = project.bench->saws[0].fenceSide;
            const Edge leads = leadsAlongFence(against, fence);
            EXPECT_TRUE(rip.isMirrored());
            EXPECT_GT(middleOf(project, rip, leads).y, middleOf(project, rip, oppositeOf(leads)).y);
            EXPECT_EQ(middleOf(project, rip, against).x > middleOf(project, rip, oppositeOf(against)).x, fence == Side::Right);
        }
    }
}

// A law: turned end for end, the opposite edge on the same fence, everything lies half round.
TEST(Lying, TurnedEndForEndEverythingLiesHalfRound) {
    const Project project = hand::panelOf(400, 250);
    const Lying one = lyingAt(project, stepAt("rip", Edge::Bottom, false));
    const Lying other = lyingAt(project, stepAt("rip", Edge::Top, false));
    EXPECT_EQ(other.right, -1.0 * one.right);
    EXPECT_EQ(other.up, -1.0 * one.up);
}

// A law: whichever way it leans, a gauge or a wedge turns the panel until the kerf lies along the push.
TEST(Lying, AGaugeOrAWedgeBringsTheKerfAlongThePush) {
    const Project project = hand::panelOf(400, 250);
    for (const double lean : {-30.0, 12.0}) {
        const Point from{200, 0};
        const Point to{200 + 250 * std::tan(lean * 3.141592653589793 / 180), 250};
        const SolvedLine line = hand::lineOf(project, "S", from, to, Side::Left, 2);
        for (const std::size_t saw : {1U, 2U}) {
            const Way way = stopWays(project.panel, project.bench->saws[saw], hand::asked(line), Edge::Bottom).back();
            WorkStep step = stepAt(project.bench->saws[saw].id, Edge::Bottom, way.faceUp);
            step.setting = way.setting;
            step.turn = way.turn;
            const Point run = lyingAt(project, step).put(to - from);
            EXPECT_NEAR(run.x / length(run), 0, 1e-9) << lean << ' ' << saw;
        }
    }
}

TEST(Lying, AMirroredArcTurnsTheOtherWay) {
    OutlineLoop loop = circleLoop({10, 20}, 5);
    const OutlineLoop seen = laid(loop, Lying{{-1, 0}, {0, 1}});
    EXPECT_EQ(seen.front().centre, (Point{-10, 20}));
    EXPECT_NE(seen.front().turn, loop.front().turn);
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/fencing.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

/// The grid of four with its middle face, round (200, 118), as waste.
Project withWindow() {
    Project project = gridOfFour();
    project.cutouts.push_back({"window", {{200, 118}}, {}, {}, {}});
    return project;
}

Fence fenceOn(const Base& along, double offset, double from, double to, Side body) {
    Fence fence;
    fence.along = along;
    fence.offset = offset;
    fence.from = from;
    fence.to = to;
    fence.body = body;
    fence.width = 20;
    fence.height = 15;
    return fence;
}

std::optional<Fence> placed(const Project& project, const FenceWish& wish) { return fenceFor(project, solve(project), wish); }

// Expected from: pencil. Beside the bottom edge a body 20 wide lies between the edge and a face 20 above it.
TEST(Fencing, AClickOnAnEdgePutsTheBodyBesideIt) {
    const auto fence = placed(withWindow(), {Edge::Bottom, {}, {130, 3}, {}, 1});
    ASSERT_TRUE(fence);
    EXPECT_EQ(*fence, fenceOn(Edge::Bottom, 20, 0, 400, Side::Right));
    const std::vector<Point> body = fenceBody(withWindow(), solve(withWindow()), *fence);
    EXPECT_EQ(body, (std::vector<Point>{{0, 20}, {400, 20}, {400, 0}, {0, 0}}));
}

// Expected from: pencil. A runs to the right at y 90, the window lies above it, on its left: the body below.
TEST(Fencing, AClickOnALineLaysTheFaceOnItAndTheBodyOffTheCutout) {
    const auto fence = placed(withWindow(), {LineId("A"), {}, {60, 90}, {}, 1});
    ASSERT_TRUE(fence);
    EXPECT_EQ(*fence, fenceOn(LineId("A"), 0, 0, 400, Side::Right));
    const auto over = placed(withWindow(), {LineId("A"), {}, {60, 90}, 80.0, 1});
    ASSERT_TRUE(over);
    EXPECT_EQ(over->body, Side::Left) << "at y 170 it lies above the window";
}

// Expected from: pencil. The top edge runs to the left from x 400: 130 is 270 along it, 250 to 290 round that.
TEST(Fencing, AStopStandsRoundThePlaceAndStaysOnThePanel) {
    FenceKindOf stop;
    stop.kind = FenceKind::Stop;
    const auto fence = placed(withWindow(), {Edge::Top, stop, {130, 247}, 30.0, 1});
    ASSERT_TRUE(fence);
    EXPECT_EQ(fence->from, 250);
    EXPECT_EQ(fence->to, 290);
    EXPECT_EQ(fence->offset, 30);
    EXPECT_EQ(fence->body, Side::Right);
    EXPECT_EQ(fence->kind, FenceKind::Stop);
    EXPECT_EQ(placed(withWindow(), {Edge::Top, stop, {398, 247}, 30.0, 1})->from, 0);
}

// Expected from: pencil. A line at 45 degrees through (0, 0) leaves the panel at (250, 250). 50 sqrt 2 to its left the
// face enters at (0, 100), 50 sqrt 2 = 70.71 along, and leaves at (150, 250), 200 sqrt 2 = 282.84 along.
TEST(Fencing, AFaceBesideASlantingLineEndsAtThePanelsEdges) {
    Project project = blankPanel();
    addLine(project, "S", ByPoints{{0, 0}, {100, 100}});
    const auto fence = placed(project, {LineId("S"), {}, {50, 50}, 50 * std::sqrt(2.0), 1});
    ASSERT_TRUE(fence);
    EXPECT_EQ(fence->from, 71);
    EXPECT_EQ(fence->to, 282);
    EXPECT_FALSE(placed(project, {Edge::Bottom, {}, {50, 0}, 251.0, 1})) << "off the panel";
}

TEST(Fencing, ALineIsMeantBeforeAnEdgeAndNothingInTheOpen) {
    const Project project = withWindow();
    const Solved solved = solve(project);
    EXPECT_EQ(fenceBaseNear(project, solved, {60, 92}, 5, 20), std::optional<Base>(LineId("A")));
    EXPECT_EQ(fenceBaseNear(project, solved, {60, 12}, 5, 20), std::optional<Base>(Edge::Bottom));
    EXPECT_EQ(fenceBaseNear(project, solved, {60, 50}, 5, 20), std::nullopt);
    EXPECT_EQ(offsetAt(project, solved, Edge::Left, {34.4, 60}, 1), 34);
    EXPECT_EQ(offsetAt(project, solved, LineId("A"), {34.4, 60.2}, 1), -30);
    EXPECT_EQ(offsetAt(project, solved, LineId("Z"), {34, 60}, 1), std::nullopt);
}

// Expected from: pencil, the body lying from y 0 to 20 and x 30 to 130.
TEST(Fencing, AFenceIsTakenByItsFaceOrAnEnd) {
    Project project = withWindow();
    project.fences = {fenceOn(Edge::Bottom, 20, 30, 130, Side::Right)};
    const Solved solved = solve(project);
    EXPECT_EQ(fenceNear(project, solved, {80, 10}, 5), (NearFence{0, FenceGrip::Face}));
    EXPECT_EQ(fenceNear(project, solved, {80, 24}, 5), (NearFence{0, FenceGrip::Face}));
    EXPECT_EQ(fenceNear(project, solved, {33, 10}, 5), (NearFence{0, FenceGrip::From}));
    EXPECT_EQ(fenceNear(project, solved, {134, 10}, 5), (NearFence{0, FenceGrip::To}));
    EXPECT_FALSE(fenceNear(project, solved, {80, 27}, 5));
    EXPECT_FALSE(fenceNear(project, solved, {20, 10}, 5));
    project.fences.front().from = 130;
    project.fences.front().to = 30;
    EXPECT_EQ(fenceNear(project, solved, {134, 10}, 5), (NearFence{0, FenceGrip::From}));
}

// Expected from: pencil. 12.4 up is 12 on whole steps; a straight fence does not slide, a stop does.
TEST(Fencing, TheFaceIsCarriedAcrossAndAStopAlongAsWell) {
    Project project = withWindow();
    project.fences = {fenceOn(Edge::Bottom, 20, 30, 130, Side::Right)};
    const Solved solved = solve(project);
    EXPECT_EQ(withFenceCarried(project, solved, {0, FenceGrip::Face}, {80, 20}, {95, 32.4}, 1).fences.front(),
              fenceOn(Edge::Bottom, 32, 30, 130, Side::Right));
    project.fences.front().kind = FenceKind::Stop;
    const Fence stop = withFenceCarried(project, solved, {0, FenceGrip::Face}, {80, 20}, {95.2, 32.4}, 1).fences.front();
    EXPECT_EQ(stop.from, 45);
    EXPECT_EQ(stop.to, 145);
    EXPECT_EQ(stop.offset, 32);
}

TEST(Fencing, AnEndIsCarriedAlongAndNeverPastTheOther) {
    Project project = withWindow();
    project.fences = {fenceOn(Edge::Bottom, 20, 30, 130, Side::Right)};
    const Solved solved = solve(project);
    const auto carried = [&](FenceGrip grip, Point now) {
        return withFenceCarried(project, solved, {0, grip}, {0, 0}, now, 1).fences.front();
    };
    EXPECT_EQ(carried(FenceGrip::From, {15.3, 90}), fenceOn(Edge::Bottom, 20, 45, 130, Side::Right));
    EXPECT_EQ(carried(FenceGrip::From, {400, 0}).from, 129);
    EXPECT_EQ(carried(FenceGrip::To, {-15.3, 0}), fenceOn(Edge::Bottom, 20, 30, 115, Side::Right));
    EXPECT_EQ(carried(FenceGrip::To, {-400, 0}).to, 31);
}

// Expected from: pencil. The left edge runs down: 3 up is 3 back along it, 2 to the right is 2 further off it.
TEST(Fencing, ANudgeMovesAcrossAndAlong) {
    Project project = withWindow();
    project.fences = {fenceOn(Edge::Left, 20, 30, 130, Side::Right)};
    EXPECT_EQ(withFenceNudged(project, solve(project), 0, {2, 3}).fences.front(), fenceOn(Edge::Left, 22, 27, 127, Side::Right));
}

// Expected from: the project file's words: with the layout face on the work the fence stands there, and no higher
// than a workpiece of 9; 3/4 in = 19.05 mm.
TEST(Fencing, TheFirstFenceIsAUsualOneOnTheFaceThatGoesToTheWork) {
    Project project = withWindow();
    EXPECT_EQ(nextFence(project, solve(project), FenceKind::Straight).face, Face::Layout);
    project.use.againstWork = Face::Back;
    project.workpiece = Workpiece{{{0, 0}, {10, 0}, {0, 10}}, 9.0, {}, {}, {}};
    const FenceKindOf usual = nextFence(project, solve(project), FenceKind::Stop);
    EXPECT_EQ(usual.face, Face::Back);
    EXPECT_EQ(usual.height, 9);
    EXPECT_EQ(usual.kind, FenceKind::Stop);
    project.units = Units::Inches;
    EXPECT_EQ(nextFence(project, solve(project), FenceKind::Stop).width, 19.05);
}

TEST(Fencing, AFenceGrowsAtItsFarEnd) {
    Project project = withWindow();
    project.fences = {fenceOn(Edge::Left, 20, 30, 130, Side::Right), fenceOn(Edge::Left, 20, 130, 30, Side::Right)};
    EXPECT_EQ(withFenceLonger(project, 0, 5).fences[0].to, 135);
    EXPECT_EQ(withFenceLonger(project, 0, -200).fences[0].to, 31);
    EXPECT_EQ(withFenceLonger(project, 1, 5).fences[1].to, 25);
}

TEST(Fencing, TheNextFenceIsMadeAsTheLast) {
    Project project = withWindow();
    project.fences = {fenceOn(Edge::Left, 20, 30, 130, Side::Right)};
    project.fences.front().width = 33;
    project.fences.front().groove = 3;
    const FenceKindOf next = nextFence(project, solve(project), FenceKind::Stop);
    EXPECT_EQ(next.width, 33);
    EXPECT_EQ(next.groove, 3);
    EXPECT_EQ(next.kind, FenceKind::Stop);
}

// Expected from: pencil. With bit and bearing of one size the opening in the work is the window, its lower side at y 90:
// 70 from a face at y 20.
TEST(Fencing, TheFaceIsMeasuredToTheOpeningInTheWork) {
    Project project = withWindow();
    const auto gap = faceToWork(project, solve(project), fenceOn(Edge::Bottom, 20, 0, 400, Side::Right));
    ASSERT_TRUE(gap);
    EXPECT_NEAR(*gap, 70, 1e-9);
    EXPECT_FALSE(faceToWork(blankPanel(), solve(blankPanel()), fenceOn(Edge::Bottom, 20, 0, 400, Side::Right)));
}

}  // namespace
}  // namespace kerfwall

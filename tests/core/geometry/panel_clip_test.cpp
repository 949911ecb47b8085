// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/panel_clip.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

namespace kerfwall::test {
namespace {

constexpr double kPi = std::numbers::pi;

Panel panel200x100() {
    Panel panel;
    panel.width = 200;
    panel.height = 100;
    panel.thickness = 12;
    return panel;
}

/// A closed rim through these corners, its region on the left.
Rim polygon(const std::vector<Point>& corners) {
    std::vector<Curve> sides;
    for (std::size_t i = 0; i < corners.size(); ++i) sides.push_back(straight(corners[i], corners[(i + 1) % corners.size()]));
    return joinToRim(std::move(sides));
}

Rim box(double left, double bottom, double right, double top) {
    return polygon({{left, bottom}, {right, bottom}, {right, top}, {left, top}});
}

double areaOf(const ClippedLoop& loop) { return signedArea(loop.curves); }

/// How much of the loop lies on an edge, mm.
double alongEdge(const ClippedLoop& loop, Edge edge) {
    double along = 0;
    for (std::size_t i = 0; i < loop.curves.size(); ++i) {
        if (loop.edges.at(i) == edge) along += loop.curves[i].lengthInMm();
    }
    return along;
}

/// Anticlockwise round a box.
ArrangedFace faceOf(double left, double bottom, double right, double top) {
    ArrangedFace face;
    face.corners = {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
    face.bounds = {{face.corners[0], {1, 0}}, {face.corners[1], {0, 1}}, {face.corners[2], {-1, 0}}, {face.corners[3], {0, -1}}};
    return face;
}

TEST(PanelClip, WhatLiesOnThePanelStaysWhole) {  // Expected from: pencil, 40 x 30.
    const auto loops = clipToPanel(box(50, 20, 90, 50), panel200x100());
    ASSERT_EQ(loops.size(), 1u);
    EXPECT_EQ(loops[0].curves.size(), 4u);
    EXPECT_NEAR(areaOf(loops[0]), 1200, 1e-9);
    EXPECT_TRUE(std::ranges::none_of(loops[0].edges, [](const auto& edge) { return edge.has_value(); }));
}

// Expected from: pencil. A region all round a block of 150 x 60, past every edge: the panel's border is its outer loop,
// 600 long, and the block comes off.
TEST(PanelClip, ARegionPastEveryEdgeGivesThePanelsBorderAsALoop) {
    std::vector<Curve> sides = box(-20, -20, 220, 120).curves;
    for (const Curve& side : reversed(box(20, 20, 170, 80)).curves) sides.push_back(side);
    const auto loops = clipToPanel(joinToRim(std::move(sides)), panel200x100());
    ASSERT_EQ(loops.size(), 2u);
    EXPECT_NEAR(areaOf(loops[0]) + areaOf(loops[1]), 20000 - 9000, 1e-9);
    double border = 0;
    for (const Edge edge : {Edge::Bottom, Edge::Right, Edge::Top, Edge::Left}) border += alongEdge(loops[1], edge);
    EXPECT_NEAR(border, 600, 1e-9);
}

TEST(PanelClip, WhatLiesOffThePanelIsGone) { EXPECT_TRUE(clipToPanel(box(210, 20, 290, 50), panel200x100()).empty()); }

// Expected from: pencil. 60 of 110 lie on the panel: 60 x 50, closed along 50 of the left edge.
TEST(PanelClip, WhatRunsOffIsClosedAlongTheEdge) {
    const auto loops = clipToPanel(box(-50, 40, 60, 90), panel200x100());
    ASSERT_EQ(loops.size(), 1u);
    EXPECT_NEAR(areaOf(loops[0]), 3000, 1e-9);
    EXPECT_NEAR(alongEdge(loops[0], Edge::Left), 50, 1e-9);
    EXPECT_NEAR(alongEdge(loops[0], Edge::Bottom), 0, 1e-9);
}

// Expected from: pencil. Each corner in turn: 30 along the level edge, 20 along the upright one, 600.
TEST(PanelClip, RoundAPanelsCornerBothEdgesAreFollowed) {
    const struct { Rim rim; Edge level, upright; } corners[] = {{box(-10, -10, 30, 20), Edge::Bottom, Edge::Left},
                                                                {box(170, -10, 210, 20), Edge::Bottom, Edge::Right},
                                                                {box(170, 80, 210, 110), Edge::Top, Edge::Right},
                                                                {box(-10, 80, 30, 110), Edge::Top, Edge::Left}};
    for (const auto& corner : corners) {
        const auto loops = clipToPanel(corner.rim, panel200x100());
        ASSERT_EQ(loops.size(), 1u);
        EXPECT_NEAR(areaOf(loops[0]), 600, 1e-9);
        EXPECT_NEAR(alongEdge(loops[0], corner.level), 30, 1e-9);
        EXPECT_NEAR(alongEdge(loops[0], corner.upright), 20, 1e-9);
    }
}

// Expected from: pencil. A band 30 wide from edge to edge is one loop of 30 x 100; a yoke whose bridge lies
// above the panel leaves its two legs, 20 x 70 each.
TEST(PanelClip, BandsAndLegsCloseEachForItself) {
    const auto band = clipToPanel(box(50, -20, 80, 120), panel200x100());
    ASSERT_EQ(band.size(), 1u);
    EXPECT_NEAR(areaOf(band[0]), 3000, 1e-9);
    EXPECT_NEAR(alongEdge(band[0], Edge::Bottom), 30, 1e-9);
    EXPECT_NEAR(alongEdge(band[0], Edge::Top), 30, 1e-9);
    const auto yoke = clipToPanel(
        polygon({{20, 30}, {40, 30}, {40, 110}, {80, 110}, {80, 30}, {100, 30}, {100, 130}, {20, 130}}), panel200x100());
    ASSERT_EQ(yoke.size(), 2u);
    EXPECT_NEAR(areaOf(yoke[0]), 1400, 1e-9);
    EXPECT_NEAR(areaOf(yoke[1]), 1400, 1e-9);
}

// Expected from: pencil. Free is what lies round a block that juts 50 in from the right, 20 high: all of the
// panel but 1000. The right edge is followed over 80, the others whole.
TEST(PanelClip, RoundABlockThatJutsInTheRestOfThePanelIsLeft) {
    const auto loops = clipToPanel(reversed(box(150, 40, 250, 60)), panel200x100());
    ASSERT_EQ(loops.size(), 1u);
    EXPECT_NEAR(areaOf(loops[0]), 19000, 1e-9);
    EXPECT_NEAR(alongEdge(loops[0], Edge::Right), 80, 1e-9);
    EXPECT_NEAR(alongEdge(loops[0], Edge::Bottom), 200, 1e-9);
    EXPECT_NEAR(alongEdge(loops[0], Edge::Left), 100, 1e-9);
}

// Expected from: pencil. A round of 30 about a place on the left edge: half of it, 450 pi, on a chord of 60.
TEST(PanelClip, RoundsAreCutExactly) {
    const auto loops = clipToPanel(joinToRim({arc({0, 50}, 30, 0.4, kPi, true), arc({0, 50}, 30, 0.4 + kPi, kPi, true)}),
                                   panel200x100());
    ASSERT_EQ(loops.size(), 1u);
    EXPECT_NEAR(areaOf(loops[0]), 450 * kPi, 1e-9);
    EXPECT_NEAR(alongEdge(loops[0], Edge::Left), 60, 1e-9);
}

// Expected from: pencil. A room with a block in it, a hollow in the block, and in the hollow a second block:
// the outer room keeps the first block, the hollow the second. A loop of 1e-10 mm² is dust.
TEST(PanelClip, HolesGoToTheSmallestRoomRoundThem) {
    const std::vector<std::vector<Curve>> loops{reversed(box(46, 46, 50, 50)).curves, box(0, 0, 100, 100).curves, reversed(box(30, 30, 70, 70)).curves,
                                 box(40, 40, 60, 60).curves, box(5, 5, 5.00001, 5.00001).curves};
    const auto regions = regionsOf(loops);
    ASSERT_EQ(regions.size(), 2u);
    EXPECT_EQ(regions[0], (std::vector<std::size_t>{1, 2}));
    EXPECT_EQ(regions[1], (std::vector<std::size_t>{3, 0}));
}

// Expected from: pencil. A room beside a face with one border in common is not over it; one that takes a
// corner of it is, and so is one that lies within it. A face that stands in the room's block is not met.
TEST(PanelClip, ARoomIsOverAFaceWhereTheyShareMoreThanABorder) {
    const std::vector<std::vector<Curve>> room{box(0, 0, 100, 50).curves, reversed(box(30, 10, 70, 40)).curves};
    const std::vector<std::size_t> all{0, 1};
    EXPECT_FALSE(isOver(room, all, {faceOf(100, 0, 150, 50)})) << "one border in common";
    EXPECT_TRUE(isOver(room, all, {faceOf(98, 45, 150, 90)})) << "its corner";
    EXPECT_TRUE(isOver(room, all, {faceOf(5, 5, 10, 10)})) << "the face within the room";
    EXPECT_TRUE(isOver(room, all, {faceOf(-50, -50, 250, 150)})) << "the room within the face";
    EXPECT_FALSE(isOver(room, all, {faceOf(35, 15, 65, 35)})) << "in the block";
    EXPECT_TRUE(isOver(room, all, {faceOf(35, 15, 65, 35), faceOf(5, 5, 10, 10)})) << "one of two";
    EXPECT_FALSE(isOver(room, all, {}));
}

TEST(PanelClip, LoopsAreSplitAndThePanelEndsAtItsEdges) {  // Expected from: pencil.
    Rim both = box(0, 0, 10, 10);
    const Rim other = box(20, 0, 40, 10);
    std::vector<Curve> sides = both.curves;
    sides.insert(sides.end(), other.curves.begin(), other.curves.end());
    const auto single = joinToRim(sides).closedRuns();
    ASSERT_EQ(single.size(), 2u);
    EXPECT_NEAR(signedArea(single[1]), 200, 1e-12);
    EXPECT_TRUE(isOnPanel(panel200x100(), {199, 99}));
    EXPECT_FALSE(isOnPanel(panel200x100(), {200, 50}));
    EXPECT_FALSE(isOnPanel(panel200x100(), {199, 50}, 2));
    EXPECT_FALSE(isOnPanel(panel200x100(), {50, 1}, 2));
    EXPECT_FALSE(isOnPanel(panel200x100(), {50, 99}, 2));
    EXPECT_FALSE(isOnPanel(panel200x100(), {1, 50}, 2));
    EXPECT_TRUE(isOnPanel(panel200x100(), {197, 97}, 2));
}

}  // namespace
}  // namespace kerfwall::test

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/edge_strips.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/core/drawing/drawn_panel.h"

namespace kerfwall {
namespace {

Solved oneLine(Point from, Point to, LineMark first, LineMark last) {
    Solved solved;
    SolvedLine line = sawnLine("A", from, to, Side::Right);
    line.marks = {first, last};
    solved.lines = {line};
    return solved;
}

// Expected from: the contract's own example. A line 80 above the bottom of a 250 panel meets the left edge 170 from its start
// corner (the top one) and the right edge at 80; square to them, so it goes straight up over the flap, 12 + 18 + 12 high.
TEST(EdgeStrips, CarryEachMarkAtItsDistanceFromTheStartCorner) {
    const Project project = blankPanel(400, 250, 18);
    const Solved solved = oneLine({0, 80}, {400, 80}, {{Edge::Left, 170}, true, false}, {{Edge::Right, 80}, false, true});
    const Drawing left = edgeStrip(project, solved, Edge::Left);
    EXPECT_EQ(left.bounds, (Box{{0, 0}, {250, 42}}));
    EXPECT_EQ(marksOf<Stroke>(left, Ink::LayoutLine).at(0), (Stroke{Ink::LayoutLine, {170, 30}, {170, 42}, "A"}));
    const auto ticks = marksOf<Stroke>(left, Ink::WasteTick);
    ASSERT_EQ(ticks.size(), 1U);
    EXPECT_LT(ticks[0].to.x, 170) << "waste towards the start";
    const Drawing right = edgeStrip(project, solved, Edge::Right);
    EXPECT_EQ(marksOf<Stroke>(right, Ink::LayoutLine).at(0).from.x, 80);
    EXPECT_GT(marksOf<Stroke>(right, Ink::WasteTick).at(0).to.x, 80);
    EXPECT_TRUE(marksOf<Stroke>(edgeStrip(project, solved, Edge::Top), Ink::LayoutLine).empty());
}

// Expected from: pencil. From (100, 0) to (225, 250) it climbs 2 for 1 along: 12 over the bottom edge's flap are 6 along; on the
// top edge, which runs the other way from x 400, it meets 175 and going in it goes back to lower x, that is 6 further on.
TEST(EdgeStrips, CarrySlantingLinesOverTheFlapTheWayTheyRun) {
    const Project project = blankPanel(400, 250, 12);
    const Solved solved = oneLine({100, 0}, {225, 250}, {{Edge::Bottom, 100}, false, false}, {{Edge::Top, 175}, false, false});
    EXPECT_NEAR(marksOf<Stroke>(edgeStrip(project, solved, Edge::Bottom), Ink::LayoutLine).at(0).to.x, 106, 1e-9);
    EXPECT_NEAR(marksOf<Stroke>(edgeStrip(project, solved, Edge::Top), Ink::LayoutLine).at(0).to.x, 181, 1e-9);
}

// Expected from: pencil. A hole of 8, 60 along the left edge, its axis 5 under the layout face of 18: 12 + 18 - 5 = 25 up the strip.
TEST(EdgeStrips, ShowWhereClampHolesAreDrilled) {
    Project project = blankPanel(400, 250, 18);
    ClampHole hole;
    hole.edge = Edge::Left;
    hole.at = 60;
    hole.diameter = 8;
    hole.height = 5;
    project.clampHoles = {hole};
    const auto circles = marksOf<Circle>(edgeStrip(project, {}, Edge::Left), Ink::ReliefHole);
    ASSERT_EQ(circles.size(), 1U);
    EXPECT_EQ(circles[0].centre, (Point{60, 25}));
    EXPECT_EQ(circles[0].radius, 4);
    EXPECT_TRUE(marksOf<Circle>(edgeStrip(project, {}, Edge::Right), Ink::ReliefHole).empty());
}

// Expected from: pencil. 600 along a lying A4 (277): 277, then 267 more, then 56: three pieces; 250 take one.
TEST(EdgeStrips, AreCutInPiecesThatOverlapWhereThePaperIsShorter) {
    const Project project = blankPanel(600, 250, 18);
    const StripPages pages = stripPages(project, 210, 297);
    std::vector<StripPiece> bottom;
    for (const StripPiece& piece : pages.pieces) {
        if (piece.edge == Edge::Bottom) bottom.push_back(piece);
        EXPECT_GE(piece.place.x, 10);
        EXPECT_GE(piece.place.y, 10);
        EXPECT_LE(piece.place.y + 42, pages.height - 10);
    }
    ASSERT_GE(bottom.size(), 2U);
    EXPECT_EQ(bottom.front().from, 0);
    EXPECT_EQ(bottom.back().to, 600);
    for (std::size_t i = 1; i < bottom.size(); ++i) EXPECT_NEAR(bottom[i - 1].to - bottom[i].from, 10, 1e-9);
}

// Expected from: a law. No two pieces of a page lie over one another.
TEST(EdgeStrips, LieBesideOneAnother) {
    for (const double width : {120.0, 600.0, 3000.0}) {
        const StripPages pages = stripPages(blankPanel(width, 1200, 30), 215.9, 279.4);
        for (const StripPiece& a : pages.pieces) {
            EXPECT_LT(a.page, pages.pages);
            for (const StripPiece& b : pages.pieces) {
                if (&a == &b || a.page != b.page) continue;
                EXPECT_GE(std::abs(a.place.y - b.place.y), 54);
            }
        }
    }
}

}  // namespace
}  // namespace kerfwall

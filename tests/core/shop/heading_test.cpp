// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/edge_place.h"
#include "core/shop/heading.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

Panel panelOf(SquareCorner corner) {
    Panel panel;
    panel.width = 400;
    panel.height = 250;
    panel.referenceEdge = Edge::Right;
    panel.squareCorner = corner;
    return panel;
}

// Expected from: pencil. A place 30 from the left and 40 from the bottom of a 400 x 250 panel.
TEST(Heading, MeasuresAPlaceFromEveryEdgeAndAlongIt) {
    const Panel panel = panelOf(SquareCorner::Start);
    const Point place{30, 40};
    EXPECT_EQ(distanceFromEdge(panel, Edge::Bottom, place), 40);
    EXPECT_EQ(distanceFromEdge(panel, Edge::Right, place), 370);
    EXPECT_EQ(distanceFromEdge(panel, Edge::Top, place), 210);
    EXPECT_EQ(distanceFromEdge(panel, Edge::Left, place), 30);
    EXPECT_EQ(alongFrom(Edge::Bottom, place, panel), 30);
    EXPECT_EQ(alongFrom(Edge::Right, place, panel), 40);
    EXPECT_EQ(alongFrom(Edge::Top, place, panel), 370);
    EXPECT_EQ(alongFrom(Edge::Left, place, panel), 210);
}

// Expected from: pencil. Up and to the right by 3 in 4 leans from the bottom's normal towards its end by
// atan(3/4) = 36.8699; from the right edge's normal (which points left) the run, taken inwards, goes
// left and down, towards the right edge's start, by the rest of a right angle, 53.1301.
TEST(Heading, LeansTowardsTheEdgesStartArePositiveWhicheverWayTheRunIsDirected) {
    EXPECT_NEAR(leanFrom(Edge::Bottom, {0, 0}, {3, 4}), -36.8699, 1e-4);
    EXPECT_NEAR(leanFrom(Edge::Bottom, {3, 4}, {0, 0}), -36.8699, 1e-4);
    EXPECT_NEAR(leanFrom(Edge::Bottom, {3, 0}, {0, 4}), 36.8699, 1e-4);
    EXPECT_NEAR(leanFrom(Edge::Right, {0, 0}, {3, 4}), 53.1301, 1e-4);
    EXPECT_EQ(leanFrom(Edge::Bottom, {0, 5}, {9, 5}), 90);
}

TEST(Heading, TellsAlongSquareAndAskew) {  // Expected from: pencil.
    EXPECT_EQ(headingFrom(Edge::Top, {0, 5}, {400, 5}), Heading::Along);
    EXPECT_EQ(headingFrom(Edge::Left, {0, 5}, {400, 5}), Heading::Square);
    EXPECT_EQ(headingFrom(Edge::Left, {0, 5}, {400, 6}), Heading::Askew);
}

// Expected from: the project file, version 1: only with four true corners may another edge than the
// reference edge be used.
TEST(Heading, OnlyEdgesSaidToBeTrueMayLieOnAFence) {
    EXPECT_EQ(trueEdges(panelOf(SquareCorner::Both)), std::vector{Edge::Right});
    EXPECT_EQ(trueEdges(panelOf(SquareCorner::None)), std::vector{Edge::Right});
    EXPECT_EQ(trueEdges(panelOf(SquareCorner::All)),
              (std::vector{Edge::Right, Edge::Left, Edge::Bottom, Edge::Top}));
}

}  // namespace
}  // namespace kerfwall

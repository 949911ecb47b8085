// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/inset.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

namespace kerfwall {
namespace {

Outline drawn(const std::vector<Point>& corners, const std::vector<std::string>& on) {
    OutlineLoop loop = polygonLoop(corners);
    for (std::size_t i = 0; i < loop.size(); ++i) loop[i].on = on.at(i);
    return makeOutline({loop});
}

Panel panel400() {
    Panel panel;
    panel.width = 400;
    panel.height = 250;
    return panel;
}

std::size_t piecesOn(const Outline& outline, const std::string& name) {
    return static_cast<std::size_t>(
        std::ranges::count(outline.loops.front(), name, &OutlinePiece::on));
}

// Pencil: 180 by 56, less 2.7 on each side.
TEST(Inset, ARectangleLosesTheDistanceOnEverySide) {
    const Outline inset = insetOf(drawn({{110, 90}, {290, 90}, {290, 146}, {110, 146}}, {"A", "D", "B", "C"}), 2.7, panel400());
    ASSERT_EQ(inset.loops.size(), 1U);
    EXPECT_NEAR(inset.area, 174.6 * 50.6, 1e-6);
    EXPECT_NEAR(inset.bounds.low.x, 112.7, 1e-9);
    EXPECT_NEAR(inset.bounds.low.y, 92.7, 1e-9);
    EXPECT_NEAR(inset.bounds.high.x, 287.3, 1e-9);
    EXPECT_NEAR(inset.bounds.high.y, 143.3, 1e-9);
}

// Pencil: nothing is left standing at the panel's edge, so only the two uprights and the top move in.
TEST(Inset, ASideOnThePanelsEdgeStaysThere) {
    const Outline inset = insetOf(drawn({{100, 0}, {200, 0}, {200, 40}, {100, 40}}, {"bottom", "D", "B", "C"}), 2.5, panel400());
    ASSERT_EQ(inset.loops.size(), 1U);
    EXPECT_NEAR(inset.area, 95 * 37.5, 1e-6);
    EXPECT_NEAR(inset.bounds.low.y, 0, 1e-12);
    EXPECT_EQ(piecesOn(inset, "bottom"), 1U);
}

// Pencil: a notch in the panel's corner keeps that corner; both walls move in.
TEST(Inset, ANotchInThePanelsCornerIsOpenRightIntoTheCorner) {
    const Outline inset = insetOf(drawn({{0, 0}, {60, 0}, {60, 40}, {0, 40}}, {"bottom", "D", "B", "left"}), 2.5, panel400());
    ASSERT_EQ(inset.loops.size(), 1U);
    EXPECT_NEAR(inset.area, 57.5 * 37.5, 1e-6);
    EXPECT_EQ(piecesOn(inset, "bottom"), 1U);
    EXPECT_EQ(piecesOn(inset, "left"), 1U);
}

// Pencil: round an inward corner the distance is kept by a quarter of a circle: an L of 100 x 100 less 50 x 50, in by 10.
TEST(Inset, KeepsTheDistanceFromAnInwardCornerToo) {
    const Outline inset = insetOf(
        drawn({{100, 50}, {200, 50}, {200, 100}, {150, 100}, {150, 150}, {100, 150}}, {"A", "B", "C", "D", "E", "F"}), 10, panel400());
    const double square = 10 * 10;
    EXPECT_NEAR(inset.area, 80 * 80 - 50 * 50 + square * (1 - std::numbers::pi / 4), 1e-6);
}

TEST(Inset, NothingIsLeftOfWhatIsNarrowerThanTwice) {
    EXPECT_TRUE(insetOf(drawn({{100, 50}, {200, 50}, {200, 55}, {100, 55}}, {"A", "B", "C", "D"}), 2.7, panel400()).loops.empty());
}

}  // namespace
}  // namespace kerfwall

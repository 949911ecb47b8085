// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/reach.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/geometry/solve.h"
#include "tests/core/geometry/grooves.h"

namespace kerfwall::test {
namespace {

constexpr double kPi = std::numbers::pi;

/// What a disc dips into a kerf that crosses a wall, mm²: its slice beyond the chord.
double dip(double radius, double kerf) {
    const double half = std::asin(kerf / 2 / radius);
    return radius * radius * (half - std::sin(half) * std::cos(half));
}

// Expected from: pencil. Two kerfs of 3.2 overlap to a groove of 6 across the whole panel, through the
// window's side walls; the bit of 5.8 is wider than either kerf, yet rolls away in it to both edges of the
// panel, past the slot's own cross kerfs of 1.8, which it dips into four times.
TEST(Reach, TheBitRollsAwayInKerfsThatOverlapToAGroove) {
    const SolvedCutout window = solve(acrossTheWindow(6, 5.8)).cutouts.at(0);
    EXPECT_TRUE(window.doubts.empty());
    EXPECT_NEAR(window.opening.area, 180 * 56 - (4 - kPi) * 2.9 * 2.9 + 220 * 6 + 4 * dip(2.9, 1.8), 1e-7);
    EXPECT_EQ(window.opening.bounds.low.x, 0);
    EXPECT_EQ(window.opening.bounds.high.x, 400);
}

// Expected from: pencil. A groove of 4 stops a bit of 12 and lets a bush of 3.8 roll away, in the kerfs'
// band.
TEST(Reach, TheBushRollsAwayWhereTheBitDidNot) {
    Project project = acrossTheWindow(4, 12);
    project.use.byBush = true;
    project.use.bush = project.use.bit = 3.8;
    project.use.inKerfs = true;
    const SolvedCutout window = solve(project).cutouts.at(0);
    EXPECT_TRUE(window.doubts.empty());
    EXPECT_NEAR(window.work.area, 180 * 56 - (4 - kPi) * 1.9 * 1.9 + 220 * 4 + 4 * dip(1.9, 1.8), 1e-7);
    EXPECT_GT(window.opening.bounds.low.x, 109) << "the bit only dips into it";
}

// Expected from: pencil. Kerfs leave a rebate of 6 along the panel's whole lower edge; the window is open to
// it. Its left and lower frame lie off the panel: only at its right does the bit run on along the edge, half
// on the panel, half off it.
TEST(Reach, TheBitRollsAwayAlongARebateAtThePanelsEdge) {
    const SolvedCutout window = solve(windowOverARebate()).cutouts.at(0);
    EXPECT_TRUE(window.doubts.empty());
    EXPECT_FALSE(window.open);
    EXPECT_NEAR(window.opening.area, 57 * 54 - (2 - kPi / 2) * 2.9 * 2.9 + 400 * 6 + 4 * dip(2.9, 1.8), 1e-7);
}

}  // namespace
}  // namespace kerfwall::test

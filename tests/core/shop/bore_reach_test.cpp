// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/bore_reach.h"

#include <gtest/gtest.h>

#include "core/geometry/solve.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall::test {
namespace {

Project boredWindow() {
    Project project = windowProject();
    project.cutouts[0].corners = {{"C", "A", 20, ""}, {"A", "D", 20, ""}};
    return project;
}

Record measured(const LineId& one, const LineId& other, double diameter) {
    Record record;
    record.bore = {one, other};
    record.measured = diameter;
    return record;
}

std::vector<BoreReach> at(const Project& project, const LineId& line, Side waste) {
    return boresAt(project, solve(project), line, waste);
}

// Expected from: R - sqrt(R^2 - u^2) by hand: R 50, u 7.053: 0.5000; R 25, u 3: 25 - sqrt(616) = 0.18065.
TEST(BoreReach, HowDeepAKerfPastTheTangentPointNicks) {
    EXPECT_NEAR(restAt(50, 7.053), 0.5, 1e-4);
    EXPECT_NEAR(restAt(25, 3), 0.18065, 5e-6);
    EXPECT_EQ(restAt(25, 0), 0);
}

// Expected from: the table of check values: R 50, left 0.5: u 7.053. R 20: sqrt(400 - 380.25) = 4.4441.
TEST(BoreReach, HowFarShortTheBitMayStop) {
    EXPECT_NEAR(stopShortFor(50, 0.5), 7.053, 5e-4);
    EXPECT_NEAR(stopShortFor(20, 0.5), 4.4441, 5e-5);
}

TEST(BoreReach, TheTwoAreOneAnothersInverse) {  // Expected from: algebra.
    for (const double radius : {7.0, 25.0, 110.0}) {
        for (const double thick : {0.1, 0.5, 2.0}) {
            EXPECT_NEAR(restAt(radius, stopShortFor(radius, thick)), thick, 1e-12 * radius);
        }
    }
}

// Expected from: the drawing: A bounds the window between both bores, C and D touch one each, B none.
TEST(BoreReach, AreTheBoresAtTheEndsOfALinesWalls) {
    EXPECT_EQ(at(boredWindow(), "A", Side::Left).size(), 2u);
    EXPECT_EQ(at(boredWindow(), "C", Side::Left).size(), 1u);
    EXPECT_EQ(at(boredWindow(), "B", Side::Right).size(), 0u);
    EXPECT_EQ(at(boredWindow(), "A", Side::Right).size(), 0u) << "the waste is on the other side";
}

// Expected from: pencil. 40.3 and 39.8 measured where 40 is planned: 0.15 past, 0.1 short. The later record counts.
TEST(BoreReach, GoesByHalfOfWhatWasMeasured) {
    Project project = boredWindow();
    project.record = {measured("A", "C", 41), measured("C", "A", 40.3), measured("A", "D", 39.8)};
    const auto bores = at(project, "A", Side::Left);
    ASSERT_EQ(bores.size(), 2u);
    for (const BoreReach& bore : bores) {
        EXPECT_TRUE(bore.measured);
        const bool left = bore.first == "C" || bore.second == "C";
        EXPECT_NEAR(bore.past, left ? 0.15 : -0.1, 1e-12);
    }
    EXPECT_NEAR(outermost(bores).past, 0.15, 1e-12);
}

}  // namespace
}  // namespace kerfwall::test

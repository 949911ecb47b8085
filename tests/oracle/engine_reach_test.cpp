// SPDX-License-Identifier: GPL-3.0-or-later
// Discs that roll far away from the cutout, against the exact route, which always looks at the whole panel.
#include <gtest/gtest.h>

#include "core/geometry/solve.h"
#include "tests/core/geometry/grooves.h"
#include "tests/oracle/exact_opening.h"
#include "tests/oracle/exact_work.h"

namespace kerfwall::oracle {
namespace {

constexpr double kAreaBound = 1e-4;  // mm²

void compareFirst(const Project& project) {
    const auto plain = plainLayout(project);
    ASSERT_TRUE(plain);
    const Solved solved = solve(project);
    ASSERT_FALSE(solved.cutouts.empty());
    const SolvedCutout& cutout = solved.cutouts[0];
    EXPECT_TRUE(cutout.doubts.empty());
    const OpeningAnswer exact = exactOpening({&*plain, 0, plain->bitRadius, plain->bitRadius});
    EXPECT_NEAR(cutout.opening.area, exact.area, kAreaBound);
    EXPECT_EQ(cutout.parts, exact.parts);
    WorkQuestion work{&*plain, 0, {}, solved.use.guide / 2, solved.use.cutter / 2};
    if (solved.use.rides == Rides::Kerfs) work.kerfs = plain->bands;
    EXPECT_NEAR(cutout.work.area, exactWork(work).area, kAreaBound);
}

// Expected from: exact unions on the whole panel.
TEST(EngineReach, AlongAGrooveOfTwoKerfs) {
    for (const double height : {5.9, 6.0, 6.3}) compareFirst(test::acrossTheWindow(height, 5.8));
}

// Expected from: exact unions on the whole panel; the bit stays, the bush rolls away.
TEST(EngineReach, AlongAGrooveOnlyTheBushFits) {
    for (const double bush : {3.4, 3.8, 4.6}) {
        Project project = test::acrossTheWindow(4, 12);
        project.use.byBush = true;
        project.use.bush = bush;
        project.use.bit = 3;
        project.use.inKerfs = true;
        compareFirst(project);
    }
}

// Expected from: exact unions on the whole panel; both leave it, and a wider cutter eats into its edges.
TEST(EngineReach, AlongARebate) {
    for (const double cutter : {3.0, 5.0, 7.0}) {
        for (const bool inKerfs : {false, true}) {
            Project project = test::windowOverARebate();
            project.use.byBush = true;
            project.use.bush = 5;
            project.use.bit = cutter;
            project.use.inKerfs = inKerfs;
            compareFirst(project);
        }
    }
}

}  // namespace
}  // namespace kerfwall::oracle

// SPDX-License-Identifier: GPL-3.0-or-later
// How often the engine declines to answer what a maker draws in earnest.
#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

#include "core/geometry/solve.h"
#include "tests/oracle/layouts.h"

namespace kerfwall::oracle {
namespace {

constexpr std::uint64_t kFirstSeed = 1001;
constexpr std::uint64_t kSeedsEach = 2500;  // of eight kinds on two grids: 40,000 layouts

// A line with waste on both sides has a groove of two kerfs: where that is exactly as wide as the bit, it is a knife
// edge by any measure, and the engine must say so.
bool grooveFitsBit(const Project& project) {
    for (const Saw& a : project.bench->saws)
        for (const Saw& b : project.bench->saws)
            if (std::abs(a.kerf + b.kerf - project.bench->trimBit->diameter) < 1e-9) return true;
    return false;
}

// Expected from: the promise that under 1 in 10,000 ordinary layouts is unsure. 5,000 layouts a test, less those
// above: none.
class OrdinaryLayouts : public testing::TestWithParam<LayoutKind> {};

TEST_P(OrdinaryLayouts, AreNotUnsure) {
    int looked = 0;
    for (const Grid grid : {Grid::Tenths, Grid::Inches}) {
        for (std::uint64_t seed = kFirstSeed; seed < kFirstSeed + kSeedsEach; ++seed) {
            const Project project = seededLayout(GetParam(), seed, grid).project;
            if (grooveFitsBit(project)) continue;
            ++looked;
            const Solved solved = solve(project);
            for (const SolvedCutout& cutout : solved.cutouts) {
                EXPECT_TRUE(cutout.doubts.empty())
                    << kindName(GetParam()) << " seed " << seed << (grid == Grid::Tenths ? " tenths " : " inches ")
                    << cutout.id << ": " << cutout.doubts.front().what;
            }
        }
    }
    EXPECT_GT(looked, 4500);
}

std::string ordinaryName(const testing::TestParamInfo<LayoutKind>& info) {
    return kindName(info.param) + "_seeds_1001_to_3500";
}

INSTANTIATE_TEST_SUITE_P(Seeded, OrdinaryLayouts,
                         testing::Values(LayoutKind::Convex, LayoutKind::Joined, LayoutKind::Open, LayoutKind::Tapered,
                                         LayoutKind::Bored, LayoutKind::Stopped, LayoutKind::Several,
                                         LayoutKind::Crossed),
                         ordinaryName);

}  // namespace
}  // namespace kerfwall::oracle

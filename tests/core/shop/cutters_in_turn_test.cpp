// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/cutters_in_turn.h"

#include <gtest/gtest.h>

#include "core/geometry/solve.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall {
namespace {

// Expected from: facts.md 5, hand-held: the bit stands template + depth below the base. 12 + 8 = 20.
TEST(CuttersInTurn, ABitStandsTheTemplateAndTheDepthBelowTheBase) {
    EXPECT_DOUBLE_EQ(belowBase(test::panelOf(300, 200).panel, 8), 20);
}

TEST(CuttersInTurn, WithoutAListTheCutterInUseGoesToTheFinalDepth) {
    Project project = test::windowProject();
    project.use.depth = 9;
    const auto turns = cuttersInTurn(project, solve(project));
    ASSERT_EQ(turns.size(), 1U);
    EXPECT_DOUBLE_EQ(turns[0].diameter, 12.7);  // the stock bench's trimming bit
    EXPECT_EQ(turns[0].depth, 9);
}

TEST(CuttersInTurn, KeepTheirOrderAndTakeTheFinalDepthWhereTheyHaveNoneOfTheirOwn) {
    Project project = test::windowProject();
    project.use.depth = 9;
    project.use.cutters = {{10, "roughing", 6, ""}, {8, "finishing", std::nullopt, ""}};
    const auto turns = cuttersInTurn(project, solve(project));
    const std::vector<CutterInTurn> expected{{10, "roughing", 6}, {8, "finishing", 9}};
    EXPECT_EQ(turns, expected);
}

// Expected from: the trade. A bush and a shank's bearing sit next to the router; a tip's bearing is away from it, so the
// template lies under the work and the router on the work. On a table the work lies on the table.
TEST(CuttersInTurn, TheBaseStandsOnTheTemplateWithABushOrABearingAtTheShank) {
    Use use;
    EXPECT_FALSE(isBaseOnTemplate(use, BearingAt::Tip));
    EXPECT_TRUE(isBaseOnTemplate(use, BearingAt::Shank));
    use.byBush = true;
    EXPECT_TRUE(isBaseOnTemplate(use, BearingAt::Tip));
    use.router = Router::Table;
    EXPECT_FALSE(isBaseOnTemplate(use, BearingAt::Shank));
}

// Expected from: pencil. Kerfs half of 12 deep leave the round unbroken from 6 to 12; a window without bores has none.
TEST(CuttersInTurn, ABoredCornerIsUnbrokenUnderTheKerfs) {
    Project project = test::windowProject();
    EXPECT_FALSE(unbrokenBand(project, solve(project)));
    project.cutouts[0].corners = {{"A", "C", 15, ""}};
    EXPECT_EQ(unbrokenBand(project, solve(project)), (UnbrokenBand{6, 12}));
}

}  // namespace
}  // namespace kerfwall

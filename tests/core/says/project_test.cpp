// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/project.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

Project withThickness(double thickness) {
    Project project;
    project.panel = {600, 400, thickness, "mdf", Edge::Bottom, SquareCorner::Start, ""};
    return project;
}

// Expected from: pencil, min(thickness / 2, max(5, bearing length + 1)), stock bearing 5 long.
TEST(KerfDepth, IsHalfAThinPanelAndBearingPlusOneInAThickOne) {
    EXPECT_EQ(kerfDepthOf(withThickness(9)), 4.5);
    EXPECT_EQ(kerfDepthOf(withThickness(18)), 6);
}

// Expected from: pencil. A bearing 3 long needs 4, but never less than 5; one 8 long needs 9.
TEST(KerfDepth, FollowsTheBearingsLength) {
    Project project = withThickness(30);
    project.bench = stockBench();
    project.bench->trimBit->bearingLength = 3;
    EXPECT_EQ(kerfDepthOf(project), 5);
    project.bench->trimBit->bearingLength = 8;
    EXPECT_EQ(kerfDepthOf(project), 9);
}

TEST(KerfDepth, IsWhatTheMakerSays) {
    Project project = withThickness(18);
    project.kerfDepth = 7.25;
    EXPECT_EQ(kerfDepthOf(project), 7.25);
}

// Expected from: the project file, version 1: without a trimming bit 12.7 is used.
TEST(TrimBit, IsTheStockOneWhereTheBenchHasNone) {
    Project project = withThickness(18);
    project.bench = Bench{};
    EXPECT_EQ(trimBitOf(project).diameter, 12.7);
    EXPECT_TRUE(benchOf(project).saws.empty());
}

TEST(BenchOf, IsTheStockBenchWhereTheProjectNamesNone) {
    EXPECT_EQ(benchOf(withThickness(18)), stockBench());
}

TEST(FindLine, FindsByIdOrNot) {
    Project project = withThickness(18);
    project.lines.push_back({"A", ByOffset{Edge::Bottom, 80}, true, Face::Layout, {}, Extent::Auto, "", ""});
    EXPECT_EQ(findLine(project, "A"), &project.lines.front());
    EXPECT_EQ(findLine(project, "B"), nullptr);
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/stock_panels.h"

#include <gtest/gtest.h>

#include "tests/core/geometry/projects.h"

namespace kerfwall {
namespace {

const std::vector<StockPanel> kRack{{600, 300, 12}, {400, 250, 18}, {400, 250, 12}, {250, 180, 12}};

// Expected from: pencil. 400 x 250 is the smallest that holds 260 x 170, at 12 mm; 170 x 240 wants 250 x 180 turned.
TEST(StockPanels, TheSmallestThatHoldsTheBlank) {
    EXPECT_EQ(smallestHolding(kRack, {260, 170}), (StockPanel{400, 250, 12}));
    EXPECT_EQ(smallestHolding(kRack, {250, 180}), (StockPanel{250, 180, 12}));
    EXPECT_EQ(smallestHolding(kRack, {170, 240}), (StockPanel{180, 250, 12}));
    EXPECT_EQ(smallestHolding(kRack, {500, 310}), std::nullopt);
    EXPECT_EQ(smallestHolding({}, {10, 10}), std::nullopt);
}

// Expected from: pencil. 171.3 x 96.3 up to tens; 6.744 in and 3.79 in up to halves.
TEST(StockPanels, ABlankIsRoundedUp) {
    EXPECT_EQ(roundedUp({171.3, 96.3}, Units::Millimetres), (Blank{180, 100}));
    EXPECT_EQ(roundedUp({180, 100}, Units::Millimetres), (Blank{180, 100}));
    EXPECT_EQ(roundedUp({171.3, 96.3}, Units::Inches), (Blank{7 * 25.4, 4 * 25.4}));
}

TEST(StockPanels, AKerfThroughThePanelIsWorkedOutAnew) {
    Project project = test::panelOf(400, 250);
    project.kerfDepth = 9;
    EXPECT_EQ(onPanel(project, {300, 200, 18}).kerfDepth, 9);
    EXPECT_EQ(onPanel(project, {300, 200, 9}).kerfDepth, std::nullopt);
    EXPECT_EQ(onPanel(project, {300, 200, 18}).panel.height, 200);
}

// Expected from: the project file: sides of 10 to 3000, 3 to 60 thick.
TEST(StockPanels, OnlyAPanelsSizesAreOnes) {
    EXPECT_TRUE(isPanelSize({10, 3000, 60}));
    EXPECT_FALSE(isPanelSize({9, 3000, 60}));
    EXPECT_FALSE(isPanelSize({10, 3001, 60}));
    EXPECT_FALSE(isPanelSize({400, 250, 0}));
}

TEST(StockPanels, APanelIsFreeUntilSomethingIsOnIt) {
    Project project = test::panelOf(400, 250);
    EXPECT_TRUE(isPanelFree(project));
    project.lines = {test::offsetLine("A", Edge::Bottom, 90)};
    EXPECT_FALSE(isPanelFree(project));
}

}  // namespace
}  // namespace kerfwall

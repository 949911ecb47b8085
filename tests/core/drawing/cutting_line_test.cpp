// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/cutting_line.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

// Expected from: pencil. On 400 x 250 the level cut runs 400 and moves over 250, the upright one the other way round.
TEST(CuttingLine, RunsAlongOneSideAndMovesAlongTheOther) {
    Panel panel;
    panel.width = 400;
    panel.height = 250;
    EXPECT_EQ(cutLength(panel, CutDirection::Level), 400);
    EXPECT_EQ(cutReach(panel, CutDirection::Level), 250);
    EXPECT_EQ(cutLength(panel, CutDirection::Upright), 250);
    EXPECT_EQ(cutReach(panel, CutDirection::Upright), 400);
    EXPECT_EQ(cutThrough(panel, CutDirection::Upright, {-3, 20}), (CuttingLine{CutDirection::Upright, 0}));
    EXPECT_EQ(cutThrough(panel, CutDirection::Level, {-3, 20}), (CuttingLine{CutDirection::Level, 20}));
}

// Expected from: pencil. From the bottom edge one looks up, from the right edge to the left.
TEST(CuttingLine, TellsHowFarBeyondItAPlaceLies) {
    EXPECT_EQ(beyondCut({CutDirection::Level, 100}, {50, 130}), 30);
    EXPECT_EQ(beyondCut({CutDirection::Upright, 100}, {30, 130}), 70);
    EXPECT_EQ(onCut({CutDirection::Upright, 100}, 30), (Point{100, 30}));
    EXPECT_EQ(alongCut({CutDirection::Upright, 100}, {7, 30}), 30);
}

}  // namespace
}  // namespace kerfwall

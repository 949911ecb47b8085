// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/paper_lie.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

Sheets tiled(double width, double height, PaperLie lie, const char* name = "a4") {
    Panel panel;
    panel.width = width;
    panel.height = height;
    return sheetsFor(panel, {}, laidPaper(*paperOf(name, panel), lie));
}

// Expected from: pencil. A4 with margins of 10 shows 190 x 277. 270 x 180 takes two upright sheets and one on its side; 180 x
// 270 the other way round.
TEST(PaperLie, TakesFewestSheetsOrLiesAsAskedFor) {
    EXPECT_TRUE(liesOnItsSide(tiled(270, 180, PaperLie::Fewest).paper));
    EXPECT_FALSE(liesOnItsSide(tiled(180, 270, PaperLie::Fewest).paper));
    EXPECT_EQ(tiled(270, 180, PaperLie::Upright).sheets.size(), 2U);
    EXPECT_EQ(tiled(270, 180, PaperLie::OnItsSide).sheets.size(), 1U);
    EXPECT_EQ(tiled(180, 270, PaperLie::OnItsSide).sheets.size(), 2U);
}

TEST(PaperLie, LeavesARollAndASheetAsLargeAsThePanel) {
    EXPECT_EQ(laidPaper({"panel", 270, 180}, PaperLie::Upright), (Paper{"panel", 270, 180}));
    EXPECT_EQ(laidPaper({"roll-610", 610, 180}, PaperLie::Upright), (Paper{"roll-610", 610, 180}));
}

}  // namespace
}  // namespace kerfwall

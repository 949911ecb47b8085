// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/paper_lie.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

Paper laid(double width, double height, PaperLie lie, const char* name = "a4") {
    Panel panel;
    panel.width = width;
    panel.height = height;
    return laidPaper(panel, {}, *paperOf(name, panel), lie);
}

// Expected from: pencil. A4 with margins of 10 shows 190 x 277. 270 x 180 takes two upright sheets and one on its side; 180 x
// 270 the other way round; 150 x 150 one either way: upright.
TEST(PaperLie, TakesFewestSheets) {
    EXPECT_TRUE(liesOnItsSide(laid(270, 180, PaperLie::Fewest)));
    EXPECT_FALSE(liesOnItsSide(laid(180, 270, PaperLie::Fewest)));
    EXPECT_FALSE(liesOnItsSide(laid(150, 150, PaperLie::Fewest)));
}

TEST(PaperLie, IsAsAskedFor) {
    EXPECT_EQ(laid(180, 270, PaperLie::OnItsSide).width, 297);
    EXPECT_EQ(laid(270, 180, PaperLie::Upright).width, 210);
    EXPECT_EQ(laid(270, 180, PaperLie::Upright, "panel"), (Paper{"panel", 270, 180}));
}

// Expected from: pencil. 1200 x 580 on a roll of 610 with margins of 10: one sheet of 1220 x 610.
TEST(PaperLie, ARollIsCutAsLongAsThePatternTakes) {
    Panel panel;
    panel.width = 1200;
    panel.height = 580;
    const Paper laid = laidPaper(panel, {}, *paperOf("roll-610", panel), PaperLie::Fewest);
    EXPECT_EQ(laid.width, 1220);
    EXPECT_EQ(laid.height, 610);
    EXPECT_EQ(sheetsFor(panel, {}, laid).sheets.size(), 1U);
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/five_cuts.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

// Expected from: facts.md 6: 25.42 far and 25.30 near over 300 mm: 0.12 / 1200 = 0.1 mm over a metre.
TEST(FiveCuts, AStripWiderByTwelveHundredths) {
    EXPECT_NEAR(strayByFiveCuts({25.42, 25.30, 300}).value(), 0.1, 1e-12);
    EXPECT_NEAR(strayByFiveCuts({25.30, 25.42, 300}).value(), -0.1, 1e-12) << "out the other way";
}

// Expected from: the published worked numbers of facts.md 6, in inches: .5395 and .3075 over 9.625, at a pivot 29.5 away
// 0.1778.
TEST(FiveCuts, ThePublishedExample) {
    EXPECT_NEAR(strayByFiveCuts({0.5395, 0.3075, 9.625}).value() / 1000 * 29.5, 0.1778, 5e-5);
}


TEST(FiveCuts, RefusesWhatIsNoStrip) {
    EXPECT_FALSE(strayByFiveCuts({25, 25, 0}));
    EXPECT_FALSE(strayByFiveCuts({0, 25, 300}));
    EXPECT_FALSE(strayByFiveCuts({25, -1, 300}));
}

// Expected from: the first example, typed; and 1 and 15/16 in over 12 in: 1/16 / 48 = 1.302 over 1000.
TEST(FiveCuts, AsTyped) {
    EXPECT_NEAR(strayFromText("25.42; 25.30; 300", Units::Millimetres).value(), 0.1, 1e-12);
    EXPECT_NEAR(strayFromText("1; 15/16; 12", Units::Inches).value(), 1000.0 / 16 / 48, 1e-9);
    EXPECT_FALSE(strayFromText("25.42; 25.30", Units::Millimetres));
    EXPECT_FALSE(strayFromText("25.42; wide; 300", Units::Millimetres));
    EXPECT_FALSE(strayFromText("250; 25; 300", Units::Millimetres)) << "187.5 over a metre";
}

}  // namespace
}  // namespace kerfwall

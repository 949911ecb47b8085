// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/blank_sheets.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace kerfwall {
namespace {

int keptOf(const std::vector<bool>& kept) { return static_cast<int>(std::ranges::count(kept, true)); }

// Windows of 100 that share 10: 0 to 100, 90 to 190, 180 to 280.
constexpr Tiles kThree{3, 100, 90};
constexpr Tiles kOne{1, 100, 90};

// Expected from: pencil. The border of 280 x 280 lies on eight of nine sheets, not on the middle one.
TEST(BlankSheets, TheMiddleOneOfNineShowsNothingOfABorder) {
    const std::vector<Stretch> border{{{0, 0}, {280, 0}}, {{280, 0}, {280, 280}}, {{280, 280}, {0, 280}}, {{0, 280}, {0, 0}}};
    const auto kept = sheetsWithMarks(kThree, kThree, border);
    EXPECT_EQ(keptOf(kept), 8);
    EXPECT_FALSE(kept[4]);
}

// Expected from: pencil. A stretch from 20 to 100 stands whole on the first sheet; the second, which shows its last 10 too, is blank.
TEST(BlankSheets, WhatANeighbourShowsKeepsNoSheet) {
    EXPECT_EQ(sheetsWithMarks(kThree, kOne, {{{20, 50}, {100, 50}}}), (std::vector<bool>{true, false, false}));
    EXPECT_EQ(sheetsWithMarks(kThree, kOne, {{{20, 50}, {100.1, 50}}}), (std::vector<bool>{true, true, false}));
}

// Expected from: pencil. Upright at 95 it stands in the overlap of the first two and nowhere else: one of them must stay.
TEST(BlankSheets, WhatOnlyOverlapsShowIsNotLost) {
    EXPECT_EQ(keptOf(sheetsWithMarks(kThree, kOne, {{{95, 10}, {95, 90}}})), 1);
    EXPECT_EQ(sheetsWithMarks(kThree, kOne, {{{95, 10}, {95, 90}}, {{120, 5}, {125, 5}}}),
              (std::vector<bool>{false, true, false}))
        << "the second stays anyway and shows both";
}

// Expected from: pencil. Without an overlap a line on the border of two sheets belongs to one of them.
TEST(BlankSheets, ALineOnTheBorderOfTwoSheetsTakesOne) {
    EXPECT_EQ(keptOf(sheetsWithMarks({2, 100, 100}, kOne, {{{100, 10}, {100, 90}}})), 1);
}

TEST(BlankSheets, ASlantingLineTakesTheSheetsItCrosses) {
    EXPECT_EQ(sheetsWithMarks(kThree, kThree, {{{5, 5}, {275, 275}}}),
              (std::vector<bool>{true, false, false, false, true, false, false, false, true}));
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/corner_list.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

std::vector<Point> read(std::string_view text, Units units = Units::Millimetres) {
    const CornerList list = readCorners(text, units);
    EXPECT_TRUE(list.bad.empty()) << list.bad.front().sentence;
    return list.corners;
}

TEST(CornerList, OneCornerALine) {
    EXPECT_EQ(read("110, 90\n370, 90\n\n330, 150\r\n"), (std::vector<Point>{{110, 90}, {370, 90}, {330, 150}}));
    EXPECT_EQ(read("  (110, 90)  \n370;90\n330\t150"), (std::vector<Point>{{110, 90}, {370, 90}, {330, 150}}));
}

// Expected from: the rule for a comma's two meanings.
TEST(CornerList, ACommaIsTheSignBetweenOrTheDecimalSign) {
    EXPECT_EQ(read("110,5, 90,25"), (std::vector<Point>{{110.5, 90.25}}));
    EXPECT_EQ(read("110,5; 90,25"), (std::vector<Point>{{110.5, 90.25}}));
    EXPECT_EQ(read("110,5,90,25"), (std::vector<Point>{{110.5, 90.25}}));
    EXPECT_EQ(read("110,90"), (std::vector<Point>{{110, 90}}));
    EXPECT_EQ(read("110.5,90.25"), (std::vector<Point>{{110.5, 90.25}}));
}

// Expected from: pencil. 120 + 3/2; 4 3/8 in = 111.125.
TEST(CornerList, SumsAndFractionsAreLengths) {
    EXPECT_EQ(read("120+3/2, -20"), (std::vector<Point>{{121.5, -20}}));
    EXPECT_EQ(read("4 3/8, 1-1/2", Units::Inches), (std::vector<Point>{{111.125, 38.1}}));
    EXPECT_EQ(read("4 3/8 in, 10 mm"), (std::vector<Point>{{111.125, 10}}));
}

TEST(CornerList, EachBadLineIsToldWithItsNumber) {
    const CornerList list = readCorners("110, 90\n120 80\n130, wide\n\n140,5,80\n150, 10", Units::Millimetres);
    EXPECT_EQ(list.corners, (std::vector<Point>{{110, 90}, {150, 10}}));
    ASSERT_EQ(list.bad.size(), 3u);
    EXPECT_EQ(list.bad[0].line, 2);
    EXPECT_EQ(list.bad[0].sentence, "Line 2: write x, then one comma and a space or one semicolon, then y.");
    EXPECT_EQ(list.bad[1].line, 3);
    EXPECT_TRUE(list.bad[1].sentence.starts_with("Line 3: y can't be read."));
    EXPECT_EQ(list.bad[2].line, 5);
}

TEST(CornerList, AnEmptyListIsNoTrouble) { EXPECT_EQ(readCorners(" \n\n", Units::Millimetres), CornerList{}); }

// Expected from: the law that what is written reads back.
TEST(CornerList, WhatIsWrittenReadsBack) {
    const std::vector<Point> corners{{110, 90}, {370.5, 90.25}, {-20, 0}};
    EXPECT_EQ(cornersText(corners, Units::Millimetres), "110.0, 90.0\n370.5, 90.25\n-20.0, 0.0");
    EXPECT_EQ(read(cornersText(corners, Units::Millimetres)), corners);
    EXPECT_EQ(read(cornersText(corners, Units::Millimetres, ',')), corners);
}

TEST(CornerList, MoreThanAHundredAreTooMany) {
    std::string text;
    for (int i = 0; i < 102; ++i) text += std::to_string(i) + ", 0\n";
    const CornerList list = readCorners(text, Units::Millimetres);
    EXPECT_EQ(list.corners.size(), kMostCorners);
    ASSERT_EQ(list.bad.size(), 1u);
    EXPECT_EQ(list.bad[0].line, 101);
}

}  // namespace
}  // namespace kerfwall

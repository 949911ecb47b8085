// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/svg_frame.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

// Expected from: W3C CSS Values 3. 1 in = 25.4 mm = 96 px = 72 pt = 6 pc; 100 mm = 377.952756 px = 283.464567 pt.
TEST(SvgFrame, ReadsLengthsInTheUnitsOfTheStandard) {
    EXPECT_DOUBLE_EQ(*readSvgLength("100mm"), 100);
    EXPECT_DOUBLE_EQ(*readSvgLength("10 cm"), 100);
    EXPECT_DOUBLE_EQ(*readSvgLength("4in"), 101.6);
    EXPECT_NEAR(*readSvgLength("377.952756"), 100, 1e-7);
    EXPECT_NEAR(*readSvgLength("377.952756px"), 100, 1e-7);
    EXPECT_NEAR(*readSvgLength("283.464567pt"), 100, 1e-7);
    EXPECT_DOUBLE_EQ(*readSvgLength("6pc"), 25.4);
    for (const char* bad : {"100%", "3em", "", "mm", "4 5", "nan"}) {
        ASSERT_FALSE(readSvgLength(bad)) << bad;
        EXPECT_NE(readSvgLength(bad).error().find("would be right"), std::string::npos);
    }
}

// Expected from: pencil. A viewBox of 200 x 100 from (10, 20) on a picture of 400 x 200 mm: a unit is 2 mm; (10, 120), its
// lower left, is (0, 0), and (60, 70), its middle across and half way up, (100, 100).
TEST(SvgFrame, TurnsTheViewBoxIntoMillimetresWithYUp) {
    const auto frame = readSvgFrame("400mm", "20cm", "10 20 200 100");
    ASSERT_TRUE(frame) << frame.error();
    EXPECT_EQ(inMillimetres(*frame, {10, 120}), (Point{0, 0}));
    EXPECT_EQ(inMillimetres(*frame, {60, 70}), (Point{100, 100}));
}

// Expected from: the standard. Without sizes a user unit is a px; with one of them it gives the scale.
TEST(SvgFrame, TakesWhatIsSaidOfTheSize) {
    EXPECT_DOUBLE_EQ(readSvgFrame(std::nullopt, std::nullopt, "0 0 96 96")->mmPerUnit, 25.4 / 96);
    EXPECT_DOUBLE_EQ(readSvgFrame(std::nullopt, std::nullopt, std::nullopt)->mmPerUnit, 25.4 / 96);
    EXPECT_DOUBLE_EQ(readSvgFrame(std::nullopt, "300mm", "0 0 10 100")->mmPerUnit, 3);
    EXPECT_DOUBLE_EQ(readSvgFrame("300", "96", std::nullopt)->height, 25.4);
}

TEST(SvgFrame, RefusesSizesThatSayNoScale) {
    for (const auto& [width, height, box] : std::vector<std::array<std::string, 3>>{{"100%", "100%", "0 0 10 10"},
                                                                                    {"100mm", "100mm", "0 0 10 20"},
                                                                                    {"0mm", "10mm", "0 0 10 10"},
                                                                                    {"10mm", "10mm", "0 0 10"},
                                                                                    {"10mm", "10mm", "0 0 0 10"},
                                                                                    {"10mm", "10mm", "a b c d"}}) {
        const auto frame = readSvgFrame(width, height, box);
        ASSERT_FALSE(frame) << width << box;
        EXPECT_EQ(frame.error().back(), '.');
    }
}

// Expected from: pencil. Turned by 90 about (10, 0), with y down: (20, 0) goes to (10, 10). Of a row the last acts first.
TEST(SvgFrame, ReadsTransformsTheLastFirst) {
    const Point turned = readSvgTransform("rotate(90 10 0)")->of({20, 0});
    EXPECT_NEAR(turned.x, 10, 1e-12);
    EXPECT_NEAR(turned.y, 10, 1e-12);
    EXPECT_EQ(readSvgTransform("translate(5,7) scale(2)")->of({1, 1}), (Point{7, 9}));
    EXPECT_EQ(readSvgTransform("scale(2), translate(5 7)")->of({1, 1}), (Point{12, 16}));
    EXPECT_EQ(readSvgTransform("matrix(1 2 3 4 5 6)")->of({1, 1}), (Point{9, 12}));
    EXPECT_NEAR(readSvgTransform("rotate(30) scale(3 2)")->largestScale(), 3, 1e-12);
    EXPECT_EQ(readSvgTransform(""), SvgTransform{});
    for (const char* bad : {"skewX(10)", "scale(0)", "rotate(1 2)", "translate(", "12", "matrix(1 2 3)"}) {
        ASSERT_FALSE(readSvgTransform(bad)) << bad;
        EXPECT_EQ(readSvgTransform(bad).error().back(), '.');
    }
}

}  // namespace
}  // namespace kerfwall

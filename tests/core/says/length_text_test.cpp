// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/length_text.h"

#include <gtest/gtest.h>

#include <ostream>

namespace kerfwall {
namespace {

struct TypedLength {
    const char* name;
    const char* text;
    Units units;
    double mm;
};

class LengthTyped : public testing::TestWithParam<TypedLength> {};

// Expected from: pencil, with 1 in = 25.4 mm exactly (ISO 31-1). 1-3/4 in = 7 * 25.4 / 4 = 44.45;
// 3/64 in = 3 * 0.396875 = 1.190625; 7/8 in = 22.225; 2' 3-1/2" = 27.5 * 25.4 = 698.5;
// 1' = 304.8. Compared bit for bit: what is typed is the double nearest to it.
TEST_P(LengthTyped, IsReadExactly) {
    const auto read = readLength(GetParam().text, GetParam().units);
    ASSERT_TRUE(read.has_value()) << read.error();
    EXPECT_EQ(*read, GetParam().mm);
}

INSTANTIATE_TEST_SUITE_P(
    All, LengthTyped,
    testing::Values(TypedLength{"HyphenJoinsWholeAndFraction", "1-3/4", Units::Inches, 44.45},
                    TypedLength{"SpaceJoinsWholeAndFraction", "1 3/4", Units::Inches, 44.45},
                    TypedLength{"Decimals", "1.75", Units::Inches, 44.45},
                    TypedLength{"CommaIsADecimalSign", "1,75", Units::Inches, 44.45},
                    TypedLength{"FractionAlone", "3/64", Units::Inches, 1.190625},
                    TypedLength{"InchSignWinsOverMillimetres", "7/8\"", Units::Millimetres, 22.225},
                    TypedLength{"TypographicInchSign", "7/8″", Units::Millimetres, 22.225},
                    TypedLength{"FeetAndInches", "2' 3-1/2\"", Units::Millimetres, 698.5},
                    TypedLength{"FeetAndInchesWithoutSpace", "2'3 1/2\"", Units::Millimetres, 698.5},
                    TypedLength{"FeetAndInchesWithHyphen", "2'-3-1/2\"", Units::Millimetres, 698.5},
                    TypedLength{"FeetAndBareInches", "2ft 3.5", Units::Millimetres, 698.5},
                    TypedLength{"FeetAlone", "1'", Units::Millimetres, 304.8},
                    TypedLength{"HalfAFoot", "1/2 ft", Units::Millimetres, 152.4},
                    TypedLength{"BareNumberInMillimetres", "12.7", Units::Millimetres, 12.7},
                    TypedLength{"CommaInMillimetres", "12,7", Units::Millimetres, 12.7},
                    TypedLength{"MillimetresWinOverInches", "12.7 mm", Units::Inches, 12.7},
                    TypedLength{"Centimetres", "1.27cm", Units::Inches, 12.7},
                    TypedLength{"Metres", "1,2 m", Units::Inches, 1200},
                    TypedLength{"Inches", "0.5 in", Units::Millimetres, 12.7},
                    TypedLength{"LeadingMinus", "-1-3/4", Units::Inches, -44.45},
                    TypedLength{"TypographicMinus", "−12.7", Units::Millimetres, -12.7},
                    TypedLength{"LeadingPlus", "+12.7", Units::Millimetres, 12.7},
                    TypedLength{"NoDigitBeforeThePoint", ".5", Units::Millimetres, 0.5},
                    TypedLength{"SpacesAround", "  12.7 \t", Units::Millimetres, 12.7},
                    TypedLength{"MoreDigitsThanAnIntegerHolds", "12.700000000000001", Units::Millimetres,
                                12.700000000000001},
                    TypedLength{"Nought", "0", Units::Millimetres, 0}),
    [](const auto& test) { return std::string(test.param.name); });

struct BadLength {
    const char* name;
    const char* text;
    const char* reason;  ///< part of the sentence
};

class LengthRefused : public testing::TestWithParam<BadLength> {};

// Expected from: the rule for typed lengths. Nothing is guessed: each says in one sentence why.
TEST_P(LengthRefused, SaysWhy) {
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        const auto read = readLength(GetParam().text, units);
        ASSERT_FALSE(read.has_value()) << *read;
        EXPECT_NE(read.error().find(GetParam().reason), std::string::npos) << read.error();
        EXPECT_EQ(read.error().back(), '.');
        EXPECT_EQ(read.error().find('\n'), std::string::npos);
    }
}

INSTANTIATE_TEST_SUITE_P(
    All, LengthRefused,
    testing::Values(
        BadLength{"DividedByNought", "1-3/0", "divided by nought"},
        BadLength{"NoDenominator", "3/", "must follow the stroke"},
        BadLength{"TwoHyphens", "1--3/4", "here stand two"}, BadLength{"Nothing", "", "Type a length"},
        BadLength{"OnlySpaces", "   ", "Type a length"}, BadLength{"Words", "wide", "is none"},
        BadLength{"WordsBehind", "12 wide", "cannot follow"},
        BadLength{"HyphenAtTheEnd", "12-", "must follow here"},
        BadLength{"GroupedByComma", "1,234.5", "not grouped"},
        BadLength{"GroupedByDot", "1.234.567", "not grouped"},
        BadLength{"OnlyADot", ".", "at least one digit"}, BadLength{"OnlyAMinus", "-", "must follow here"},
        BadLength{"TwoMinuses", "--5", "is none"}, BadLength{"TwoNumbers", "5 1", "cannot follow"},
        BadLength{"MillimetresAfterFeet", "2' 3mm", "Only inches"},
        BadLength{"FeetAfterFeet", "2' 3'", "Only inches"}, BadLength{"Exponent", "1e3", "cannot follow"},
        BadLength{"Infinity", "inf", "is none"}, BadLength{"NotANumber", "nan", "is none"},
        BadLength{"UnknownUnit", "3 yd", "cannot follow"}),
    [](const auto& test) { return std::string(test.param.name); });

// Expected from: arithmetic. 400 nines are more than a double holds (IEEE 754: at most 1.8e308).
TEST(LengthText, RefusesWhatIsTooLargeForAnyNumber) {
    EXPECT_FALSE(readLength(std::string(400, '9'), Units::Millimetres).has_value());
    EXPECT_FALSE(readLength(std::string(400, '9') + ".5", Units::Inches).has_value());
}

TEST(AngleText, ReadsDecimalDegrees) {
    EXPECT_EQ(readAngle("3"), 3.0);
    EXPECT_EQ(readAngle("-12.5°"), -12.5);
    EXPECT_EQ(readAngle(" 12,5 ° "), 12.5);
    EXPECT_EQ(readAngle("0.1"), 0.1);
}

TEST(AngleText, RefusesWhatIsNoDecimal) {
    for (const char* text : {"", " ", "1/2", "steep", "1.2.3", "°", "-", "3 mm", "1e2", "1-1/2", "."}) {
        EXPECT_FALSE(readAngle(text).has_value()) << text;
    }
}

// Expected from: pencil. 1/64 in = 0.396875 mm. 12 / 0.396875 = 30.2 -> 30/64 = 15/32; 19 -> 47.9 ->
// 48/64 = 3/4; 100 -> 251.97 -> 252/64 = 3 15/16; 0.19 is less than half of 1/64 -> 0.
TEST(LengthText, InchesAreTheNearestSixtyFourthReduced) {
    EXPECT_EQ(lengthText(12, Units::Inches), "15/32");
    EXPECT_EQ(lengthText(19, Units::Inches), "3/4");
    EXPECT_EQ(lengthText(100, Units::Inches), "3 15/16");
    EXPECT_EQ(lengthText(0.19, Units::Inches), "0");
    EXPECT_EQ(lengthText(0.2, Units::Inches), "1/64");
    EXPECT_EQ(lengthText(-100, Units::Inches), "-3 15/16");
    EXPECT_EQ(lengthText(-0.19, Units::Inches), "0");
    EXPECT_EQ(lengthText(25.4, Units::Inches), "1");
}

// Expected from: half of 1/64 in = 0.1984375 mm is the most that rounding to 1/64 in can lose.
TEST(LengthText, InchesReadBackWithinHalfASixtyFourth) {
    for (int i = -3000; i <= 3000; ++i) {
        const double mm = 0.317 * i;
        const auto back = readLength(lengthText(mm, Units::Inches), Units::Inches);
        ASSERT_TRUE(back.has_value()) << mm;
        EXPECT_NEAR(*back, mm, 0.1984375 + 1e-9);
    }
}

TEST(LengthText, MillimetresKeepTheirDecimals) {
    EXPECT_EQ(lengthText(100, Units::Millimetres), "100.0");
    EXPECT_EQ(lengthText(12.75, Units::Millimetres, 2), "12.75");
    EXPECT_EQ(lengthText(12.75, Units::Millimetres, 2, ','), "12,75");
    EXPECT_EQ(lengthText(-0.04, Units::Millimetres), "0.0");
    EXPECT_EQ(lengthText(2.6, Units::Millimetres, 0), "3");
}

TEST(LengthText, CarriesItsUnit) {
    EXPECT_EQ(lengthWithUnit(12.7, Units::Millimetres), "12.7 mm");
    EXPECT_EQ(lengthWithUnit(12.7, Units::Inches), "1/2\"");
    EXPECT_EQ(lengthWithUnit(12.75, Units::Millimetres, 2, ','), "12,75 mm");
}

// Expected from: pencil. 101.85 on one edge and 148.15 on the other must add up to 250 as written.
TEST(LengthText, ALengthOffTheTenthsKeepsItsHundredths) {
    EXPECT_EQ(decimalsAtSaw(101.85), 2);
    EXPECT_EQ(decimalsAtSaw(148.15), 2);
    EXPECT_EQ(decimalsAtSaw(90), 1);
    EXPECT_EQ(decimalsAtSaw(12.7), 1);
    EXPECT_EQ(decimalsAtSaw(0.1 + 0.2), 1);
}

// Expected from: 1 in = 25.4 mm exactly. 120 mm is 4.7244 in, 0.14 mm off 4 23/32; 119.0625 is 4 11/16 to the last digit.
TEST(LengthText, AtTheSawAFractionIsSaidOnlyWhereItIsRight) {
    EXPECT_EQ(lengthAtSaw(120, Units::Inches), "4.724");
    EXPECT_EQ(lengthAtSaw(119.0625, Units::Inches), "4 11/16");
    EXPECT_EQ(lengthAtSaw(120.6, Units::Inches, ','), "4,748");
    EXPECT_EQ(lengthAtSaw(120, Units::Millimetres), "120.0");
    EXPECT_EQ(lengthAtSaw(120.45, Units::Millimetres), "120.45");
}

}  // namespace
}  // namespace kerfwall

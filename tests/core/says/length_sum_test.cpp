// SPDX-License-Identifier: GPL-3.0-or-later
// Arithmetic in typed lengths.
#include <gtest/gtest.h>

#include <string>

#include "core/says/length_text.h"

namespace kerfwall {
namespace {

struct TypedSum {
    const char* name;
    const char* text;
    Units units;
    double mm;
};

class SumTyped : public testing::TestWithParam<TypedSum> {};

// Expected from: pencil, in fractions, with 1 in = 25.4 mm. 120 + 3/2 = 121.5; 1 1/2 in + 3 mm = 38.1 + 3;
// (24 - 12.7) / 2 = 5.65; 2 * 1-3/4 in = 3.5 * 25.4 = 88.9; 2' 3-1/2" - 1/2" = 27 * 25.4 = 685.8; 2' - 3" = 21 * 25.4 = 533.4;
// 100.1 + 0.2 = 100.3, which doubles alone miss by one bit at 0.1 + 0.2. Compared bit for bit.
TEST_P(SumTyped, IsWorkedExactly) {
    const auto read = readLength(GetParam().text, GetParam().units);
    ASSERT_TRUE(read.has_value()) << read.error();
    EXPECT_EQ(*read, GetParam().mm);
}

constexpr Units kMm = Units::Millimetres;
constexpr Units kIn = Units::Inches;

INSTANTIATE_TEST_SUITE_P(
    All, SumTyped,
    testing::Values(TypedSum{"WholeAndImproperFraction", "120+3/2", kMm, 121.5},
                    TypedSum{"SpacesAroundTheSigns", " 120 + 3 / 2 ", kMm, 121.5},
                    TypedSum{"ImproperFractionTakenAway", "120-3/2", kMm, 118.5},
                    TypedSum{"WholeTakenAway", "1-3", kMm, -2},
                    TypedSum{"HyphenBeforeAProperFractionJoins", "100-3/4", kMm, 100.75},
                    TypedSum{"SpacedHyphenTakesAway", "100 - 3/4", kMm, 99.25},
                    TypedSum{"MinusSignTakesAway", "100−3/4", kMm, 99.25},
                    TypedSum{"DecimalIsNoMixedNumber", "100.5-3/4", kMm, 99.75},
                    TypedSum{"ProductsBeforeSums", "2+3*4", kMm, 14},
                    TypedSum{"FromTheLeft", "20-5-3", kMm, 12},
                    TypedSum{"DivisionsFromTheLeft", "100/4/5", kMm, 5},
                    TypedSum{"FractionBindsBeforeTheProduct", "2*3/4", kMm, 1.5},
                    TypedSum{"DividedByADecimal", "1/2.5", kMm, 0.4},
                    TypedSum{"DecimalDivided", "1.5/2", kMm, 0.75},
                    TypedSum{"Brackets", "(24-12.7)/2", kMm, 5.65},
                    TypedSum{"BracketsWithin", "((24-12,7)/2+(1+2))*2", kMm, 17.3},
                    TypedSum{"UnitBehindBrackets", "(1+1/2) in", kMm, 38.1},
                    TypedSum{"TypographicSigns", "3×4÷2", kMm, 6},
                    TypedSum{"ExactDecimals", "0.1+0.2", kMm, 0.3},
                    TypedSum{"ManyDecimals", "100.1+0.2", kMm, 100.3},
                    TypedSum{"MixedUnits", "1 1/2 in + 3 mm", kMm, 41.1},
                    TypedSum{"BareCountsInInches", "1 mm + 1", kIn, 26.4},
                    TypedSum{"BareCountsInMillimetres", "1 in + 1", kMm, 26.4},
                    TypedSum{"BareFactor", "2 * 1-3/4 in", kMm, 88.9},
                    TypedSum{"BareFactorBehind", "1-3/4\" * 2", kMm, 88.9},
                    TypedSum{"BareSumInInches", "1/2+1/4", kIn, 19.05},
                    TypedSum{"FractionTakesTheUnit", "6/2 in", kMm, 76.2},
                    TypedSum{"FeetAndInchesInASum", "2' 3-1/2\" - 1/2\"", kMm, 685.8},
                    TypedSum{"SpacedHyphenBehindFeetTakesAway", "2' - 3\"", kMm, 533.4},
                    TypedSum{"FeetAndThenASum", "1' + 2", kMm, 306.8},
                    TypedSum{"FeetTimes", "1'*2", kMm, 609.6},
                    TypedSum{"SignBeforeASum", "-5+2", kMm, -3},
                    TypedSum{"SignInBrackets", "10*(-2+5)", kMm, 30}),
    [](const auto& test) { return std::string(test.param.name); });

struct BadSum {
    const char* name;
    const char* text;
    const char* place;  ///< how the sentence begins
    const char* reason;
};

class SumRefused : public testing::TestWithParam<BadSum> {};

// Expected from: counting the characters typed, and the rule that nothing is guessed.
TEST_P(SumRefused, NamesThePlaceAndSaysWhy) {
    const auto read = readLength(GetParam().text, Units::Millimetres);
    ASSERT_FALSE(read.has_value()) << *read;
    EXPECT_TRUE(read.error().starts_with(GetParam().place)) << read.error();
    EXPECT_NE(read.error().find(GetParam().reason), std::string::npos) << read.error();
    EXPECT_EQ(read.error().back(), '.');
}

INSTANTIATE_TEST_SUITE_P(
    All, SumRefused,
    testing::Values(BadSum{"NothingBehindASign", "120+", "At the end: ", "must follow here"},
                    BadSum{"NothingBehindAStar", "3 * ", "At the end: ", "must follow here"},
                    BadSum{"WordInASum", "120+wide", "At character 5: ", "is none"},
                    BadSum{"TwoSigns", "5 + -3", "At character 5: ", "is none"},
                    BadSum{"PowerOfStars", "2**3", "At character 3: ", "is none"},
                    BadSum{"NotClosed", "(1+2", "At the end: ", "not closed"},
                    BadSum{"ClosedTooOften", "(1+2))", "At character 6: ", "cannot follow"},
                    BadSum{"EmptyBrackets", "()", "At character 2: ", "is none"},
                    BadSum{"BracketBehindANumber", "2(3)", "At character 2: ", "cannot follow"},
                    BadSum{"DividedByNought", "5+1/(2-2)", "At character 4: ", "divided by nought"},
                    BadSum{"Area", "1+2 mm*3 mm", "At character 7: ", "area"},
                    BadSum{"DividedByALength", "30 mm / (3 mm)", "At character 7: ", "bare number only"},
                    BadSum{"UnitTwice", "(1 in) mm", "At character 7: ", "unit already"},
                    BadSum{"TypographicSignsCountOnce", "3×4×x", "At character 5: ", "is none"}),
    [](const auto& test) { return std::string(test.param.name); });

// Expected from: the header: 32 brackets deep and no deeper, whatever is typed.
TEST(LengthSum, BracketsGoThirtyTwoDeep) {
    const auto nested = [](std::size_t depth) {
        return readLength(std::string(depth, '(') + "1" + std::string(depth, ')'), Units::Millimetres);
    };
    EXPECT_EQ(nested(32), 1.0);
    EXPECT_FALSE(nested(33).has_value());
    EXPECT_FALSE(readLength(std::string(1000000, '('), Units::Millimetres).has_value());
}

// Expected from: arithmetic. 1 + 1/2 + ... + 1/40 = 4.27854303893 (harmonic number); its common denominator
// is larger than a double holds exactly, so the last bits may go, not the value.
TEST(LengthSum, LongSumsStayTrue) {
    std::string text = "1";
    for (int i = 2; i <= 40; ++i) text += "+1/" + std::to_string(i);
    const auto read = readLength(text, Units::Millimetres);
    ASSERT_TRUE(read.has_value()) << read.error();
    EXPECT_NEAR(*read, 4.27854303893, 1e-11);
}

// Expected from: IEEE 754: what grows past 1.8e308 is no length, and neither is infinity less infinity.
TEST(LengthSum, RefusesWhatGrowsTooLarge) {
    const std::string large(200, '9');
    EXPECT_FALSE(readLength(large + "*" + large, Units::Millimetres).has_value());
    EXPECT_FALSE(readLength(large + "*" + large + " - " + large + "*" + large, Units::Millimetres).has_value());
}

// Expected from: the contract: every text is read or refused with a sentence, and never by a crash.
TEST(LengthSum, AnyTextIsReadOrRefused) {
    const std::string signs = "0123/-+*(). '\"in,\xe2\x88\x92";
    unsigned state = 1;
    for (int round = 0; round < 200000; ++round) {
        std::string text;
        for (int i = 0; i < 12; ++i) {
            state = state * 1664525u + 1013904223u;
            text += signs[(state >> 16) % signs.size()];
        }
        const auto read = readLength(text, Units::Inches);
        ASSERT_TRUE(read.has_value() || read.error().ends_with(".")) << text;
    }
}

}  // namespace
}  // namespace kerfwall

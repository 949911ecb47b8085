// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/iso_2768.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

namespace kerfwall {
namespace {

using enum ToleranceClass;

// Expected from: ISO 2768-1, linear dimensions, as facts.md 6 has them; -1 for a dash. A column's own limit is in it.
TEST(Iso2768, LengthsOfEveryClassAndColumn) {
    constexpr std::array kAt{3.0, 6.0, 30.0, 120.0, 400.0, 1000.0, 2000.0, 4000.0};
    constexpr std::array<std::array<double, 8>, 4> kTable{{{0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, -1},
                                                           {0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2},
                                                           {0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4},
                                                           {-1, 0.5, 1, 1.5, 2.5, 4, 6, 8}}};
    for (std::size_t row = 0; row < kTable.size(); ++row) {
        for (std::size_t column = 0; column < kAt.size(); ++column) {
            const auto in = static_cast<ToleranceClass>(row);
            EXPECT_EQ(lengthTolerance(in, kAt.at(column)).value_or(-1), kTable.at(row).at(column))
                << classWord(in) << " " << kAt.at(column);
        }
    }
    EXPECT_EQ(lengthTolerance(Medium, 0.5), 0.1);
    EXPECT_EQ(lengthTolerance(Medium, 30.001), 0.3);
    EXPECT_FALSE(lengthTolerance(Medium, 0.49));
    EXPECT_FALSE(lengthTolerance(Medium, 4000.1));
}

// Expected from: ISO 2768-1, angular dimensions; over 400 mm 10' are 1.1636 mm, over 120 mm 20' are 0.6981 mm
// (facts.md 6).
TEST(Iso2768, AnglesByTheShorterLeg) {
    const auto over = [](double degrees, double leg) { return leg * std::tan(degrees * std::numbers::pi / 180); };
    EXPECT_NEAR(over(angleTolerance(Medium, 400), 400), 1.1636, 5e-5);
    EXPECT_NEAR(over(angleTolerance(Fine, 120), 120), 0.6981, 5e-5);
    EXPECT_EQ(angleTolerance(Medium, 10), 1);
    EXPECT_EQ(angleTolerance(Medium, 10.1), 0.5);
    EXPECT_NEAR(angleTolerance(Medium, 401), 5.0 / 60, 1e-12);
    EXPECT_EQ(angleTolerance(Coarse, 10), 1.5);
    EXPECT_EQ(angleTolerance(Coarse, 400), 0.25);
    EXPECT_EQ(angleTolerance(VeryCoarse, 10), 3);
    EXPECT_NEAR(angleTolerance(VeryCoarse, 500), 20.0 / 60, 1e-12);
}

// Expected from: the table: 56 mm may be off by 0.15 (f), 0.3 (m), 0.8 (c), 1.5 (v).
TEST(Iso2768, TheFinestClassThatIsKept) {
    EXPECT_EQ(lengthClassKept(56, 0.15), Fine);
    EXPECT_EQ(lengthClassKept(56, 0.1 + 0.2), Medium) << "a sum of tenths that is the limit";
    EXPECT_EQ(lengthClassKept(56, 0.31), Coarse);
    EXPECT_EQ(lengthClassKept(56, 1.5), VeryCoarse);
    EXPECT_FALSE(lengthClassKept(56, 1.6));
    EXPECT_FALSE(lengthClassKept(2500, 20)) << "no class";
    EXPECT_EQ(lengthClassKept(2500, 0.1), Medium) << "f has no figure there";
    EXPECT_EQ(angleClassKept(100, 0.25), Fine);
    EXPECT_EQ(angleClassKept(100, 0.4), Coarse);
    EXPECT_EQ(angleClassKept(100, 0.9), VeryCoarse);
    EXPECT_FALSE(angleClassKept(100, 1.1));
}

}  // namespace
}  // namespace kerfwall

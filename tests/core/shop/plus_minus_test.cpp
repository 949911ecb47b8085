// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/plus_minus.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

// Expected from: GUM (JCGM 100) 5.1.2 and 4.3.7 worked in facts.md 6: 0.1, 0.2, 0.1, 0.15 give 0.55 at worst,
// sqrt(0.01 + 0.04 + 0.01 + 0.0225) = 0.2872, and U (k = 2) = 2 x 0.2872 / sqrt 3 = 0.3317.
TEST(PlusMinus, OfFourSourcesAsTheGuideHasIt) {
    const PlusMinus sum =
        together({{"a", 0.1, 1}, {"b", 0.2, 1}, {"c", 0.1, -1}, {"d", 0.15, 1}});
    EXPECT_NEAR(sum.worst, 0.55, 1e-12);
    EXPECT_NEAR(sum.likely, 0.2872, 5e-5);
    EXPECT_NEAR(standardUncertainty(sum), 0.16583, 5e-6);
    EXPECT_NEAR(expandedUncertainty(sum), 0.3317, 5e-5);
}

// Expected from: a law: one error added to both ends of a size shifts it and leaves it as long; taken off both it
// counts twice, which is more than two errors of that size would.
TEST(PlusMinus, OneSourceCancelsOrDoubles) {
    const PlusMinus shifted = together({{"fence", 0.15, 1}, {"fence", 0.15, -1}});
    EXPECT_EQ(shifted.worst, 0);
    EXPECT_EQ(shifted.likely, 0);
    const PlusMinus doubled = together({{"fence", 0.15, -1}, {"fence", 0.15, -1}});
    EXPECT_DOUBLE_EQ(doubled.worst, 0.3);
    EXPECT_DOUBLE_EQ(doubled.likely, 0.3);
}

// Expected from: the sensitivity's definition: ± 0.1 seen through a lever of 3 is ± 0.3.
TEST(PlusMinus, CountsBySensitivity) {
    EXPECT_NEAR(together({{"a", 0.1, -3}, {"b", 0.4, 1}}).worst, 0.7, 1e-12);
    EXPECT_NEAR(together({{"a", 0.1, -3}, {"b", 0.4, 1}}).likely, 0.5, 1e-12);
    EXPECT_EQ(largerOf({1, 0.5}, {0.9, 0.6}), (PlusMinus{1, 0.6}));
}

}  // namespace
}  // namespace kerfwall

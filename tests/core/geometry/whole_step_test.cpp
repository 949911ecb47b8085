// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/whole_step.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

// Expected from: the decimals themselves; three times the double 0.1 is 0.30000000000000004.
TEST(WholeStep, DecimalStepsGiveDecimalsAsTheyAreWritten) {
    EXPECT_EQ(stepped(0.31, 0.1), 0.3);
    EXPECT_EQ(stepped(220.6500001, 1e-6), 220.65);
    EXPECT_EQ(stepped(-12.74, 0.5), -12.5);
}

// Expected from: pencil. 25.4 / 64 = 0.396875: 3 of them are 1.190625; 17 is 3 times 5 and 2.
TEST(WholeStep, OtherStepsAreCounted) {
    EXPECT_DOUBLE_EQ(stepped(1.2, 25.4 / 64), 1.190625);
    EXPECT_EQ(stepped(17, 5), 15);
}

}  // namespace
}  // namespace kerfwall

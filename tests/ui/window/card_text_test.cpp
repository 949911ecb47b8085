// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/card_text.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

// Expected from: counting: two lines of the text are two lines on the card, however wide it is.
TEST(CardText, BeginsANewLineWhereTheTextDoes) {
    CardText one, two;
    one.setText(QStringLiteral("A: left edge."));
    two.setText(QStringLiteral("A: left edge.\nB: top edge."));
    const int high = one.heightForWidth(2000);
    EXPECT_GT(high, 0);
    EXPECT_NEAR(two.heightForWidth(2000), 2 * high, 2);
}

}  // namespace
}  // namespace kerfwall

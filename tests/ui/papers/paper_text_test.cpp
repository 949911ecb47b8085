// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_text.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

// Expected from: the text itself: two lines that fit stay two, whatever room there is, and each breaks by itself.
TEST(PaperText, BreaksAtLineBreaksToo) {
    const Lettering letters{3, false, QColor(Qt::black)};
    EXPECT_EQ(brokenLines(QStringLiteral("A: left edge.\nB: top edge."), 500, letters),
              (QStringList{QStringLiteral("A: left edge."), QStringLiteral("B: top edge.")}));
    EXPECT_GT(brokenLines(QStringLiteral("A: left edge.\nB: top edge."), 15, letters).size(), 2);
    EXPECT_EQ(brokenLines(QString(), 500, letters).size(), 0);
}

}  // namespace
}  // namespace kerfwall

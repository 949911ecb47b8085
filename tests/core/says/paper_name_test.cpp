// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/paper_name.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

TEST(PaperName, ReadsTheWidthOfARoll) {
    EXPECT_EQ(rollWidth("roll-610"), 610);
    EXPECT_EQ(rollWidth("roll-609.6"), 609.6);
    EXPECT_EQ(rollWidth("roll-149"), std::nullopt);
    EXPECT_EQ(rollWidth("roll-2001"), std::nullopt);
    EXPECT_EQ(rollWidth("roll-6e2"), std::nullopt);
    EXPECT_EQ(rollWidth("a4"), std::nullopt);
}

TEST(PaperName, KnowsTheContractsPapersAndRolls) {
    for (const char* name : {"a4", "a3", "a2", "a1", "a0", "letter", "tabloid", "panel", "ansi-c", "ansi-d", "ansi-e", "roll-914"}) {
        EXPECT_TRUE(isPaperName(name)) << name;
    }
    for (const char* name : {"a4", "tabloid", "ansi-e", "panel"}) {
        EXPECT_NE(paperNamesInWords().find(name), std::string::npos) << name;
    }
    for (const char* name : {"", "A4", "a9", "printer", "roll"}) EXPECT_FALSE(isPaperName(name)) << name;
}

}  // namespace
}  // namespace kerfwall

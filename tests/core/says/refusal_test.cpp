// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "core/says/project_text.h"
#include "tests/core/says/broken_projects.h"

namespace kerfwall {
namespace {

class Refused : public testing::TestWithParam<BrokenProject> {};

// Expected from: the kinds, ranges and references of the project file, version 1. Each refusal has the
// JSON pointer (RFC 6901), and one sentence with the value or what is allowed.
TEST_P(Refused, NamesThePlaceAndWhatIsWrong) {
    const BrokenProject& broken = GetParam();
    const auto project = readProject(broken.text);
    ASSERT_FALSE(project.has_value());
    const Refusal& refusal = project.error();
    if (broken.pointer.empty() || broken.name.starts_with("Nested") || broken.name == "Truncated") {
        EXPECT_TRUE(refusal.pointer.starts_with(broken.pointer)) << refusal.pointer;
    } else {
        EXPECT_EQ(refusal.pointer, broken.pointer) << refusal.sentence;
    }
    EXPECT_NE(refusal.sentence.find(broken.says), std::string::npos) << refusal.sentence;
    EXPECT_EQ(refusal.sentence.back(), '.') << refusal.sentence;
    EXPECT_EQ(refusal.sentence.find('\n'), std::string::npos) << refusal.sentence;
    EXPECT_LT(refusal.sentence.size(), 300U) << refusal.sentence;
}

const auto nameOf = [](const auto& test) { return test.param.name; };

INSTANTIATE_TEST_SUITE_P(Field, Refused, testing::ValuesIn(brokenFields()), nameOf);
INSTANTIATE_TEST_SUITE_P(Text, Refused, testing::ValuesIn(brokenTexts()), nameOf);

TEST(Refusals, TheFullProjectItselfIsSound) { EXPECT_TRUE(readProject(kFullProject).has_value()); }

// A value that would fill the screen is cut short, between two letters.
TEST(Refusals, ALongValueIsCutShort) {
    std::string title;
    for (int i = 0; i < 5000; ++i) {
        title += "é";
    }
    const auto project = readProject(fullProjectWith("/units", "\"" + title + "\""));
    ASSERT_FALSE(project.has_value());
    EXPECT_LT(project.error().sentence.size(), 200U);
    EXPECT_NE(project.error().sentence.find("é…"), std::string::npos) << project.error().sentence;
}

// Expected from: the project file, version 1: a blade is more than twice the kerf's depth. The smallest
// blade allowed, 80, in a panel of 60: a kerf 40 deep is refused, one 39.9 deep is not.
TEST(Refusals, ABladeIsMoreThanTwiceTheKerfsDepth) {
    const auto text = [](double depth) {
        return R"({"format": "kerfwall-project", "version": 1,
                   "panel": {"width": 600, "height": 400, "thickness": 60}, "kerf_depth": )" +
               std::to_string(depth) +
               R"(, "bench": {"saws": [{"id": "s", "kind": "guide-rail", "kerf": 2, "blade": 80}]}})";
    };
    EXPECT_TRUE(readProject(text(39.9)).has_value());
    const auto refused = readProject(text(40));
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().pointer, "/bench/saws/0/blade");
}

// A ring is told with its members, and only those.
TEST(Refusals, ARingIsToldWithItsMembers) {
    const auto refused = readProject(fullProjectWith("/lines/0/place/from", "\"B\""));
    ASSERT_FALSE(refused.has_value());
    EXPECT_NE(refused.error().sentence.find("A → B → A"), std::string::npos) << refused.error().sentence;
}

}  // namespace
}  // namespace kerfwall

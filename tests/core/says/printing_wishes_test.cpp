// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "core/says/project_text.h"

namespace kerfwall {
namespace {

std::string projectWith(const std::string& printing) {
    return R"({"format": "kerfwall-project", "version": 1, "panel": {"width": 400, "height": 250, "thickness": 12}, "printing": )" +
           printing + "}";
}

// Expected from: a law. What is read is written back and read again as the same.
TEST(PrintingWishes, KeepFaceHairlineAndWhatIsLeftOut) {
    const auto read = readProject(projectWith(R"({"paper": "roll-610", "face": "back", "hairline": true, "leave_out": ["waste", "centres"]})"));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->printing.paper, "roll-610");
    EXPECT_EQ(read->printing.face, Face::Back);
    EXPECT_TRUE(read->printing.hairline);
    EXPECT_EQ(read->printing.leaveOut, (std::vector<PatternLayer>{PatternLayer::Waste, PatternLayer::Centres}));
    const auto again = readProject(writeProject(*read));
    ASSERT_TRUE(again);
    EXPECT_EQ(again->printing, read->printing);
}

TEST(PrintingWishes, RefuseWhatIsNoneWithItsPointer) {
    for (const auto& [printing, pointer] :
         {std::pair{R"({"face": "both"})", "/printing/face"}, std::pair{R"({"leave_out": ["lines"]})", "/printing/leave_out/0"},
          std::pair{R"({"hairline": 0.13})", "/printing/hairline"}, std::pair{R"({"paper": "roll-20"})", "/printing/paper"}}) {
        const auto read = readProject(projectWith(printing));
        ASSERT_FALSE(read) << printing;
        EXPECT_EQ(read.error().pointer, pointer);
    }
}

}  // namespace
}  // namespace kerfwall

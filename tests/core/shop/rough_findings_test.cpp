// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <set>

#include "core/geometry/solve.h"
#include "core/shop/finding_groups.h"
#include "tests/core/geometry/projects.h"
#include "tests/core/shop/finding_fixture.h"

namespace kerfwall::test {
namespace {

using testing_bench::only;

std::vector<Finding> minded(const Project& project, const std::string& code) {
    return only(roughFindings(project, solve(project)), code);
}

Project windowWith(double kerf, double bit, double drill) {
    Project project = windowProject();
    setTools(project, kerf, bit);
    project.bench->cornerDrill = drill;
    return project;
}

// Expected from: the report's table: care under 2 mm of kerf.
TEST(RoughFindings, AKerfUnderTwoMillimetresLeavesLittleRoom) {
    EXPECT_TRUE(minded(windowWith(2, 12.7, 8), "rough-room").empty());
    const auto found = minded(windowWith(1.9, 12.7, 8), "rough-room");
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].severity, Severity::Care);
    EXPECT_EQ(found[0].lines.size(), 4u);
    EXPECT_EQ(found[0].cutout, "window");
    EXPECT_EQ(found[0].value, 1.9);
    EXPECT_EQ(found[0].limit, 2);
    EXPECT_NE(found[0].text.find("Saw with a kerf of 2.0 mm or more,"), std::string::npos) << found[0].text;
}

// Expected from: only the sled's kerf of 1.8 is too narrow, and it cuts C and D; the rip saw's 3.2 has room.
TEST(RoughFindings, NameTheLinesWithTheNarrowKerfAndASawWithRoom) {
    Project project = windowWith(3.2, 12.7, 8);
    project.bench->saws.at(1).kerf = 1.8;
    project.lines[2].saw = project.lines[3].saw = "sled";
    const auto found = minded(project, "rough-room");
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(std::set<LineId>(found[0].lines.begin(), found[0].lines.end()), (std::set<LineId>{"C", "D"}));
    EXPECT_NE(found[0].text.find("like saw rip's 3.2 mm"), std::string::npos) << found[0].text;
}

// Expected from: (drill - bit) / 2 (1 - sin 45): a drill of 8 and a bit of 6.35 give 0.825 x 0.292893 = 0.2416; a
// drill of the bit's size none.
TEST(RoughFindings, ADrillLargerThanTheBitCutsPastTheLines) {
    EXPECT_TRUE(minded(windowWith(2.2, 8, 8), "drill-wide").empty());
    const auto found = minded(windowWith(2.2, 6.35, 8), "drill-wide");
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].severity, Severity::Stop);
    EXPECT_NEAR(found[0].value.value_or(0), 0.2416, 5e-5);
    EXPECT_EQ(found[0].limit, 0);
    EXPECT_EQ(found[0].lines.size(), 2u);
    EXPECT_NE(found[0].text.find("Take a drill of 6.3 mm or less"), std::string::npos) << found[0].text;
}

// Expected from: the same at 60 degrees, where sine and cosine part: 0.825 (1 - sin 30) = 0.4125, more than at 90.
TEST(RoughFindings, TheSharpestCornerIsTold) {
    using namespace testing_bench;
    Project project = testing_bench::panelOf(400, 250, 12);
    Solved solved = answerFor(project, 6.35);
    solved.lines = {lineWithKerf("A", {0, 100}, {400, 100}, Side::Left), lineWithKerf("D", {250, 0}, {250, 250}, Side::Left)};
    put(project, solved, rectangle("window", {{150, 100}, {250, 150}}, 3.175));
    for (Corner& corner : solved.cutouts[0].corners) corner.drill = ReliefHole{corner.point, 8};
    solved.cutouts[0].corners[2].angle = 60;
    const auto found = only(roughFindings(project, solved), "drill-wide");
    ASSERT_EQ(found.size(), 1u);
    EXPECT_NEAR(found[0].value.value_or(0), 0.4125, 1e-9);
    EXPECT_EQ(found[0].at, (Point{250, 150}));
}

// Expected from: a bit that does not fit (56 between A and B) saws and drills nothing.
TEST(RoughFindings, SayNothingOfACutoutTheBitDoesNotFit) {
    EXPECT_TRUE(minded(windowWith(1.5, 60, 80), "rough-room").empty());
    EXPECT_TRUE(minded(windowWith(1.5, 60, 80), "drill-wide").empty());
}

}  // namespace
}  // namespace kerfwall::test

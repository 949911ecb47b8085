// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>

#include "core/geometry/solve.h"
#include "core/shop/finding.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall {
namespace {

std::vector<Finding> foundIn(const Project& project, const std::string& code) {
    std::vector<Finding> all = findings(project, solve(project));
    std::erase_if(all, [&](const Finding& is) { return is.code != code; });
    return all;
}

Project byBush(double bush, double cutter, double length) {
    Project project = test::windowProject();
    project.use.byBush = true;
    project.use.bush = bush;
    project.use.bit = cutter;
    project.use.bushLength = length;
    return project;
}

// report.md: B - c under 3 is to be minded; facts.md 2. A bush of 16 with a cutter of 12.7 leaves 3.3, with 13.5 2.5; on a template
// of 12 a bush may stand out 11.9 and not 12.
TEST(UseFindings, ABushLeavesRoomAndStandsOutLessThanTheTemplate) {
    EXPECT_TRUE(foundIn(byBush(16, 12.7, 5), "bush-fit").empty());
    EXPECT_TRUE(foundIn(byBush(16, 13, 11.9), "bush-fit").empty());
    const auto tight = foundIn(byBush(16, 13.5, 5), "bush-fit");
    ASSERT_EQ(tight.size(), 1U);
    EXPECT_EQ(tight[0].severity, Severity::Care);
    EXPECT_EQ(tight[0].value, 2.5);
    EXPECT_EQ(tight[0].limit, 3);
    EXPECT_TRUE(tight[0].text.contains("16.5 mm or more")) << tight[0].text;
    EXPECT_TRUE(tight[0].text.contains("13.0 mm or less")) << tight[0].text;
    const auto longer = foundIn(byBush(24, 12.7, 12), "bush-fit");
    ASSERT_EQ(longer.size(), 1U);
    EXPECT_EQ(longer[0].severity, Severity::Stop);
    EXPECT_EQ(longer[0].limit, 12);
    Project inTurn = byBush(16, 12.7, 5);
    inTurn.use.cutters = {{14, "", std::nullopt, ""}};
    EXPECT_EQ(foundIn(inTurn, "bush-fit").size(), 1U) << "the widest of those used in turn";
}

/// A pocket of 9 in work of 20, trimmed with a bearing at the shank.
Project pocket(double cutting) {
    Project project = test::windowProject();
    project.use.bit = 12.7;
    project.use.bearingAt = BearingAt::Shank;
    project.use.cuttingLength = cutting;
    project.use.depth = 9;
    Workpiece work;
    work.outline = {{0, 0}, {400, 0}, {400, 250}, {0, 250}};
    work.thickness = 20;
    project.workpiece = work;
    return project;
}

// facts.md 5: cutting length 25 on a template of 12 takes 25 + 3 - 12 = 16 at once, more than 12.7 / 2; 15 takes 6; 40 takes 31,
// more than twice 12.7.
TEST(UseFindings, AShanksBearingMustReachTheTemplate) {
    const auto deep = foundIn(pocket(25), "first-pass");
    ASSERT_EQ(deep.size(), 1U);
    EXPECT_EQ(deep[0].severity, Severity::Care);
    EXPECT_EQ(deep[0].value, 16);
    EXPECT_EQ(deep[0].limit, 6.35);
    EXPECT_TRUE(foundIn(pocket(15), "first-pass").empty());
    ASSERT_EQ(foundIn(pocket(40), "first-pass").size(), 1U);
    EXPECT_EQ(foundIn(pocket(40), "first-pass")[0].severity, Severity::Stop);
    Project through = pocket(25);
    through.use.depth = 20;
    EXPECT_TRUE(foundIn(through, "first-pass").empty()) << "what goes through is sawn out first";
    Project tip = pocket(25);
    tip.use.bearingAt = BearingAt::Tip;
    EXPECT_TRUE(foundIn(tip, "first-pass").empty());
}

}  // namespace
}  // namespace kerfwall

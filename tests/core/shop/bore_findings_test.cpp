// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "core/geometry/solve.h"
#include "core/shop/finding_groups.h"
#include "tests/core/geometry/projects.h"
#include "tests/core/shop/finding_fixture.h"

namespace kerfwall::test {
namespace {

using testing_bench::only;

/// A window of 12 mm whose corner of A and C is bored to 20, kerfs `depth` deep.
Project boredWindow(double depth, double radius = 20) {
    Project project = windowProject();
    project.kerfDepth = depth;
    project.cutouts[0].corners = {{"A", "C", radius, ""}};
    return project;
}

std::vector<Finding> rides(const Project& project) { return only(boreFindings(project, solve(project)), "web-ride"); }

// Expected from: the report's table: care under length + 0.5, stop under half the length. A bearing of 5 in a panel of
// 12: a band of 12 - depth, so 6.5 is on the limit of 5.5, 9.5 on that of 2.5.
TEST(BoreFindings, TheBandUnderTheKerfsMustHoldTheBearing) {
    EXPECT_TRUE(rides(boredWindow(6.5)).empty());
    const auto care = rides(boredWindow(6.6));
    ASSERT_EQ(care.size(), 1u);
    EXPECT_EQ(care[0].severity, Severity::Care);
    EXPECT_NEAR(care[0].value.value_or(0), 5.4, 1e-12);
    EXPECT_EQ(care[0].limit, 5.5);
    EXPECT_EQ(care[0].cutout, "window");
    EXPECT_NE(care[0].text.find("Saw the kerfs 6.5 mm deep or less, or take a panel of 12.1 mm or more."), std::string::npos)
        << care[0].text;
    EXPECT_EQ(rides(boredWindow(9.5)).at(0).severity, Severity::Care);
    const auto stop = rides(boredWindow(9.6));
    ASSERT_EQ(stop.size(), 1u);
    EXPECT_EQ(stop[0].severity, Severity::Stop);
    EXPECT_EQ(stop[0].limit, 2.5);
}

// Expected from: the same with a bush that stands out 6: care under 6.5, and 12 - 6 leaves 6.
TEST(BoreFindings, OrTheBush) {
    Project project = boredWindow(5.5);
    project.use.byBush = true;
    project.use.bush = 24;
    project.use.bushLength = 6;
    EXPECT_TRUE(rides(project).empty());
    project.kerfDepth = 6;
    const auto care = rides(project);
    ASSERT_EQ(care.size(), 1u);
    EXPECT_EQ(care[0].limit, 6.5);
    EXPECT_NE(care[0].text.find("bush"), std::string::npos);
}

// Expected from: a corner left to the bit has no round that kerfs could break: 6 is less than the bit's 6.35.
TEST(BoreFindings, AreNotAboutCornersTheBitDoes) {
    EXPECT_TRUE(rides(boredWindow(9.6, 6)).empty());
    Project plain = windowProject();
    plain.kerfDepth = 9.6;
    EXPECT_TRUE(rides(plain).empty());
}

}  // namespace
}  // namespace kerfwall::test

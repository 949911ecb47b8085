// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "core/geometry/solve.h"
#include "core/shop/finding_groups.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall::test {
namespace {

// Expected from: the project file: no saw, then kerf 3.2 and bench-limit, always a stop.
TEST(SawFindings, ABenchWithoutASawIsToldForEveryKerf) {
    Project project = windowProject();
    project.bench = Bench{};
    const Solved solved = solve(project);
    EXPECT_EQ(findLine(solved, "A")->kerfs.at(0).width, 3.2);
    const std::vector<Finding> found = sawFindings(project, solved);
    ASSERT_EQ(found.size(), 4u);
    EXPECT_EQ(found[0].code, "bench-limit");
    EXPECT_EQ(found[0].severity, Severity::Stop);
    EXPECT_EQ(found[0].lines, (std::vector<LineId>{"A"}));
    EXPECT_NE(found[0].text.find("400.0 mm along this line"), std::string::npos) << found[0].text;
}

TEST(SawFindings, TheStockBenchCutsAWindow) {
    const Project project = windowProject();
    EXPECT_TRUE(sawFindings(project, solve(project)).empty());
}

}  // namespace
}  // namespace kerfwall::test

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/work_outline.h"

#include <gtest/gtest.h>

#include "tests/core/geometry/projects.h"

namespace kerfwall {
namespace {

TEST(WorkOutline, IsTurnedAnticlockwiseAndKeepsThicknessAndGrain) {
    Project project = test::windowProject();
    project.workpiece.emplace();
    project.workpiece->thickness = 18;
    project.workpiece->grain = 45;
    project.workpiece->parts.emplace_back();
    const auto made = withWorkOutline(project, {{0, 0}, {0, 50}, {80, 0}});
    ASSERT_TRUE(made);
    EXPECT_EQ(made->workpiece->outline, (std::vector<Point>{{80, 0}, {0, 50}, {0, 0}}));
    EXPECT_EQ(made->workpiece->thickness, 18);
    EXPECT_EQ(made->workpiece->grain, 45);
    EXPECT_TRUE(made->workpiece->parts.empty());
    EXPECT_EQ(made->lines, project.lines);
}

// Expected from: pencil. Of a bow tie's sides the one from (0, 0) to (100, 100) crosses the one from (100, 0) to (0, 100).
TEST(WorkOutline, RefusesSidesThatCrossTooFewCornersAndPlacesTooFarOff) {
    const Project project = test::windowProject();
    const auto crossed = withWorkOutline(project, {{0, 0}, {100, 100}, {100, 0}, {0, 100}});
    ASSERT_FALSE(crossed);
    EXPECT_NE(crossed.error().find("crosses or touches itself on the side that begins 0"), std::string::npos) << crossed.error();
    EXPECT_FALSE(withWorkOutline(project, {{0, 0}, {100, 100}}));
    const auto far = withWorkOutline(project, {{0, 0}, {10001, 0}, {0, 9}});
    ASSERT_FALSE(far);
    EXPECT_NE(far.error().find("farther than"), std::string::npos);
}

}  // namespace
}  // namespace kerfwall

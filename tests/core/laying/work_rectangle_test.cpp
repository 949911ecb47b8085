// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/work_rectangle.h"

#include <gtest/gtest.h>

#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

TEST(WorkRectangle, IsSetKeptAndMoved) {
    Project project = blankPanel();
    EXPECT_FALSE(workBounds(project));
    EXPECT_EQ(withWorkAt(project, {1, 2}), project);
    project = withWorkRectangle(project, {{50, 30}, {250, 130}});
    project.workpiece->thickness = 18;
    EXPECT_TRUE(isWorkRectangle(project));
    project = withWorkRectangle(project, {{50, 30}, {270, 130}});
    EXPECT_EQ(project.workpiece->thickness, 18);
    EXPECT_EQ(workBounds(withWorkAt(project, {-20, 40})), (Box{{-20, 40}, {200, 140}}));
}

TEST(WorkRectangle, AnyOtherOutlineIsNone) {
    Project project = blankPanel();
    project.workpiece = Workpiece{{{0, 0}, {100, 0}, {80, 50}, {0, 50}}, {}, {}, {}, {}};
    EXPECT_FALSE(isWorkRectangle(project));
    EXPECT_EQ(workBounds(project), (Box{{0, 0}, {100, 50}}));
}

}  // namespace
}  // namespace kerfwall

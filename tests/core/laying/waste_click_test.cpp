// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/waste_click.h"

#include <gtest/gtest.h>

#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

// Expected from: pencil. The middle face is 180 x 56 = 10080 mm², and no disc in it is wider than 56.
TEST(WasteClick, AFreeFaceBecomesAClosedCutoutOfItsOwn) {
    const auto click = wasteClickAt(gridOfFour(), {130, 100}, "");
    ASSERT_TRUE(click);
    EXPECT_EQ(click->what, Marked::Added);
    EXPECT_EQ(click->cutout, "cutout-1");
    EXPECT_EQ(click->bounds, (Box{{110, 90}, {290, 146}}));
    EXPECT_EQ(click->cutoutBounds, click->bounds);
    EXPECT_NEAR(click->area, 10080, 1e-9);
    EXPECT_NEAR(click->cutoutArea, 10080, 1e-9);
    EXPECT_NEAR(click->widest, 56, 1e-9);
    EXPECT_FALSE(click->open);
}

// Expected from: pencil. Right of D the face is 110 x 56 = 6160 mm²: together 290 x 56 = 16240, open on the right.
TEST(WasteClick, ANeighbourJoinsAndOpensIt) {
    Project project = gridOfFour();
    project.cutouts.push_back({"window", {{200, 118}}, {}, {}, {}});
    const auto click = wasteClickAt(project, {350, 118}, "");
    ASSERT_TRUE(click);
    EXPECT_EQ(click->what, Marked::Joined);
    EXPECT_EQ(click->cutout, "window");
    EXPECT_NEAR(click->area, 6160, 1e-9);
    EXPECT_EQ(click->cutoutBounds, (Box{{110, 90}, {400, 146}}));
    EXPECT_NEAR(click->cutoutArea, 16240, 1e-9);
    EXPECT_TRUE(click->open);
}

TEST(WasteClick, TheLastFaceLeavesNothingOfItsCutout) {
    Project project = gridOfFour();
    project.cutouts.push_back({"window", {{200, 118}}, {}, {}, {}});
    const auto click = wasteClickAt(project, {200, 100}, "");
    ASSERT_TRUE(click);
    EXPECT_EQ(click->what, Marked::Taken);
    EXPECT_EQ(click->cutout, "window");
    EXPECT_EQ(click->cutoutArea, 0);
}

TEST(WasteClick, RefusesALineAndAPlaceOffThePanel) {
    EXPECT_EQ(wasteClickAt(gridOfFour(), {200, 90}, "").error(), NoMarking::OnALine);
    EXPECT_EQ(wasteClickAt(gridOfFour(), {500, 90}, "").error(), NoMarking::NotOnPanel);
}

}  // namespace
}  // namespace kerfwall

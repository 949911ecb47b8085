// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/fence_section.h"

#include <gtest/gtest.h>

#include "core/drawing/side_view.h"
#include "tests/core/drawing/drawn_panel.h"

namespace kerfwall {
namespace {

/// On a panel of 400 x 250 x 12 along the bottom edge: its face 40 up, its body 18 wide beyond it, 20 high, let 3 in.
Project withFence(Face face) {
    Project project = blankPanel(400, 250, 12);
    project.fences.push_back({Edge::Bottom, 40, Side::Left, 100, 300, 18, 20, 3, FenceKind::Straight, face, {}});
    return project;
}

// Expected from: pencil. The body lies from x 100 to 300 and y 40 to 58; on the layout face it stands 20 above it and 3 in.
TEST(FenceSection, StandsOnItsFaceAndInItsGroove) {
    const auto level = fenceSections(withFence(Face::Layout), {}, {CutDirection::Level, 50});
    ASSERT_EQ(level.size(), 1U);
    EXPECT_EQ(level[0], (FenceSection{0, 100, 300, -20, 3}));
    const auto upright = fenceSections(withFence(Face::Layout), {}, {CutDirection::Upright, 150});
    ASSERT_EQ(upright.size(), 1U);
    EXPECT_EQ(upright[0], (FenceSection{0, 40, 58, -20, 3}));
}

// Expected from: pencil. On the back, 12 down, it reaches from 12 - 3 to 12 + 20.
TEST(FenceSection, HangsUnderTheBack) {
    const auto cut = fenceSections(withFence(Face::Back), {}, {CutDirection::Upright, 150});
    ASSERT_EQ(cut.size(), 1U);
    EXPECT_EQ(cut[0], (FenceSection{0, 40, 58, 9, 32}));
}

TEST(FenceSection, ShowsOnlyFencesThatAreCut) {
    EXPECT_TRUE(fenceSections(withFence(Face::Layout), {}, {CutDirection::Level, 60}).empty());
    EXPECT_TRUE(fenceSections(withFence(Face::Layout), {}, {CutDirection::Upright, 320}).empty());
    const SideViewLook look;
    const CuttingLine through{CutDirection::Level, 50};
    const Project project = withFence(Face::Layout);
    EXPECT_EQ(marksOf<Area>(sideView(project, {}, {}, through, look), Ink::FenceBody).size(), 1U);
    EXPECT_TRUE(marksOf<Area>(sideView(project, {}, {}, {CutDirection::Level, 60}, look), Ink::FenceBody).empty());
}

}  // namespace
}  // namespace kerfwall

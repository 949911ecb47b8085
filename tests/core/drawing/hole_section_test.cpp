// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/hole_section.h"

#include <gtest/gtest.h>

#include "tests/core/drawing/drawn_panel.h"

namespace kerfwall {
namespace {

using Into = HoleBreak::Into;

/// A hole of 10 from an edge of a panel of 400 x 250 x 18, its axis 9 down unless said otherwise.
HoleSection shownAt(const ClampHole& hole, const CuttingLine& cut, const Solved& solved = {}) {
    return holeSection(blankPanel(400, 250, 18), solved, hole, cut);
}

// Expected from: pencil. The left edge runs down from the top: 100 along is y = 150.
TEST(HoleSection, LiesInALevelViewFromTheSidesAndInAnUprightOneFromBottomAndTop) {
    const HoleSection left = shownAt({"", Edge::Left, 100, 10, 60, {}, {}}, {CutDirection::Level, 150});
    EXPECT_TRUE(left.lying);
    EXPECT_EQ(left.mouth, 0);
    EXPECT_EQ(left.point, 60);
    const HoleSection right = shownAt({"", Edge::Right, 100, 10, 60, {}, {}}, {CutDirection::Level, 100});
    EXPECT_TRUE(right.lying);
    EXPECT_EQ(right.mouth, 400);
    EXPECT_EQ(right.point, 340);
    const HoleSection top = shownAt({"", Edge::Top, 100, 10, 60, {}, {}}, {CutDirection::Upright, 300});
    EXPECT_TRUE(top.lying);
    EXPECT_EQ(top.mouth, 250);
    EXPECT_EQ(top.point, 190);
    EXPECT_FALSE(shownAt({"", Edge::Left, 100, 10, 60, {}, {}}, {CutDirection::Upright, 30}).lying);
}

// Expected from: pencil. 3 beside the axis of a bore of radius 5 the chord is 2 * 4 high; 5 beside it touches only.
TEST(HoleSection, IsAsHighAsTheChordThatIsCut) {
    const ClampHole hole{"", Edge::Left, 100, 10, 60, {}, {}};
    EXPECT_NEAR(shownAt(hole, {CutDirection::Level, 153}).half, 4, 1e-12);
    EXPECT_TRUE(shownAt(hole, {CutDirection::Level, 153}).cut);
    EXPECT_FALSE(shownAt(hole, {CutDirection::Level, 155}).cut);
    EXPECT_EQ(shownAt(hole, {CutDirection::Level, 200}).half, 5);
}

TEST(HoleSection, SeenEndOnItIsCutAsFarAsItIsDeep) {
    const ClampHole hole{"", Edge::Right, 100, 10, 60, {}, {}};
    EXPECT_TRUE(shownAt(hole, {CutDirection::Upright, 341}).cut);
    EXPECT_FALSE(shownAt(hole, {CutDirection::Upright, 339}).cut);
    EXPECT_EQ(shownAt(hole, {CutDirection::Upright, 341}).mouth, 100);
}

// Expected from: pencil. A window's walls at 110 and 290, y 90 to 146: a hole at y = 118, 150 deep, is free from 110 on.
TEST(HoleSection, ComesThroughIntoAnOpening) {
    const ClampHole hole{"", Edge::Left, 132, 10, 150, {}, {}};
    const auto breaks = shownAt(hole, {CutDirection::Level, 118}, windowInPanel()).breaks;
    ASSERT_EQ(breaks.size(), 1U);
    EXPECT_EQ(breaks[0], (HoleBreak{Into::Opening, 110, 150, 4, 14}));
    EXPECT_EQ(shownAt(hole, {CutDirection::Level, 30}, windowInPanel()).breaks, breaks) << "hidden: in its axis' own plane";
}

// Expected from: pencil. C's kerf is 6 deep from x 110 to 113.2; a bore of 10 about 9 begins at 4, one of 4 about 9 at 7.
TEST(HoleSection, MeetsAKerfThatIsDeeperThanItBegins) {
    Solved solved = windowInPanel();
    solved.cutouts.clear();
    const auto breaks = shownAt({"", Edge::Left, 132, 10, 150, {}, {}}, {CutDirection::Level, 118}, solved).breaks;
    ASSERT_EQ(breaks.size(), 1U);
    EXPECT_EQ(breaks[0].into, Into::Kerf);
    EXPECT_NEAR(breaks[0].from, 110, 1e-9);
    EXPECT_NEAR(breaks[0].to, 113.2, 1e-9);
    EXPECT_EQ(breaks[0].top, 4);
    EXPECT_EQ(breaks[0].bottom, 6);
    EXPECT_TRUE(shownAt({"", Edge::Left, 132, 4, 150, {}, {}}, {CutDirection::Level, 118}, solved).breaks.empty());
}

// Expected from: pencil. A bore of 10 about 3 stands 2 above the layout face; about 14.5 of 18 it stands 1.5 below the back.
TEST(HoleSection, ComesThroughAFace) {
    const auto above = shownAt({"", Edge::Left, 100, 10, 60, 3, {}}, {CutDirection::Level, 20}).breaks;
    ASSERT_EQ(above.size(), 1U);
    EXPECT_EQ(above[0], (HoleBreak{Into::Face, 0, 60, -2, 0}));
    const auto below = shownAt({"", Edge::Left, 100, 10, 60, 14.5, {}}, {CutDirection::Level, 20}).breaks;
    ASSERT_EQ(below.size(), 1U);
    EXPECT_EQ(below[0], (HoleBreak{Into::Face, 0, 60, 18, 19.5}));
}

}  // namespace
}  // namespace kerfwall

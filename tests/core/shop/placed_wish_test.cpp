// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/placed_wish.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/geometry/solve.h"
#include "core/shop/finding.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall {
namespace {

using From = PlaceAlong::From;
constexpr double kExact = 1e-9;  // mm
const WantedWindow kHold{110, 35, 6.35, {}, {}};

Project bushProject() {
    Project project = test::panelOf(400, 250);
    project.use.byBush = true;
    project.use.bush = 24;
    project.use.bit = 12.7;
    return project;
}

/// The crate end: 360 x 200, its lower left corner at (20, 30).
Project crateProject() {
    Project project = bushProject();
    project.workpiece = Workpiece{};
    project.workpiece->outline = {{20, 30}, {380, 30}, {380, 230}, {20, 230}};
    return project;
}

Box workOf(const Project& project) { return solve(project).cutouts.at(0).work.bounds; }

LaidWish laid(const Project& project, const Wish& wish, const WishPlace& place) {
    const auto made = layPlaced(project, wish, place);
    EXPECT_TRUE(made.has_value()) << made.error().sentence;
    return made.value_or(LaidWish{});
}

void expectLowAt(const Project& project, const WishPlace& place, Point low) {
    const Box box = workOf(laid(project, kHold, place).project);
    EXPECT_NEAR(box.low.x, low.x, kExact);
    EXPECT_NEAR(box.low.y, low.y, kExact);
}

// Expected from: pencil. On 400 x 250: the middle leaves (145, 107.5); 120 to the middle leaves 65; the left side 50 in
// is 50; the right side 60 from the right edge leaves 400 - 60 - 110 = 230. So upwards.
TEST(PlacedWish, OnThePanelItCountsFromThePanelsEdges) {
    const Project project = bushProject();
    expectLowAt(project, {}, {145, 107.5});
    expectLowAt(project, {false, {From::Middle, 120}, {From::Centred, 0}, {}}, {65, 107.5});
    expectLowAt(project, {false, {From::LowSide, 50}, {From::HighSide, 40}, {}}, {50, 250 - 40 - 35});
    expectLowAt(project, {false, {From::HighSide, 60}, {From::LowSide, 45}, {}}, {230, 45});
}

// Expected from: pencil. The same from the crate end's edges: in its middle (200, 130); 40 under its upper edge 230.
TEST(PlacedWish, OnTheWorkItCountsFromTheWorksEdges) {
    const Project project = crateProject();
    expectLowAt(project, {true, {From::Centred, 0}, {From::HighSide, 40}, {}}, {145, 230 - 40 - 35});
    expectLowAt(project, {true, {From::Suited, 0}, {From::Suited, 0}, {}}, {145, 112.5});
    expectLowAt(project, {true, {From::LowSide, 50}, {From::Middle, 70}, {}}, {70, 30 + 70 - 17.5});
}

// Expected from: pencil. The wall stands 5.65 outside the edge: 195.65 up with the edge at 190, and follows the work.
TEST(PlacedWish, TheWallsOffsetFollowsTheWork) {
    const auto topWall = [](const Project& project) {
        const LaidWish made = laid(project, kHold, {true, {}, {From::HighSide, 40}, {}});
        return std::get<ByOffset>(findLine(made.project, "B")->place).distance;
    };
    Project project = crateProject();
    EXPECT_NEAR(topWall(project), 195.65, kExact);
    for (Point& corner : project.workpiece->outline) corner.y -= 10;
    EXPECT_NEAR(topWall(project), 185.65, kExact);
}

// Expected from: pencil. The parts of glued-up work count together.
TEST(PlacedWish, WorkGluedUpOfPartsCountsAsOne) {
    Project project = bushProject();
    project.workpiece = Workpiece{};
    project.workpiece->parts = {{{{20, 30}, {200, 30}, {200, 230}, {20, 230}}, {}, {}}, {{{200, 30}, {380, 30}, {380, 230}}, {}, {}}};
    EXPECT_EQ(workBounds(project), (Box{{20, 30}, {380, 230}}));
    EXPECT_EQ(workBounds(bushProject()), std::nullopt);
}

// Expected from: pencil. On the panel it lies in the middle; work of 360 x 200 with the opening 40 under its upper edge
// and in its middle across reaches from 200 - 180 and from 142.5 + 40 - 200.
TEST(PlacedWish, WorkKnownByItsSizeIsPutRoundIt) {
    const LaidWish made = laid(bushProject(), kHold, {true, {From::Centred, 0}, {From::HighSide, 40}, Blank{360, 200}});
    EXPECT_NEAR(workOf(made.project).low.x, 145, kExact);
    ASSERT_TRUE(made.project.workpiece.has_value());
    const auto& outline = made.project.workpiece->outline;
    ASSERT_EQ(outline.size(), 4u);
    EXPECT_NEAR(outline[0].x, 20, kExact);
    EXPECT_NEAR(outline[0].y, -17.5, kExact);
    EXPECT_NEAR(outline[2].x, 380, kExact);
    EXPECT_NEAR(outline[2].y, 182.5, kExact);
}

// Expected from: pencil. The work's upper edge comes to lie at 182.5, 67.5 under the panel's; its lower one at -17.5, off
// the panel, so the fence there stays. A fence with its body on the work's side is another's.
TEST(PlacedWish, AFencesOffsetFollowsTheWork) {
    Project project = bushProject();
    Fence fence;
    fence.along = Edge::Top;
    fence.offset = 10;
    fence.body = Side::Right;
    fence.to = 300;
    project.fences = {fence, fence, fence};
    project.fences[1].along = Edge::Bottom;
    project.fences[2].body = Side::Left;
    const auto fences = laid(project, kHold, {true, {}, {From::HighSide, 40}, Blank{360, 200}}).project.fences;
    EXPECT_NEAR(fences.at(0).offset, 67.5, kExact);
    EXPECT_EQ(fences.at(1).offset, 10);
    EXPECT_EQ(fences.at(2).offset, 10);
}

// Expected from: pencil. Laid on work that is known now, the wish says the same again.
TEST(PlacedWish, TheWorkPutRoundItAgreesWithTheOtherWay) {
    for (const WishPlace place : {WishPlace{true, {From::LowSide, 30}, {From::HighSide, 40}, Blank{360, 200}},
                                  WishPlace{true, {From::HighSide, 30}, {From::LowSide, 40}, Blank{360, 200}},
                                  WishPlace{true, {From::Middle, 100}, {From::Middle, 60}, Blank{360, 200}}}) {
        Project project = bushProject();
        const LaidWish made = laid(project, kHold, place);
        project.workpiece = made.project.workpiece;
        const Box again = workOf(laid(project, kHold, place).project);
        EXPECT_NEAR(again.low.x, workOf(made.project).low.x, kExact);
        EXPECT_NEAR(again.low.y, workOf(made.project).low.y, kExact);
    }
}

// Expected from: pencil. The legs' feet stand on the work's lower edge, 20 up; the rail's wall 280 above that.
TEST(PlacedWish, LegsStandOnTheWorksLowerEdge) {
    Project project = test::panelOf(500, 400);
    project.workpiece = Workpiece{};
    project.workpiece->outline = {{80, 30}, {420, 30}, {420, 360}, {80, 360}};
    const LaidWish made = laid(project, WantedLegs{340, 280, 90, 75, 0, 6.35, {}, {}}, {true, {}, {}, {}});
    EXPECT_EQ(findLine(made.project, "A")->place, (Place(ByOffset{Edge::Bottom, 310})));
}

// Expected from: pencil. A hole from the left edge at 125 up, 100 deep, would end 39 before the wall at 139.35; one of
// 135 4.35 before it, less than the 5 to mind. 5 to the right would do: 9.35, and steps are 5 or a twelfth of
// 200 - 55 - 30.65 = 114.35, which is 9.53, up to 10.
TEST(PlacedWish, AClampHoleInTheWayMovesIt) {
    Project project = bushProject();
    project.panel.thickness = 18;
    project.clampHoles = {{"", Edge::Left, 125, 8, 100, {}, {}}};
    EXPECT_NEAR(workOf(laid(project, kHold, {}).project).low.x, 145, kExact);
    project.clampHoles[0].depth = 135;
    const LaidWish moved = laid(project, kHold, {});
    const Box box = workOf(moved.project);
    EXPECT_NEAR(box.low.x, 155, kExact);
    EXPECT_NEAR(box.low.y, 107.5, kExact);
    const auto isOfHole = [](const Finding& finding) { return finding.hole && finding.severity != Severity::Note; };
    EXPECT_FALSE(std::ranges::any_of(findings(moved.project, solve(moved.project)), isOfHole));
    const LaidWish told = laid(project, kHold, {false, {From::Centred, 0}, {From::Centred, 0}, {}});
    EXPECT_NEAR(workOf(told.project).low.x, 145, kExact);
}

// Expected from: pencil. The first takes the middle; the second finds room beside it on the same level.
TEST(PlacedWish, AnotherCutoutInTheWayMovesIt) {
    const Project first = laid(test::panelOf(600, 250), kHold, {}).project;
    const LaidWish second = laid(first, kHold, {});
    EXPECT_EQ(second.project.lines.size(), 6u);
    EXPECT_EQ(solve(second.project).cutouts.size(), 2u);
}

// Expected from: the rule for polygons: as its corners say, or in the middle where that is off the panel.
TEST(PlacedWish, APolygonLiesAsItsCornersSayWhereItCan) {
    const WantedPolygon kite{{{100, 60}, {180, 60}, {180, 110}, {100, 130}}, 6.35, {}, {}};
    EXPECT_NEAR(workOf(laid(bushProject(), kite, {}).project).low.x, 100, kExact);
    const WantedPolygon own{{{0, 0}, {80, 0}, {80, 50}, {0, 70}}, 6.35, {}, {}};
    EXPECT_NEAR(workOf(laid(bushProject(), own, {}).project).low.x, 160, kExact);
    EXPECT_NEAR(workOf(laid(bushProject(), own, {}).project).low.y, 90, kExact);
    EXPECT_NEAR(workOf(laid(bushProject(), own, {false, {From::LowSide, 50}, {}, {}}).project).low.x, 50, kExact);
}

// Expected from: pencil. Corners of 10 want a bit of 20.
TEST(PlacedWish, OtherToolsAreLookedForInThatPlace) {
    Project project = crateProject();
    project.bench = stockBench();
    project.bench->bushes = {24};
    project.bench->bits = {20};
    const WishPlace place{true, {}, {From::HighSide, 40}, {}};
    EXPECT_EQ(otherSteering(project, WantedWindow{110, 35, 10, {}, {}}, place), (Steering{true, 24, 20}));
    EXPECT_EQ(otherSteering(project, WantedWindow{110, 35, 10, {}, {}}, {true, {From::LowSide, 300}, {}, {}}), std::nullopt);
}

TEST(PlacedWish, ThePanelTooSmallNamesTheBlank) {
    const auto no = layPlaced(test::panelOf(400, 50), kHold, {});
    ASSERT_FALSE(no.has_value());
    EXPECT_EQ(no.error().goodBlank, (Blank{160, 85}));
}

}  // namespace
}  // namespace kerfwall

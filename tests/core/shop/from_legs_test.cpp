// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <numbers>
#include <sstream>

#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "core/shop/finding.h"
#include "core/shop/from_wanted.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall {
namespace {

constexpr double kExact = 1e-9;  // mm

Project benchProject() {
    Project project = test::panelOf(500, 400);
    project.panel.thickness = 18;
    return project;
}

/// 340 over the feet, 280 from the feet to the rail, legs 90 wide at the rail, splayed 3 degrees inside.
WantedLegs benchLegs() {
    WantedLegs legs{340, 280, 90, 0, 0, 6.35, {}, {}};
    legs.legFoot = legFootFor(legs, 3);
    return legs;
}

Project sampleOf(const char* name) {
    std::ifstream file(std::string(KERFWALL_SAMPLES "/") + name);
    std::stringstream text;
    text << file.rdbuf();
    return readProject(text.str()).value();
}

LaidWish laid(const Project& project, const WantedLegs& wish) {
    const auto legs = layLegs(project, wish);
    EXPECT_TRUE(legs.has_value()) << legs.error().sentence;
    return legs.value_or(LaidWish{});
}

void expectRefused(const Project& project, const WantedLegs& wish, NoWish why, WishPart part, const std::string& words) {
    const auto legs = layLegs(project, wish);
    ASSERT_FALSE(legs.has_value()) << words;
    EXPECT_EQ(legs.error().why, why) << legs.error().sentence;
    EXPECT_EQ(legs.error().part, part) << legs.error().sentence;
    EXPECT_NE(legs.error().sentence.find(words), std::string::npos) << legs.error().sentence;
    EXPECT_EQ(legs.error().sentence.back(), '.');
}

// Expected from: the sample, laid out by hand: R is 300 up, L leans 3 degrees off the left edge through (170, 300), M
// is its mirror image. The feet stand 20 up and the rail 280 above them; 500 / 2 - 340 / 2 + 90 = 170.
TEST(FromLegs, TheBenchLegIsTheSampleLineByLine) {
    const LaidWish frame = laid(benchProject(), benchLegs());
    const Project sample = sampleOf("bench_leg.kerfwall");
    ASSERT_EQ(frame.lines, (std::vector<LineId>{"A", "B", "C"}));
    EXPECT_EQ(findLine(frame.project, "A")->place, findLine(sample, "R")->place);
    EXPECT_EQ(findLine(frame.project, "B")->place, findLine(sample, "L")->place);
    EXPECT_EQ(findLine(frame.project, "C")->place, (Place(ByMirror{"B", Centre::Upright})));
    EXPECT_EQ(frame.cutout, "frame");
    const auto& wanted = frame.project.cutouts.at(0).wanted;
    const auto& asked = sample.cutouts.at(0).wanted;
    ASSERT_TRUE(wanted.has_value());
    for (const Point corner : asked->outline) {
        EXPECT_TRUE(std::ranges::any_of(wanted->outline, [&](Point p) { return distance(p, corner) < 1e-4; })) << corner.x;
    }
    EXPECT_EQ(wanted->cornerRadius, asked->cornerRadius);
}

// Expected from: the sample: both cut the same opening, and neither has a finding the other has not but for the holes.
TEST(FromLegs, TheBenchLegCutsWhatTheSampleCuts) {
    Project project = benchProject();
    project.clampHoles = sampleOf("bench_leg.kerfwall").clampHoles;
    project.use = sampleOf("bench_leg.kerfwall").use;
    const Solved made = solve(laid(project, benchLegs()).project);
    const Solved sample = solve(sampleOf("bench_leg.kerfwall"));
    EXPECT_NEAR(made.cutouts.at(0).work.area, sample.cutouts.at(0).work.area, 1e-6);
    EXPECT_NEAR(made.cutouts.at(0).work.perimeter, sample.cutouts.at(0).work.perimeter, 1e-6);
    EXPECT_TRUE(made.cutouts.at(0).open);
}

// Expected from: pencil. 90 - 280 tan 3 = 75.32582; and back.
TEST(FromLegs, TaperAndFootFollowFromOneAnother) {
    EXPECT_NEAR(benchLegs().legFoot, 75.32582, 1e-5);
    EXPECT_NEAR(innerLean(benchLegs()), 3, 1e-12);
    const WantedLegs straight{400, 300, 60, 60, 0, 6.35, {}, {}};
    EXPECT_NEAR(innerLean(straight), 0, 1e-12);
}

// Expected from: pencil. Outer sides lean in by 280 tan 5 = 24.4968, so the inner ones stand there at 24.4968 + 90 from
// the outside of the feet, at the feet at 60: atan((24.4968 + 90 - 60) / 280) = 11.01387 degrees.
TEST(FromLegs, BothSidesOfALegMayLean) {
    const WantedLegs legs{340, 280, 90, 60, 5, 6.35, {}, {}};
    EXPECT_NEAR(innerLean(legs), 11.01387, 1e-5);
    const Solved solved = solve(laid(benchProject(), legs).project);
    EXPECT_NEAR(solved.cutouts.at(0).work.bounds.high.y, 300, kExact);
    // On the panel's edge, 20 below the feet: 250 - (170 - 60) - 20 tan 11.01387 = 136.10737.
    EXPECT_NEAR(solved.cutouts.at(0).drawn.bounds.low.x, 136.10737, 1e-5);
}

// Expected from: pencil. Straight legs are upright lines, by their distance: 250 -+ (200 - 60).
TEST(FromLegs, StraightLegsLieByTheirDistance) {
    const LaidWish frame = laid(benchProject(), {400, 300, 60, 60, 0, 6.35, {}, {}});
    EXPECT_EQ(findLine(frame.project, "B")->place, (Place(ByOffset{Edge::Left, 110})));
    EXPECT_EQ(findLine(frame.project, "C")->place, (Place(ByOffset{Edge::Left, 390})));
}

// Expected from: pencil. By a bush of 24 and a bit of 12.7 the rail's wall lies 5.65 higher and L's 5.65 / cos 3 further
// out at the same height; on the higher wall that is 5.65 tan 3 back: 170 - 5.65 / cos 3 + 5.65 tan 3 = 164.63835.
TEST(FromLegs, ABushMovesTheWallsOut) {
    Project project = benchProject();
    project.use.byBush = true;
    project.use.bush = 24;
    project.use.bit = 12.7;
    const LaidWish frame = laid(project, benchLegs());
    EXPECT_EQ(findLine(frame.project, "A")->place, (Place(ByOffset{Edge::Bottom, 305.65})));
    const auto& leg = std::get<ByAngle>(findLine(frame.project, "B")->place);
    EXPECT_EQ(leg.angle, -3);
    EXPECT_NEAR(std::get<Point>(leg.through).x, 164.63835, 1e-5);
    EXPECT_EQ(std::get<Point>(leg.through).y, 305.65);
    const Solved solved = solve(frame.project);
    EXPECT_NEAR(solved.cutouts.at(0).work.bounds.high.y, 300, kExact);
}

// Expected from: the way a maker keeps it: off the middle a centre line is struck, a mark, and mirrored about.
TEST(FromLegs, OffThePanelsMiddleACentreLineIsMirroredAbout) {
    WantedLegs legs = benchLegs();
    legs.across = 240;
    const LaidWish frame = laid(benchProject(), legs);
    const LayoutLine* centre = findLine(frame.project, "C");
    ASSERT_TRUE(centre);
    EXPECT_FALSE(centre->cut);
    EXPECT_EQ(centre->place, (Place(ByOffset{Edge::Left, 240})));
    EXPECT_EQ(frame.lines, (std::vector<LineId>{"A", "B", "D"}));
    EXPECT_EQ(findLine(frame.project, "D")->place, (Place(ByMirror{"B", LineId("C")})));
    const Outline drawn = solve(frame.project).cutouts.at(0).drawn;
    EXPECT_NEAR(drawn.bounds.low.x + drawn.bounds.high.x, 480, 1e-6);
}

// Expected from: pencil. A radius of 20 wants bores of 20 in both corners under the rail, none at the open side.
TEST(FromLegs, ARounderInnerRadiusIsBoredUnderTheRailAlone) {
    WantedLegs legs = benchLegs();
    legs.cornerRadius = 20;
    const LaidWish frame = laid(benchProject(), legs);
    EXPECT_NEAR(frame.boreRadius.value_or(0), 20, kExact);
    EXPECT_EQ(frame.project.cutouts.at(0).corners.size(), 2u);
}

// Expected from: pencil, at the panel's bottom edge: the opening is 2 (80 + 300 tan 3) = 191.4447 wide and 300 high, and
// wants 25 on three sides, so 241.5 by 325.0 is good; with 10 at the least 310 of height will do.
TEST(FromLegs, TheSmallestGoodBlankCountsTheOpenSideAsNone) {
    Project project = benchProject();
    project.panel.height = 309.9;
    expectRefused(project, benchLegs(), NoWish::PanelTooSmall, WishPart::Height, "325.0 mm");
    project.panel.height = 310;
    EXPECT_TRUE(layLegs(project, benchLegs()).has_value());
}

// Expected from: pencil. Bearing and bit of 12.7 want (12.7 + 12.7) / 2, up to 20; a bush of 32 with a bit of 16 24, so 30.
TEST(FromLegs, TheFeetStandClearOfThePanelsEdge) {
    Project project = benchProject();
    EXPECT_EQ(footAbove(project), 20);
    project.use.byBush = true;
    project.use.bush = 32;
    project.use.bit = 16;
    EXPECT_EQ(footAbove(project), 30);
}

// Expected from: pencil. 340 / 2 = 170 is all two legs have; 2 x 6.35 between them for the bit's arcs.
TEST(FromLegs, LegsThatMeetAreRefused) {
    expectRefused(benchProject(), {340, 280, 170, 80, 0, 6.35, {}, {}}, NoWish::NoShape, WishPart::LegTop, "170.0 mm");
    expectRefused(benchProject(), {340, 280, 90, 171, 0, 6.35, {}, {}}, NoWish::NoShape, WishPart::LegFoot, "170.0 mm");
    expectRefused(benchProject(), {340, 280, 165, 165, 0, 6.35, {}, {}}, NoWish::TooNarrow, WishPart::LegTop, "The rail's side is 10.0 mm");
    expectRefused(benchProject(), {340, 0, 90, 80, 0, 6.35, {}, {}}, NoWish::NoShape, WishPart::Height, "above the feet");
    expectRefused(benchProject(), {340, 280, 90, -1, 0, 6.35, {}, {}}, NoWish::NoShape, WishPart::LegFoot, "taper less");
}

// Expected from: pencil. Inner sides 80 from the middle at the rail and 12 at the feet, 280 lower, are 2 (80 - 68 / 280 x
// 300) = 14.2857 apart on the panel's edge, 20 lower: the bearing of 12.7 comes out, one of 15 does not.
TEST(FromLegs, AMouthTooNarrowForTheBitIsRefused) {
    const WantedLegs legs{340, 280, 90, 158, 0, 7.5, {}, {}};
    EXPECT_TRUE(layLegs(benchProject(), legs).has_value());
    Project project = benchProject();
    test::setTools(project, 3.2, 15);
    expectRefused(project, legs, NoWish::TooNarrow, WishPart::LegTop, "opens by 14.29 mm");
}

TEST(FromLegs, ASharperInnerRadiusIsRefused) {
    WantedLegs legs = benchLegs();
    legs.cornerRadius = 3;
    expectRefused(benchProject(), legs, NoWish::CornerTooSharp, WishPart::Corner, "a bit of 6.0 mm");
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/from_wanted.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <numbers>
#include <sstream>

#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "core/shop/finding.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall {

void PrintTo(const Steering& steering, std::ostream* out) {
    *out << (steering.byBush ? "bush " : "bearing ") << steering.guide << ", bit " << steering.cutter;
}

namespace {

constexpr double kExact = 1e-9;  // mm

Project bushProject(double width = 400, double height = 250) {
    Project project = test::panelOf(width, height);
    project.use.byBush = true;
    project.use.bush = 24;
    project.use.bit = 12.7;
    return project;
}

const WantedWindow kHold{110, 35, 6.35, std::nullopt, std::nullopt};

LaidWish laid(const Project& project, const WantedWindow& wish) {
    const auto window = layWindow(project, wish);
    EXPECT_TRUE(window.has_value()) << window.error().sentence;
    return window.value_or(LaidWish{});
}

double distanceOf(const Project& project, const LineId& id) {
    const LayoutLine* line = findLine(project, id);
    const auto* place = line ? std::get_if<ByOffset>(&line->place) : nullptr;
    EXPECT_TRUE(place) << id;
    return place ? place->distance : 0;
}

Edge edgeOf(const Project& project, const LineId& id) {
    return std::get<Edge>(std::get<ByOffset>(findLine(project, id)->place).from);
}

bool hasFinding(const Project& project, std::string_view code) {
    const Solved solved = solve(project);
    return std::ranges::any_of(findings(project, solved), [&](const Finding& finding) { return finding.code == code; });
}

void expectRefused(const Project& project, const WantedWindow& wish, NoWish why, WishPart part,
                   const std::string& words) {
    const auto window = layWindow(project, wish);
    ASSERT_FALSE(window.has_value()) << words;
    EXPECT_EQ(window.error().why, why) << window.error().sentence;
    EXPECT_EQ(window.error().part, part) << window.error().sentence;
    EXPECT_NE(window.error().sentence.find(words), std::string::npos) << window.error().sentence;
    EXPECT_EQ(window.error().sentence.back(), '.');
}

// Expected from: pencil, as in the sample's notes. (24 - 12.7) / 2 = 5.65; 125 -+ (17.5 + 5.65) = 101.85 and
// 148.15; 200 -+ (55 + 5.65) = 139.35 and 260.65.
TEST(FromWanted, TheCrateEndsLinesComeOutOfItsSize) {
    const LaidWish window = laid(bushProject(), kHold);
    EXPECT_EQ(window.lines, (std::vector<LineId>{"A", "B", "C", "D"}));
    EXPECT_NEAR(distanceOf(window.project, "A"), 101.85, kExact);
    EXPECT_NEAR(distanceOf(window.project, "B"), 148.15, kExact);
    EXPECT_NEAR(distanceOf(window.project, "C"), 139.35, kExact);
    EXPECT_NEAR(distanceOf(window.project, "D"), 260.65, kExact);
    EXPECT_FALSE(window.boreRadius);
    EXPECT_NEAR(window.opening.width, 121.3, kExact);
    EXPECT_NEAR(window.goodBlank.height, 96.3, kExact);
}

// Expected from: the sample, laid out by hand.
TEST(FromWanted, TheCrateEndIsTheSampleFieldByField) {
    std::ifstream file(KERFWALL_SAMPLES "/crate_end.kerfwall");
    std::stringstream text;
    text << file.rdbuf();
    const auto sample = readProject(text.str());
    ASSERT_TRUE(sample.has_value());
    const Project made = laid(bushProject(), kHold).project;
    EXPECT_EQ(made.lines, sample->lines);
    ASSERT_EQ(made.cutouts.size(), 1u);
    EXPECT_EQ(made.cutouts[0].seeds, sample->cutouts[0].seeds);
    EXPECT_EQ(made.cutouts[0].wanted, sample->cutouts[0].wanted);
    EXPECT_EQ(made.cutouts[0].corners, sample->cutouts[0].corners);
}

// Expected from: the wish. 110 x 35 in the middle of 400 x 250, its area less (4 - pi) r^2 for the corners.
TEST(FromWanted, TheWorkGetsTheSizeWanted) {
    const Project made = laid(bushProject(), kHold).project;
    const Outline work = solve(made).cutouts.at(0).work;
    EXPECT_NEAR(work.bounds.low.x, 145, kExact);
    EXPECT_NEAR(work.bounds.low.y, 107.5, kExact);
    EXPECT_NEAR(work.bounds.high.x, 255, kExact);
    EXPECT_NEAR(work.bounds.high.y, 142.5, kExact);
    EXPECT_NEAR(work.area, 110 * 35 - (4 - std::numbers::pi) * 6.35 * 6.35, 1e-6);
    EXPECT_FALSE(hasFinding(made, "work-size"));
    EXPECT_FALSE(hasFinding(made, "bush-corner"));
}

// Expected from: pencil. A corner of 10 in the work wants 10 + 5.65 = 15.65 in the template, more than the trimming
// bit's 6.35 and the bush's 12, so it is bored.
TEST(FromWanted, ARounderCornerIsBored) {
    const LaidWish window = laid(bushProject(), {110, 35, 10, {}, {}});
    ASSERT_TRUE(window.boreRadius.has_value());
    EXPECT_NEAR(*window.boreRadius, 15.65, kExact);
    ASSERT_EQ(window.project.cutouts[0].corners.size(), 4u);
    const Outline work = solve(window.project).cutouts.at(0).work;
    EXPECT_NEAR(work.area, 110 * 35 - (4 - std::numbers::pi) * 100, 1e-6);
    int rounds = 0;
    for (const OutlinePiece& piece : work.loops.at(0)) {
        if (!piece.isArc) continue;
        EXPECT_NEAR(piece.radius, 10, kExact);
        ++rounds;
    }
    EXPECT_EQ(rounds, 4);
    EXPECT_FALSE(hasFinding(window.project, "work-size"));
    EXPECT_FALSE(hasFinding(window.project, "bush-corner"));
}

// Expected from: kSameRadius, 0.05: a bore for less is set by nobody.
TEST(FromWanted, ACornerNobodyTellsApartIsLeftToTheBit) {
    EXPECT_FALSE(laid(bushProject(), {110, 35, 6.39, {}, {}}).boreRadius);
    EXPECT_TRUE(laid(bushProject(), {110, 35, 6.41, {}, {}}).boreRadius);
    EXPECT_FALSE(laid(bushProject(), {110, 35, 6.31, {}, {}}).boreRadius);
}

// Expected from: pencil. Two corners of 17.5 are a half round; their bores of 17.5 + 5.65 are one hole as wide as the
// opening, and the ends take pi 17.5^2 in place of 35^2.
TEST(FromWanted, RoundEndsAreHadToo) {
    const LaidWish window = laid(bushProject(), {110, 35, 17.5, {}, {}});
    const Outline work = solve(window.project).cutouts.at(0).work;
    EXPECT_NEAR(work.area, 110 * 35 - (4 - std::numbers::pi) * 17.5 * 17.5, 1e-6);
}

// Expected from: pencil. By a bearing of the bit's own size the walls stand on the edges.
TEST(FromWanted, ByABearingTheWallsStandOnTheEdges) {
    const Project made = laid(test::panelOf(400, 250), {100, 60, 6.35, 120, 90}).project;
    EXPECT_NEAR(distanceOf(made, "A"), 60, kExact);
    EXPECT_NEAR(distanceOf(made, "B"), 120, kExact);
    EXPECT_NEAR(distanceOf(made, "C"), 70, kExact);
    EXPECT_NEAR(distanceOf(made, "D"), 170, kExact);
}

// Expected from: pencil. From the top edge the walls lie 250 - 101.85 and 250 - 148.15 off; the true corner at its start
// is the right one, for edges run anticlockwise: 400 - 139.35 = 260.65.
TEST(FromWanted, DistancesCountFromTheTrueEdges) {
    Project project = bushProject();
    project.panel.referenceEdge = Edge::Top;
    project.panel.squareCorner = SquareCorner::Start;
    const Project made = laid(project, kHold).project;
    EXPECT_EQ(edgeOf(made, "A"), Edge::Top);
    EXPECT_EQ(edgeOf(made, "C"), Edge::Right);
    EXPECT_NEAR(distanceOf(made, "A"), 148.15, kExact);
    EXPECT_NEAR(distanceOf(made, "B"), 101.85, kExact);
    EXPECT_NEAR(distanceOf(made, "C"), 260.65, kExact);
    const Outline work = solve(made).cutouts.at(0).work;
    EXPECT_NEAR(work.bounds.low.x, 145, kExact);
    EXPECT_NEAR(work.bounds.high.y, 142.5, kExact);
}

// Expected from: pencil. The bush's bit alone clears 12.7.
TEST(FromWanted, AWindowNoWiderThanTheBitIsRefused) {
    expectRefused(bushProject(), {110, 12.7, 6.35, {}, {}}, NoWish::TooNarrow, WishPart::Height, "12.7 mm");
    expectRefused(bushProject(), {10, 35, 6.35, {}, {}}, NoWish::TooNarrow, WishPart::Width, "bush");
}

// Expected from: pencil. With a bearing of 6 and a bit of 6 the trimming bit of 12.7 is what needs the room.
TEST(FromWanted, AWindowTooNarrowForTheTrimmingBitIsRefused) {
    Project project = test::panelOf(400, 250);
    project.use.bit = 6;
    expectRefused(project, {110, 12, 6.35, {}, {}}, NoWish::TooNarrow, WishPart::Height, "the trimming bit");
    EXPECT_TRUE(layWindow(project, {110, 13, 6.35, {}, {}}).has_value());
}

// Expected from: pencil. The bit leaves its 6.35; 4 wants one of 8 across.
TEST(FromWanted, ACornerSharperThanTheBitIsRefused) {
    expectRefused(bushProject(), {110, 35, 4, {}, {}}, NoWish::CornerTooSharp, WishPart::Corner, "6.35 mm");
    expectRefused(bushProject(), {110, 35, 4, {}, {}}, NoWish::CornerTooSharp, WishPart::Corner, "a bit of 8.0 mm");
    expectRefused(bushProject(), {110, 35, 0, {}, {}}, NoWish::CornerTooSharp, WishPart::Corner, "by hand");
}

// Expected from: pencil. The bearing of 6 follows a trimmed corner of 6.35: 3 + 6.35 - 3 = 6.35 is left.
TEST(FromWanted, ACornerSharperThanTheTrimmedOneIsRefused) {
    Project project = test::panelOf(400, 250);
    project.use.bit = 6;
    expectRefused(project, {110, 35, 4, {}, {}}, NoWish::CornerTooSharp, WishPart::Corner, "a trimming bit of 8.0 mm");
}

TEST(FromWanted, CornersLargerThanHalfTheShorterSideAreRefused) {
    expectRefused(bushProject(), {110, 35, 18, {}, {}}, NoWish::CornerTooRound, WishPart::Corner, "17.5 mm");
}

// Expected from: pencil, with 25 and 10 as good and least border. The opening is 121.3 x 46.3: it wants 66.3 of height
// at the least, and the good blank is 171.3 x 96.3.
TEST(FromWanted, AnUnfitPanelNamesTheSmallestGoodBlank) {
    expectRefused(bushProject(400, 66.2), kHold, NoWish::PanelTooSmall, WishPart::Height, "171.3 mm by 96.3 mm");
    expectRefused(bushProject(141.2, 250), kHold, NoWish::PanelTooSmall, WishPart::Width, "171.3 mm by 96.3 mm");
    EXPECT_TRUE(layWindow(bushProject(400, 66.3), kHold).has_value());
    EXPECT_FALSE(hasFinding(laid(bushProject(171.3, 96.3), kHold).project, "border-thin"));
    EXPECT_TRUE(hasFinding(laid(bushProject(171.3, 96.1), kHold).project, "border-thin"));
}

// Expected from: pencil. 10 + 121.3 / 2 = 70.65 from the left at the least, 250 - 33.15 = 216.85 from the bottom at most.
TEST(FromWanted, APlaceTooNearAnEdgeIsRefused) {
    expectRefused(bushProject(), {110, 35, 6.35, 70, {}}, NoWish::TooNearEdge, WishPart::Across, "70.7 mm to 329.3 mm");
    expectRefused(bushProject(), {110, 35, 6.35, {}, 217}, NoWish::TooNearEdge, WishPart::Up, "216.8");
    EXPECT_TRUE(layWindow(bushProject(), {110, 35, 6.35, 70.65, 216.85}).has_value());
}

// Expected from: pencil. Walls of the first lie at 101.85 and 148.15 (level), 39.35 and 160.65; beside it on the same
// height lie the second's, on the same level lines.
TEST(FromWanted, WindowsInARowShareTheirLines) {
    const LaidWish first = laid(bushProject(), {110, 35, 6.35, 100, {}});
    const LaidWish second = laid(first.project, {110, 35, 6.35, 290, {}});
    EXPECT_EQ(second.lines, (std::vector<LineId>{"A", "B", "E", "F"}));
    EXPECT_EQ(second.project.lines.size(), 6u);
    EXPECT_EQ(second.cutout, "window2");
    const Solved solved = solve(second.project);
    ASSERT_EQ(solved.cutouts.size(), 2u);
    EXPECT_NEAR(solved.cutouts[0].work.bounds.low.x, 45, kExact);
    EXPECT_NEAR(solved.cutouts[1].work.bounds.high.x, 345, kExact);
    EXPECT_FALSE(hasFinding(second.project, "work-size"));
}

// Expected from: pencil. Walls of the second at 201.85 - 90 = 111.85 and 158.15 lie within the first's 101.85 to 148.15.
TEST(FromWanted, LinesThroughAnotherWindowAreRefused) {
    const Project first = laid(bushProject(), {110, 35, 6.35, 100, {}}).project;
    expectRefused(first, {110, 35, 6.35, 290, 135}, NoWish::RunsThrough, WishPart::Across, "Line B");
    expectRefused(first, {110, 20, 6.35, 290, {}}, NoWish::RunsThrough, WishPart::Up, "cutout window");
    expectRefused(first, {110, 35, 6.35, 100, {}}, NoWish::RunsThrough, WishPart::Across, "lie in cutout window");
}

// Expected from: pencil. The second's bottom wall would lie at 171.3 - 23.15 = 148.15, on B, its kerf above; B's own
// lies below.
TEST(FromWanted, AWallWithKerfsOnBothSidesIsRefused) {
    const Project first = laid(bushProject(), {110, 35, 6.35, 100, {}}).project;
    expectRefused(first, {110, 35, 6.35, 290, 171.3}, NoWish::RunsThrough, WishPart::Up, "on the other side");
}

TEST(FromWanted, IdsGivenBeforeAreNotGivenAgain) {
    EXPECT_EQ(layWindow(bushProject(), kHold, 2)->lines, (std::vector<LineId>{"C", "D", "E", "F"}));
}

Project withBench(std::vector<double> bushes, std::vector<double> bits) {
    Project project = bushProject();
    project.bench = stockBench();
    project.bench->bushes = std::move(bushes);
    project.bench->bits = std::move(bits);
    return project;
}

// Expected from: pencil. Corners of 10 want bores with bit 12.7; a bit of 20 leaves them by itself, in a bush of 24
// (30 is larger than need be, and 22 leaves 2 of room, less than 3).
TEST(OtherSteering, OffersABitThatNeedsNoBores) {
    const WantedWindow wish{110, 35, 10, {}, {}};
    const Project project = withBench({22, 30, 24}, {20, 12.7});
    const auto other = otherSteering(project, wish);
    EXPECT_EQ(other, (Steering{true, 24, 20}));
    ASSERT_TRUE(other);
    EXPECT_FALSE(laid(steeredBy(project, *other), wish).boreRadius);
}

// Expected from: pencil. A corner of 4 wants a bit of 8 at most; of 6 and 8, the thicker.
TEST(OtherSteering, OffersWhatCutsASharperCorner) {
    const WantedWindow wish{110, 35, 4, {}, {}};
    EXPECT_EQ(otherSteering(withBench({17, 24}, {6, 8, 12}), wish), (Steering{true, 17, 8}));
}

TEST(OtherSteering, OffersNothingThatIsNotOnTheBench) {
    EXPECT_EQ(otherSteering(withBench({}, {8}), WantedWindow{110, 35, 4, {}, {}}), std::nullopt);
    EXPECT_EQ(otherSteering(withBench({24}, {12}), WantedWindow{110, 35, 4, {}, {}}), std::nullopt);
    EXPECT_EQ(otherSteering(withBench({24}, {8}), kHold), std::nullopt);
}

TEST(OtherSteering, LeavesAPanelWithAnotherCutoutAlone) {
    Project project = laid(withBench({24}, {8}), {110, 35, 6.35, 100, {}}).project;
    EXPECT_EQ(otherSteering(project, WantedWindow{110, 35, 4, 290, {}}), std::nullopt);
}

}  // namespace
}  // namespace kerfwall

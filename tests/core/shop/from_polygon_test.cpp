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

/// The line's first kerf as it is solved.
Kerf kerfOf(const Project& project, const LineId& line) {
    const Solved solved = solve(project);
    return findLine(solved, line)->kerfs.at(0);
}

constexpr double kExact = 1e-9;  // mm

const std::vector<Point> kPennant{{110, 90}, {370, 90}, {330, 150}, {370, 210}, {110, 210}};

Project board() { return test::panelOf(500, 300); }

Project pennantSample() {
    std::ifstream file(KERFWALL_SAMPLES "/stall_pennant.kerfwall");
    std::stringstream text;
    text << file.rdbuf();
    return readProject(text.str()).value();
}

LaidWish laid(const Project& project, const WantedPolygon& wish) {
    const auto polygon = layPolygon(project, wish);
    EXPECT_TRUE(polygon.has_value()) << polygon.error().sentence;
    return polygon.value_or(LaidWish{});
}

void expectRefused(const Project& project, const WantedPolygon& wish, NoWish why, const std::string& words) {
    const auto polygon = layPolygon(project, wish);
    ASSERT_FALSE(polygon.has_value()) << words;
    EXPECT_EQ(polygon.error().why, why) << polygon.error().sentence;
    EXPECT_NE(polygon.error().sentence.find(words), std::string::npos) << polygon.error().sentence;
    EXPECT_EQ(polygon.error().sentence.back(), '.');
}

// Expected from: the sample, laid out by hand: B 90 up, T 210 up, L 110 in, N1 through two points, N2 its mirror image
// about the panel's level centre.
TEST(FromPolygon, ThePennantIsTheSampleLineByLine) {
    const LaidWish pennant = laid(board(), {kPennant, 6.35, {}, {}});
    const Project sample = pennantSample();
    ASSERT_EQ(pennant.lines, (std::vector<LineId>{"A", "B", "C", "D", "E"}));
    EXPECT_EQ(findLine(pennant.project, "A")->place, findLine(sample, "B")->place);
    EXPECT_EQ(findLine(pennant.project, "B")->place, findLine(sample, "T")->place);
    EXPECT_EQ(findLine(pennant.project, "C")->place, findLine(sample, "L")->place);
    EXPECT_EQ(findLine(pennant.project, "D")->place, findLine(sample, "N1")->place);
    EXPECT_EQ(findLine(pennant.project, "E")->place, (Place(ByMirror{"D", Centre::Level})));
    EXPECT_EQ(pennant.project.cutouts.at(0).wanted, sample.cutouts.at(0).wanted);
    EXPECT_EQ(pennant.project.cutouts.at(0).seeds.size(), 3u);
}

// Expected from: the sample: the same faces are joined, 260 x 120 less the tail's 40 x 120 / 2.
TEST(FromPolygon, ThePennantsFacesAreJoined) {
    const Solved made = solve(laid(board(), {kPennant, 6.35, {}, {}}).project);
    EXPECT_NEAR(made.cutouts.at(0).drawnArea, 260 * 120 - 40 * 120 / 2.0, 1e-6);
    EXPECT_EQ(made.cutouts.at(0).faces.size(), 3u);
    EXPECT_NEAR(made.cutouts.at(0).work.area, solve(pennantSample()).cutouts.at(0).work.area, 1e-6);
}

// Expected from: the sample's notes: run on, the tail's kerfs would nick the long edges; stopped they do not.
TEST(FromPolygon, ThePennantsTailIsStopped) {
    const Project made = laid(board(), {kPennant, 6.35, {}, {}}).project;
    EXPECT_TRUE(kerfOf(made, "D").stopped);
    EXPECT_TRUE(kerfOf(made, "E").stopped);
    EXPECT_FALSE(kerfOf(made, "A").stopped);
    for (const Finding& finding : findings(made, solve(made))) EXPECT_EQ(finding.severity, Severity::Note) << finding.text;
}

// Expected from: pencil. Without a saw that can stop nothing is gained.
TEST(FromPolygon, WithoutASawThatCanStopKerfsRunOn) {
    Project project = board();
    project.bench = stockBench();
    std::erase_if(project.bench->saws, [](const Saw& saw) { return saw.kind == SawKind::GuideRail; });
    EXPECT_FALSE(kerfOf(laid(project, {kPennant, 6.35, {}, {}}).project, "D").stopped);
}

// Expected from: the law that the way round says nothing of the shape.
TEST(FromPolygon, TheOtherWayRoundIsTheSameOpening) {
    std::vector<Point> corners = kPennant;
    std::ranges::reverse(corners);
    const Solved made = solve(laid(board(), {corners, 6.35, {}, {}}).project);
    EXPECT_NEAR(made.cutouts.at(0).drawnArea, 260 * 120 - 40 * 120 / 2.0, 1e-6);
    EXPECT_NEAR(made.cutouts.at(0).work.area, solve(pennantSample()).cutouts.at(0).work.area, 1e-6);
}

// Expected from: pencil. A corner in line with its neighbours, and one given twice, are no corners.
TEST(FromPolygon, CornersInLineAreLeftOut) {
    const LaidWish made = laid(board(), {{{100, 100}, {150, 100}, {200, 100}, {200, 100}, {200, 180}, {100, 180}}, 6.35, {}, {}});
    EXPECT_EQ(made.project.lines.size(), 4u);
    EXPECT_EQ(made.project.cutouts.at(0).wanted->outline.size(), 4u);
}

// Expected from: pencil. A house: roof sides at 45 degrees lie by that angle, and by a bush (24, 12.7) their walls lie
// 5.65 out. Lower left corner (100, 80), eaves at 180, ridge (200, 280).
TEST(FromPolygon, SidesAtHalfDegreesLieByTheirAngle) {
    Project project = test::panelOf(400, 400);
    project.use.byBush = true;
    project.use.bush = 24;
    project.use.bit = 12.7;
    const LaidWish made = laid(project, {{{90, 80}, {290, 80}, {290, 180}, {190, 280}, {90, 180}}, 6.35, {}, {}});
    const auto& right = std::get<ByAngle>(findLine(made.project, "D")->place);
    EXPECT_EQ(std::abs(right.angle), 45);
    const auto& left = std::get<ByAngle>(findLine(made.project, "E")->place);
    EXPECT_EQ(std::abs(left.angle), 45);
    EXPECT_NE(right.angle, left.angle);
    const Solved solved = solve(made.project);
    EXPECT_NEAR(solved.cutouts.at(0).work.bounds.low.y, 80, kExact);
    // The ridge has 90 degrees: its arc's top lies 6.35 (sqrt 2 - 1) under it.
    EXPECT_NEAR(solved.cutouts.at(0).work.bounds.high.y, 280 - 6.35 * (std::numbers::sqrt2 - 1), 1e-6);
    // Each roof side's two corners: 6.35 (1 - tan 22.5) cut ... of the area: the whole less its five corners.
    const auto corner = [](double degrees) {
        const double half = degrees / 2 * std::numbers::pi / 180;
        return 6.35 * 6.35 * (1 / std::tan(half) - (std::numbers::pi / 2 - half));
    };
    EXPECT_NEAR(solved.cutouts.at(0).work.area, 200 * 100 + 200 * 100 / 2.0 - 3 * corner(90) - 2 * corner(135), 1e-5);
}

// Expected from: pencil. The pennant's bounds are 260 x 120; its middle put to (240, 150) leaves it, to (250, 160) moves it.
TEST(FromPolygon, ItsMiddleCanBePlaced) {
    const auto low = [](const LaidWish& made) { return solve(made.project).cutouts.at(0).drawn.bounds.low; };
    EXPECT_NEAR(low(laid(board(), {kPennant, 6.35, 240, 150})).x, 110, kExact);
    EXPECT_NEAR(low(laid(board(), {kPennant, 6.35, 250, 160})).x, 120, kExact);
    EXPECT_NEAR(low(laid(board(), {kPennant, 6.35, 250, 160})).y, 100, kExact);
}

// Expected from: pencil. Steps of a comb share one level line; its teeth's waste lies on one side.
TEST(FromPolygon, SidesInLineShareALine) {
    const std::vector<Point> comb{{100, 100}, {300, 100}, {300, 200}, {250, 200}, {250, 150}, {150, 150}, {150, 200}, {100, 200}};
    const LaidWish made = laid(board(), {comb, 6.35, {}, {}});
    EXPECT_EQ(made.project.lines.size(), 7u);
    EXPECT_NEAR(solve(made.project).cutouts.at(0).drawnArea, 200 * 100 - 100 * 50, 1e-6);
}

// Expected from: pencil. Corners of 15 with a bit of 12.7 are bored, but for the inward one.
TEST(FromPolygon, InwardCornersAreNotBored) {
    const LaidWish made = laid(board(), {{{100, 100}, {300, 100}, {300, 150}, {200, 150}, {200, 220}, {100, 220}}, 15, {}, {}});
    EXPECT_EQ(made.project.cutouts.at(0).corners.size(), 5u);
    EXPECT_EQ(solve(made.project).troubles.size(), 0u);
}

// Expected from: pencil. A regular polygon of 40 sides about a round of 80: its area is n r^2 sin(360 / n) / 2.
TEST(FromPolygon, AManySidedOneIsLaid) {
    const int n = 40;
    std::vector<Point> corners;
    for (int i = 0; i < n; ++i) {
        const double turn = 2 * std::numbers::pi * (i + 0.3) / n;
        corners.push_back({250 + 80 * std::cos(turn), 150 + 80 * std::sin(turn)});
    }
    const LaidWish made = laid(board(), {corners, 6.35, {}, {}});
    EXPECT_EQ(made.lines.size(), 40u);
    EXPECT_NEAR(solve(made.project).cutouts.at(0).drawnArea, n * 80 * 80 * std::sin(2 * std::numbers::pi / n) / 2, 1e-5);
}

// Expected from: pencil. A star of ten points, 120 and 90 from its middle: twenty triangles of r R sin(18) / 2.
TEST(FromPolygon, AStarIsJoinedOfItsFaces) {
    std::vector<Point> corners;
    for (int i = 0; i < 20; ++i) {
        const double turn = std::numbers::pi * (i + 0.1) / 10;
        const double from = i % 2 == 0 ? 120 : 90;
        corners.push_back({250 + from * std::cos(turn), 150 + from * std::sin(turn)});
    }
    const LaidWish made = laid(board(), {corners, 6.35, {}, {}});
    EXPECT_NEAR(solve(made.project).cutouts.at(0).drawnArea, 10 * 120 * 90 * std::sin(std::numbers::pi / 10), 1e-5);
}

TEST(FromPolygon, NoShapeIsRefused) {
    expectRefused(board(), {{{100, 100}, {200, 100}}, 6.35, {}, {}}, NoWish::NoShape, "here are 2");
    expectRefused(board(), {{{100, 100}, {200, 100}, {300, 100}}, 6.35, {}, {}}, NoWish::NoShape, "3 corners");
    expectRefused(board(), {{{100, 100}, {200, 200}, {200, 100}, {100, 200}}, 6.35, {}, {}}, NoWish::NoShape,
                  "the side from corner 1 to 2 meets the side from corner 3 to 4");
    expectRefused(board(), {{{100, 100}, {200, 100}, {150, 100}, {150, 200}}, 6.35, {}, {}}, NoWish::NoShape, "corner");
}

// Expected from: pencil. A waist of 10 between two tips: the bearing of 12.7 cannot pass. At 14 it can.
TEST(FromPolygon, AWaistTooNarrowIsRefused) {
    const auto waisted = [](double waist) {
        return std::vector<Point>{{100, 100}, {200, 150 - waist / 2}, {300, 100}, {300, 200}, {200, 150 + waist / 2}, {100, 200}};
    };
    expectRefused(board(), {waisted(10), 6.35, {}, {}}, NoWish::TooNarrow, "opens by 10.0 mm");
    expectRefused(board(), {waisted(10), 6.35, {}, {}}, NoWish::TooNarrow, "12.7 mm");
    EXPECT_TRUE(layPolygon(board(), {waisted(14), 6.35, {}, {}}).has_value());
}

// Expected from: pencil. A tip of wood 8 wide between two inward corners; by a bush its walls stand 5.65 in on either
// side, so it must be more than 11.3.
TEST(FromPolygon, ATipTooThinForTheBushIsRefused) {
    Project project = board();
    project.use.byBush = true;
    project.use.bush = 24;
    project.use.bit = 12.7;
    const auto tipped = [](double tip) {
        return std::vector<Point>{{100, 100}, {300, 100}, {300, 200}, {200 + tip / 2, 200}, {200 + tip / 2, 150}, {200 - tip / 2, 150}, {200 - tip / 2, 200}, {100, 200}};
    };
    expectRefused(project, {tipped(8), 6.35, {}, {}}, NoWish::TooNarrow, "11.3 mm");
    expectRefused(project, {tipped(8), 6.35, {}, {}}, NoWish::TooNarrow, "The side from corner 5 to 6 is 8.0 mm");
}

// Expected from: pencil. An end of 8 between 90 and 135 degrees wants more than 6.35 (1 + tan 22.5) = 8.98 for the arcs.
TEST(FromPolygon, ASideTooShortForItsArcsIsRefused) {
    expectRefused(board(), {{{100, 100}, {200, 100}, {200, 108}, {148, 160}, {100, 160}}, 6.35, {}, {}}, NoWish::TooNarrow, "8.98 mm");
    expectRefused(board(), {{{100, 100}, {200, 100}, {200, 140}, {100, 140}}, 21, {}, {}}, NoWish::CornerTooRound, "20.0 mm at most");
}

// Expected from: pencil. On one line with the waste on either side, a kerf of 3.2 that runs through takes the other wall;
// a saw that can stop leaves it.
TEST(FromPolygon, WasteOnBothSidesOfALineIsRefusedWhereNoSawCanStop) {
    const std::vector<Point> zed{{100, 100}, {200, 100}, {200, 150}, {300, 150}, {300, 200}, {180, 200}, {180, 150}, {100, 150}};
    Project project = board();
    EXPECT_TRUE(kerfOf(laid(project, {zed, 6.35, {}, {}}).project, "B").stopped);
    project.bench = stockBench();
    std::erase_if(project.bench->saws, [](const Saw& saw) { return saw.kind == SawKind::GuideRail; });
    expectRefused(project, {zed, 6.35, {}, {}}, NoWish::TooNarrow, "line B with the waste on either side");
    expectRefused(project, {zed, 6.35, {}, {}}, NoWish::TooNarrow, "more than 3.2 mm");
}

TEST(FromPolygon, AnUnfitPanelIsNamedItsSmallestGoodBlank) {
    expectRefused(test::panelOf(250, 300), {kPennant, 6.35, {}, {}}, NoWish::PanelTooSmall, "310.0 mm by 170.0 mm");
    expectRefused(test::panelOf(300, 300), {kPennant, 6.35, {}, {}}, NoWish::TooNearEdge, "");
}

// Expected from: pencil. The wedge's upper side climbs 1 in 15 to the left, into the pennant: 160 + 120 / 15 = 168 at
// x = 330. A box on the same level lines runs through nothing, nor do the pennant's lines through it.
TEST(FromPolygon, LinesThroughAnotherCutoutAreRefused) {
    const Project first = laid(test::panelOf(900, 300), {kPennant, 6.35, {}, {}}).project;
    expectRefused(first, {{{450, 140}, {600, 150}, {450, 160}}, 6.35, {}, {}}, NoWish::RunsThrough, "cutout opening");
    expectRefused(first, {{{395, 10}, {600, 10}, {600, 60}, {395, 60}}, 6.35, {}, {}}, NoWish::RunsThrough, "Line D would run through");
    const LaidWish beside = laid(first, {{{500, 90}, {700, 90}, {700, 210}, {500, 210}}, 6.35, {}, {}});
    EXPECT_EQ(beside.project.lines.size(), 7u);
    EXPECT_EQ(beside.cutout, "opening2");
}

}  // namespace
}  // namespace kerfwall

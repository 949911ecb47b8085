// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/work_opening.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/geometry/solve.h"
#include "core/shop/finding.h"
#include "tests/core/geometry/law_layouts.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall::test {
namespace {

constexpr double kPi = std::numbers::pi;

void useBush(Project& project, double bush, double cutter, bool inKerfs) {
    project.use.byBush = true;
    project.use.bush = bush;
    project.use.bit = cutter;
    project.use.inKerfs = inKerfs;
}

/// What a chord cuts off a circle, mm².
double slice(double radius, double chord) {
    const double half = std::asin(chord / 2 / radius);
    return radius * radius * (half - std::sin(half) * std::cos(half));
}

bool isToldNarrow(const Project& project, const Solved& solved) {
    return std::ranges::any_of(findings(project, solved),
                               [](const Finding& told) { return told.code == "narrow"; });
}

/// What a guide of radius R leaves of a square corner (walls x = 0 and y = 0) in the band of kerfs `kerf`
/// wide, where a round of radius r about (r, r) was left: a stump stands between both kerfs and the round,
/// one of its points P at x = kerf. The guide runs down the wall until it meets P, its centre then R in and
/// sqrt(R² - (R - kerf)²) above it, level with its touch T on the wall; pivots on P; follows the round. Twice
/// the polygon of the corner, T, P and the middle of the round, less the slices beyond both chords.
double leftAtCorner(double r, double kerf, double guide) {
    const Point point{kerf, r - std::sqrt(r * r - (r - kerf) * (r - kerf))};
    const Point touch{0, point.y + std::sqrt(guide * guide - (guide - kerf) * (guide - kerf))};
    const double on = r - r / std::numbers::sqrt2;
    const Point middle{on, on};
    const double polygon = (cross(middle, point) + cross(point, touch)) / 2;
    return 2 * (polygon - slice(guide, distance(touch, point)) - slice(r, distance(point, middle)));
}

// Expected from: pencil. Bit 12.7, kerfs of 1.5: less than 6.35 (1 - sin 45°), so the bit leaves stumps.
TEST(WorkOpening, InTheKerfsBandASmallBushMeetsTheStumpsTheBitLeft) {
    Project project = windowProject();
    setTools(project, 1.5, 12.7);
    useBush(project, 5, 5, true);
    const SolvedCutout window = solve(project).cutouts.at(0);
    EXPECT_TRUE(window.doubts.empty());
    EXPECT_NEAR(window.work.area, 10080 - 4 * leftAtCorner(6.35, 1.5, 2.5), 1e-7);
}

// Expected from: pencil. A corner bored to 20: both kerfs run on through its round in their band. A bush of
// 16, wider than the bit, meets what is left of it; the other corners it rounds itself.
TEST(WorkOpening, InTheKerfsBandAWideBushMeetsABoreCutByTheKerfs) {
    Project project = windowProject();
    project.cutouts[0].corners = {{"A", "C", 20, ""}};
    setTools(project, 3.2, 12.7);
    useBush(project, 16, 16, true);
    const SolvedCutout window = solve(project).cutouts.at(0);
    EXPECT_TRUE(window.doubts.empty());
    EXPECT_NEAR(window.work.area, 10080 - leftAtCorner(20, 3.2, 8) - 3 * (1 - kPi / 4) * 64, 1e-7);
}

// Expected from: pencil. A kerf of 3.2 opens the corner wholly; the bush keeps a round of its own.
TEST(WorkOpening, InTheBandOfAWideKerfTheBushRoundsTheCornerItself) {
    Project project = windowProject();
    setTools(project, 3.2, 12.7);
    useBush(project, 8, 8, true);
    EXPECT_NEAR(solve(project).cutouts.at(0).work.area, 10080 - (4 - kPi) * 16, 1e-7);
}

/// Two rooms of 99.5 x 100, x 100 to 199.5 and 200.5 to 300, and between them a gap of 10 in a wall 1 thick.
Project twoRooms() {
    Project project = panelOf(400, 300);
    project.lines = {offsetLine("A", Edge::Bottom, 100), offsetLine("B", Edge::Bottom, 200),
                     offsetLine("C", Edge::Left, 100),   offsetLine("D", Edge::Left, 300),
                     offsetLine("E", Edge::Left, 199.5), offsetLine("F", Edge::Left, 200.5),
                     offsetLine("G", Edge::Bottom, 145), offsetLine("H", Edge::Bottom, 155)};
    project.cutouts = {cutoutAt("rooms", {{200, 150}})};
    for (const double x : {150.0, 250.0}) {
        for (const double y : {120.0, 150.0, 180.0}) project.cutouts[0].seeds.push_back({x, y});
    }
    setTools(project, 1.5, 12);
    return project;
}

// Expected from: pencil. The bit of radius 6 stops against both lips of each side, sqrt(36 - 25) off; in the
// middle of the wall it has opened sqrt(36 - (0.5 + sqrt 11)²) = 4.6296 each way. A bush of radius 4 passes
// there by 0.6296 each way, and a cutter of radius 2 cuts 2.6296.
TEST(WorkOpening, ABushPassesANeckThatTheBitOnlyOpenedFromBothSides) {
    Project project = twoRooms();
    useBush(project, 8, 4, false);
    const Solved solved = solve(project);
    const SolvedCutout& rooms = solved.cutouts.at(0);
    EXPECT_TRUE(rooms.doubts.empty());
    EXPECT_EQ(rooms.parts, 2);
    EXPECT_TRUE(isToldNarrow(project, solved));
    EXPECT_EQ(rooms.work.loops.size(), 1u);
    const double waist = std::sqrt(36 - std::pow(0.5 + std::sqrt(11.0), 2)) - 2;
    EXPECT_TRUE(isInside(rooms.work, {200, 150 + waist - 1e-6}));
    EXPECT_FALSE(isInside(rooms.work, {200, 150 + waist + 1e-6}));
    EXPECT_TRUE(isInside(rooms.work, {200, 150 - waist + 1e-6}));
    EXPECT_FALSE(isInside(rooms.work, {200, 150 - waist - 1e-6}));
}

// Expected from: pencil. A wall 30 thick: the bit leaves the middle of the gap shut. Two openings, each a
// room with its corners rounded, the dip of 6 - sqrt(36 - 0.75²) where a kerf of 1.5 crosses a wall, and the
// bit's slice beyond the chord of 10 in the gap. Kerfs cross the walls of both rooms: G and H one, E or F two
// each.
TEST(WorkOpening, ANeckNarrowerThanTheBitLeavesTwoPartsAndBothCount) {
    Project project = twoRooms();
    project.lines[4] = offsetLine("E", Edge::Left, 185);
    project.lines[5] = offsetLine("F", Edge::Left, 215);
    const Solved solved = solve(project);
    const SolvedCutout& rooms = solved.cutouts.at(0);
    EXPECT_TRUE(rooms.doubts.empty());
    EXPECT_EQ(rooms.parts, 2);
    EXPECT_EQ(rooms.opening.loops.size(), 2u);
    EXPECT_TRUE(isToldNarrow(project, solved));
    const double each = 85 * 100 - (4 - kPi) * 36 + 2 * slice(6, 1.5) + slice(6, 10);
    EXPECT_NEAR(rooms.opening.area, 2 * each, 1e-7);
}

/// A room of 299 x 100 to x = 399, and a gap of 10 in the 1 left before the panel's right edge.
Project mouthProject() {
    Project project = panelOf(400, 300);
    project.lines = {offsetLine("A", Edge::Bottom, 100), offsetLine("B", Edge::Bottom, 200),
                     offsetLine("C", Edge::Left, 100),   offsetLine("D", Edge::Left, 399),
                     offsetLine("G", Edge::Bottom, 145), offsetLine("H", Edge::Bottom, 155)};
    project.cutouts = {cutoutAt("room", {{200, 120}, {200, 150}, {200, 180}, {399.5, 150}})};
    setTools(project, 1.5, 12);
    return project;
}

// Expected from: pencil. The bit of radius 6 cannot leave by a mouth of 10, but bulges through it: at the
// panel's edge it has opened sqrt(36 - (1 + sqrt 11)²) = 4.1673 each way. A bush of radius 4 leaves; its
// cutter of radius 2 keeps 2 off that lip.
TEST(WorkOpening, ABushLeavesByAMouthThatTheBitOnlyOpened) {
    Project project = mouthProject();
    useBush(project, 8, 4, false);
    const SolvedCutout room = solve(project).cutouts.at(0);
    EXPECT_TRUE(room.doubts.empty());
    EXPECT_TRUE(room.mouthClosed);
    EXPECT_EQ(room.work.bounds.high.x, 400);
    const double lip = std::sqrt(36 - std::pow(1 + std::sqrt(11.0), 2));
    EXPECT_TRUE(isInside(room.work, {400 - 1e-9, 150 + lip - 2 - 1e-6}));
    EXPECT_FALSE(isInside(room.work, {400 - 1e-9, 150 + lip - 2 + 1e-6}));
}

// Expected from: pencil. A bush of radius 4.5 is too wide for that mouth (4.1673): it stops against both
// lips, sqrt(4.5² - 4.1673²) before the edge, and its cutter of radius 1.5 does not come there.
TEST(WorkOpening, AWiderBushStaysBehindTheMouth) {
    Project project = mouthProject();
    useBush(project, 9, 3, false);
    const SolvedCutout room = solve(project).cutouts.at(0);
    EXPECT_TRUE(room.doubts.empty());
    const double lip = std::sqrt(36 - std::pow(1 + std::sqrt(11.0), 2));
    EXPECT_NEAR(room.work.bounds.high.x, 400 - std::sqrt(4.5 * 4.5 - lip * lip) + 1.5, 1e-9);
}

// Expected from: pencil. A ring round an island of 100 x 100: a bush of radius 4 and a cutter of 2 leave it
// 2 larger all round with rounds of 2, and its loop runs clockwise.
TEST(WorkOpening, AnIslandsLoopRunsClockwiseAndItsAreaComesOff) {
    Project project = panelOf(500, 500);
    project.cutouts = {cutoutAt("ring", {})};
    for (const int i : {0, 1, 2, 3}) {
        project.lines.push_back(offsetLine("H" + std::to_string(i), Edge::Bottom, 100 + 100 * i));
        project.lines.push_back(offsetLine("V" + std::to_string(i), Edge::Left, 100 + 100 * i));
    }
    for (const int x : {150, 250, 350}) {
        for (const int y : {150, 250, 350}) {
            if (x != 250 || y != 250) project.cutouts[0].seeds.push_back({double(x), double(y)});
        }
    }
    setTools(project, 3.2, 12.7);
    for (const bool inKerfs : {false, true}) {
        useBush(project, 8, 4, inKerfs);
        const Outline work = solve(project).cutouts.at(0).work;
        ASSERT_EQ(work.loops.size(), 2u);
        const double inner = std::min(signedArea(work.loops[0]), signedArea(work.loops[1]));
        EXPECT_NEAR(inner, -(100 * 100 + 4 * 100 * 2 + kPi * 4), 1e-7);
        EXPECT_NEAR(signedArea(work.loops[0]) + signedArea(work.loops[1]), work.area, 1e-9);
    }
}

// Expected from: the rule that a border of a decision is told: the waist of two rooms is 2 · 4.6296 wide,
// and a bush as wide as that may pass or not.
TEST(WorkOpening, AGapAsWideAsTheBushIsDoubted) {
    Project project = twoRooms();
    const double waist = 2 * std::sqrt(36 - std::pow(0.5 + std::sqrt(11.0), 2));
    useBush(project, waist, 4, false);
    EXPECT_FALSE(solve(project).cutouts.at(0).doubts.empty());
    useBush(project, waist + 0.1, 4, false);
    EXPECT_TRUE(solve(project).cutouts.at(0).doubts.empty());
}

// Expected from: what lies below the kerfs is part of what lies in their band: a guide along both is held by
// the lower.
TEST(WorkOpening, AGuideThatReachesPastTheKerfsCutsAsOneClearOfThem) {
    Project project = windowProject();
    setTools(project, 1.5, 12.7);
    project.kerfDepth = 6;
    project.use.byBush = true;
    project.use.bush = project.use.bit = 5;
    project.use.bushLength = 8;
    project.use.againstWork = Face::Back;
    const Solved both = solve(project);
    ASSERT_EQ(both.use.rides, Rides::Both);
    EXPECT_NEAR(both.cutouts.at(0).work.area, 10080 - (4 - kPi) * 6.35 * 6.35, 1e-7);
}

// Expected from: a mirror keeps lengths, on drawn layouts and on grids full of walls that lie on one another.
TEST(WorkOpening, AMirrorChangesNothing) {
    int compared = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        for (const bool grid : {false, true}) {
            SCOPED_TRACE(std::to_string(seed) + (grid ? " grid" : " drawn"));
            Project project = grid ? laws::gridProject(seed) : laws::seededProject(seed);
            useBush(project, 5.2, 4, seed % 2 == 0);
            const SolvedCutout a = solve(project).cutouts.at(0);
            const SolvedCutout b = solve(laws::moved(project, [](Point p) {
                                       return Point{600 - p.x, p.y};
                                   })).cutouts.at(0);
            if (!a.doubts.empty() || !b.doubts.empty()) continue;
            ++compared;
            EXPECT_NEAR(a.work.area, b.work.area, 1e-7);
            EXPECT_NEAR(a.work.perimeter, b.work.perimeter, 1e-7);
        }
    }
    EXPECT_GE(compared, 70) << "of 80: few may be doubted";
}

// Expected from: what is open clear of the kerfs is open in their band too, so a bush with a cutter of its
// size cuts no less there; and never past what the trimming bit swept where it rides clear.
TEST(WorkOpening, InTheKerfsBandNoLessIsCutThanClearOfIt) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        SCOPED_TRACE(seed);
        Project project = laws::seededProject(seed);
        useBush(project, 5.2, 5.2, false);
        const SolvedCutout clear = solve(project).cutouts.at(0);
        project.use.inKerfs = true;
        const SolvedCutout band = solve(project).cutouts.at(0);
        if (!clear.doubts.empty() || !band.doubts.empty()) continue;
        EXPECT_GE(band.work.area, clear.work.area - 1e-7);
        EXPECT_NEAR(clear.work.area, clear.opening.area, 1e-7);
    }
}

}  // namespace
}  // namespace kerfwall::test

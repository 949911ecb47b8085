// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/arranged.h"

#include <gtest/gtest.h>

#include <numbers>

#include "core/geometry/solve.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall::test {
namespace {

// Expected from: pencil. Left of the left edge (which runs down) is towards +x.
TEST(Arranged, AnOffsetGoesToTheLeftOfItsEdgeAndKeepsItsDirection) {
    const Arranged arranged = arrange(windowProject());
    ASSERT_EQ(arranged.lines.size(), 4u);
    EXPECT_EQ(arranged.lines[0].from, (Point{0, 90}));
    EXPECT_EQ(arranged.lines[0].to, (Point{400, 90}));
    EXPECT_EQ(arranged.lines[2].from, (Point{110, 250}));
    EXPECT_EQ(arranged.lines[2].to, (Point{110, 0}));
}

// Expected from: pencil. A line 80 above the bottom of a 250 panel meets the left edge 170 from its start
// corner (the top-left one) and the right edge 80 from its own.
TEST(Arranged, EdgeMarksCountFromTheEdgesStartCorner) {
    Project project = panelOf(400, 250);
    project.lines = {offsetLine("A", Edge::Bottom, 80)};
    const Arranged arranged = arrange(project);
    ASSERT_EQ(arranged.lines[0].marks.size(), 2u);
    EXPECT_EQ(arranged.lines[0].marks[0], (EdgeMark{Edge::Left, 170}));
    EXPECT_EQ(arranged.lines[0].marks[1], (EdgeMark{Edge::Right, 80}));
}

// Expected from: arithmetic in decimals; in doubles 0.1 + 0.2 is not 0.3 and the lines would not coincide.
TEST(Arranged, DecimalsAreTakenExactlySoChainsOfTenthsMeet) {
    Project project = panelOf(400, 250);
    project.lines = {offsetLine("A", Edge::Bottom, 0.1), offsetLine("B", LineId("A"), 0.2),
                     offsetLine("C", Edge::Bottom, 0.3)};
    const Arranged arranged = arrange(project);
    ASSERT_EQ(arranged.troubles.size(), 1u);
    EXPECT_EQ(arranged.troubles[0].lines, (std::vector<LineId>{"B", "C"}));
    EXPECT_EQ(arranged.troubles[0].pointer, "/lines/2/place");
}

// Expected from: pencil. 45 degrees through (100, 0) reaches the top of a 250 panel at x = 350, exactly.
TEST(Arranged, MultiplesOfFortyFiveDegreesAreExact) {
    Project project = panelOf(400, 250);
    project.lines = {lineAt("A", ByAngle{Edge::Bottom, 45, Point{100, 0}})};
    const Arranged arranged = arrange(project);
    EXPECT_EQ(arranged.lines[0].from, (Point{100, 0}));
    EXPECT_EQ(arranged.lines[0].to, (Point{350, 250}));
}

// Expected from: tan 30 = 1/sqrt(3); the second point is rounded to 1 nm at 1000 mm, so 400 mm on the
// place is within 0.4 nm of the true one.
TEST(Arranged, AnyOtherAngleIsWithinANanometreAThousandMillimetresOn) {
    Project project = panelOf(400, 250);
    project.lines = {lineAt("A", ByAngle{Edge::Bottom, 30, Point{0, 10}})};
    const Arranged arranged = arrange(project);
    EXPECT_NEAR(arranged.lines[0].to.y, 10 + 400 / std::numbers::sqrt3, 4e-7);
    EXPECT_NE(arranged.lines[0].to.y, 0);
}

// Expected from: pencil. The mirror image of a line climbing to the right climbs to the left.
TEST(Arranged, AMirrorImageRunsInTheMirroredDirection) {
    Project project = panelOf(400, 250);
    project.lines = {lineAt("A", ByPoints{{100, 0}, {150, 250}}), lineAt("B", ByMirror{"A", Centre::Upright}),
                     lineAt("C", ByMirror{"A", Centre::Level})};
    const Arranged arranged = arrange(project);
    EXPECT_EQ(arranged.lines[1].from, (Point{300, 0}));
    EXPECT_EQ(arranged.lines[1].to, (Point{250, 250}));
    EXPECT_EQ(arranged.lines[2].from, (Point{100, 250}));
    EXPECT_EQ(arranged.lines[2].to, (Point{150, 0}));
}

// Expected from: pencil. Lines through (50, 50) and (100, 200): the third through their crossing at 90°.
TEST(Arranged, ALineThroughACrossingFollowsIt) {
    Project project = panelOf(400, 250);
    project.lines = {offsetLine("A", Edge::Bottom, 60), offsetLine("C", Edge::Left, 130),
                     lineAt("E", ByAngle{Edge::Bottom, 45, CrossingOf{"A", "C"}})};
    const Arranged arranged = arrange(project);
    EXPECT_EQ(arranged.lines[2].from, (Point{70, 0}));
    project.lines[0] = offsetLine("A", Edge::Bottom, 80);
    EXPECT_EQ(arrange(project).lines[2].from, (Point{50, 0}));
}

TEST(Arranged, ParallelLinesHaveNoCrossingToLayALineThrough) {
    Project project = panelOf(400, 250);
    project.lines = {offsetLine("A", Edge::Bottom, 60), offsetLine("B", Edge::Bottom, 70),
                     lineAt("E", ByAngle{Edge::Bottom, 45, CrossingOf{"A", "B"}}), offsetLine("F", LineId("E"), 20)};
    const Arranged arranged = arrange(project);
    EXPECT_EQ(arranged.lines.size(), 2u);
    ASSERT_EQ(arranged.troubles.size(), 2u);
    EXPECT_EQ(arranged.troubles[1].lines, (std::vector<LineId>{"F"}));
}

TEST(Arranged, ALineAlongAnEdgeOrOffThePanelIsTrouble) {
    Project project = panelOf(400, 250);
    project.lines = {offsetLine("A", Edge::Bottom, 0), offsetLine("B", Edge::Bottom, 260),
                     lineAt("C", ByPoints{{0, 250}, {-1, 249}})};
    const Arranged arranged = arrange(project);
    EXPECT_TRUE(arranged.lines.empty());
    EXPECT_EQ(arranged.troubles.size(), 3u);
}

TEST(Arranged, ASeedOnALineOnAnEdgeOrOutsideIsTroubleThatNamesIt) {
    Project project = windowProject();
    project.cutouts = {cutoutAt("a", {{200, 90}}), cutoutAt("b", {{0, 50}}), cutoutAt("c", {{-5, 50}})};
    const Arranged arranged = arrange(project);
    ASSERT_EQ(arranged.troubles.size(), 3u);
    EXPECT_EQ(arranged.troubles[0].pointer, "/cutouts/0/seeds/0");
    EXPECT_EQ(arranged.troubles[0].lines, (std::vector<LineId>{"A"}));
    EXPECT_EQ(arranged.troubles[2].pointer, "/cutouts/2/seeds/0");
    EXPECT_TRUE(arranged.cutouts.empty());
}

TEST(Arranged, TwoCutoutsMayNotShareAFace) {
    Project project = windowProject();
    project.cutouts.push_back(cutoutAt("other", {{150, 100}}));
    const Arranged arranged = arrange(project);
    ASSERT_EQ(arranged.troubles.size(), 1u);
    EXPECT_EQ(arranged.troubles[0].pointer, "/cutouts/1/seeds/0");
}

// Expected from: pencil. The window and the face right of it: 180 x 56 and 110 x 56 share a side on D.
TEST(Arranged, FacesSideBySideJoinAndTheLineBetweenIsGone) {
    Project project = windowProject();
    project.cutouts[0].seeds.push_back({350, 120});
    const Arranged arranged = arrange(project);
    ASSERT_EQ(arranged.cutouts.size(), 1u);
    const ArrangedCutout& cutout = arranged.cutouts[0];
    EXPECT_DOUBLE_EQ(cutout.area, 290 * 56);
    ASSERT_EQ(cutout.loops.size(), 1u);
    EXPECT_EQ(cutout.loops[0].size(), 4u) << "walls of A and B run on past D";
    ASSERT_EQ(cutout.inner.size(), 1u);
    EXPECT_EQ(cutout.inner[0].line, 3u);
}

// Expected from: pencil. A ring of eight faces round a standing ninth: 300² less 100².
TEST(Arranged, ARingOfFacesLeavesAnIsland) {
    Project project = panelOf(500, 500);
    for (const int i : {0, 1, 2, 3}) {
        project.lines.push_back(offsetLine("H" + std::to_string(i), Edge::Bottom, 100 + 100 * i));
        project.lines.push_back(offsetLine("V" + std::to_string(i), Edge::Left, 100 + 100 * i));
    }
    Cutout ring = cutoutAt("ring", {});
    for (const int x : {150, 250, 350}) {
        for (const int y : {150, 250, 350}) {
            if (x != 250 || y != 250) ring.seeds.push_back({double(x), double(y)});
        }
    }
    project.cutouts = {ring};
    const Arranged arranged = arrange(project);
    ASSERT_EQ(arranged.cutouts.size(), 1u);
    EXPECT_DOUBLE_EQ(arranged.cutouts[0].area, 80000);
    ASSERT_EQ(arranged.cutouts[0].loops.size(), 2u);
    EXPECT_EQ(arranged.cutouts[0].loops[0].size() + arranged.cutouts[0].loops[1].size(), 8u);
}

// Expected from: the project file: a line bounds a cutout only along at least 0.001 mm.
TEST(Arranged, AWallShorterThanAThousandthIsAPoint) {
    Project project = windowProject();
    // Cuts 0.0004 x 0.0004 off the corner (290, 146); its run inside the window is 0.00057 long.
    project.lines.push_back(lineAt("E", ByPoints{{290, 145.9996}, {289.9996, 146}}));
    Arranged arranged = arrange(project);
    ASSERT_EQ(arranged.cutouts.size(), 1u);
    EXPECT_EQ(arranged.cutouts[0].loops[0].size(), 4u);
    project.lines.back() = lineAt("E", ByPoints{{290, 145.99}, {289.99, 146}});
    EXPECT_EQ(arrange(project).cutouts[0].loops[0].size(), 5u);
}

TEST(FaceAt, NamesAPlacesFaceUntilALineIsCrossed) {
    const Project project = windowProject();
    EXPECT_EQ(faceAt(project, {120, 95}), faceAt(project, {280, 140}));
    EXPECT_NE(faceAt(project, {120, 95}), faceAt(project, {100, 95}));
    EXPECT_FALSE(faceAt(project, {110, 95}));
    EXPECT_FALSE(faceAt(project, {400, 95}));
    EXPECT_EQ(facePolygon(project, {200, 120}).size(), 4u);
}

}  // namespace
}  // namespace kerfwall::test

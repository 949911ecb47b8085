// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/mends.h"

#include <gtest/gtest.h>

#include "tests/core/shop/recorded_window.h"

// A wall 0.3 past its line on the window of recorded_window.h: all worked by pencil.
namespace kerfwall {
namespace {

using hand::foundAt;

std::vector<Remedy> mendsOf(Project project, const std::vector<Record>& record, std::size_t index = 0) {
    project.record = record;
    return mends(project, solve(project), index);
}

double distanceOf(const Project& project, const LineId& id) {
    return std::get<ByOffset>(findLine(project, id)->place).distance;
}

double sizeBetween(const Solved& solved, const LineId& one, const LineId& other) {
    for (const FacingSize& size : solved.cutouts.at(0).sizes) {
        if ((size.first == one && size.second == other) || (size.first == other && size.second == one)) return size.distance;
    }
    return -1;
}

// The waste lies beyond A, which stands at 89.7: it is laid there, B goes from 146 to 145.7, and what is wanted down by
// 0.3. The size stays 56 and the opening what was wanted: nothing new to mind.
TEST(Mends, TheOpeningGoesAlongWithAWallPastItsLine) {
    const auto offers = mendsOf(hand::recordedWindow(), {foundAt("A", Edge::Bottom, 89.7)});
    ASSERT_EQ(offers.size(), 1U);
    const Project& after = offers[0].project;
    EXPECT_EQ(offers[0].words, "Move all of window by 0.30 mm to where wall A stands; its sizes stay");
    EXPECT_NEAR(distanceOf(after, "A"), 89.7, 1e-9);
    EXPECT_NEAR(distanceOf(after, "B"), 145.7, 1e-9);
    EXPECT_EQ(distanceOf(after, "C"), 110);
    EXPECT_EQ(distanceOf(after, "D"), 290);
    EXPECT_NEAR(sizeBetween(offers[0].solved, "A", "B"), 56, 1e-9);
    EXPECT_NEAR(after.cutouts[0].wanted->outline[0].y, 89.7, 1e-9);
    EXPECT_EQ(after.record.size(), 1U);
    EXPECT_TRUE(findings(after, offers[0].solved).empty());
}

// The waste lies between B and the fence: B stands at 146.3, A goes to 90.3.
TEST(Mends, TheOtherWayForAWallOnTheOtherSideOfItsWaste) {
    const auto offers = mendsOf(hand::recordedWindow(), {foundAt("B", Edge::Bottom, 146.3)});
    ASSERT_EQ(offers.size(), 1U);
    EXPECT_NEAR(distanceOf(offers[0].project, "B"), 146.3, 1e-9);
    EXPECT_NEAR(distanceOf(offers[0].project, "A"), 90.3, 1e-9);
    EXPECT_NEAR(sizeBetween(offers[0].solved, "A", "B"), 56, 1e-9);
}

// D past to the right, measured from the right edge: at 290.3. C goes to 110.3.
TEST(Mends, AcrossAsWell) {
    const auto offers = mendsOf(hand::recordedWindow(), {foundAt("D", Edge::Right, 109.7)});
    ASSERT_EQ(offers.size(), 1U);
    EXPECT_NEAR(distanceOf(offers[0].project, "D"), 290.3, 1e-9);
    EXPECT_NEAR(distanceOf(offers[0].project, "C"), 110.3, 1e-9);
    EXPECT_EQ(distanceOf(offers[0].project, "A"), 90);
}

// Corners are bored before their kerfs: a bore that stands does not go along.
TEST(Mends, BoresThatStandDoNotGoAlong) {
    Project project = hand::recordedWindow();
    project.cutouts[0].corners = {{"A", "C", 20, ""}};
    EXPECT_TRUE(mendsOf(project, {foundAt("A", Edge::Bottom, 89.7)}).empty());
    EXPECT_TRUE(mendsOf(project, {foundAt("D", Edge::Right, 109.7)}).empty());
    project.cutouts[0].corners.clear();
    EXPECT_EQ(mendsOf(project, {foundAt("D", Edge::Right, 109.7)}).size(), 1U);
}

// B found on its line at 146: laid at 145.7 it would lie past it. Nothing can be offered.
TEST(Mends, AWallThatIsOutAlreadyCannotGoAlong) {
    EXPECT_TRUE(mendsOf(hand::recordedWindow(), {foundAt("A", Edge::Bottom, 89.7), foundAt("B", Edge::Bottom, 146)}).empty());
}

// B found 0.4 short, at 145.6: laid at 145.7 it is still 0.1 short.
TEST(Mends, AWallThatIsShortEnoughCan) {
    const auto offers =
        mendsOf(hand::recordedWindow(), {foundAt("A", Edge::Bottom, 89.7), foundAt("B", Edge::Bottom, 145.6)});
    ASSERT_EQ(offers.size(), 1U);
    EXPECT_NEAR(distanceOf(offers[0].project, "B"), 145.7, 1e-9);
}

// A second part on the right, from K at 50 up to T at 100, joins the window through D. T has its waste below as B has and
// was found on its line, so the whole cannot go down by 0.3; T does not face A, though: B alone goes along.
//
//        +---- B ----+
//        C           D
//        |           +-- T --+
//        +---- A ----+       G
//                    +-- K --+
TEST(Mends, WhereTheWholeCannotGoAlongTheWallsThatFaceItDo) {
    Project project = hand::recordedWindow();
    const auto add = [&](const LineId& id, Edge from, double distance) {
        LayoutLine line;
        line.id = id;
        line.place = ByOffset{from, distance};
        project.lines.push_back(line);
    };
    add("T", Edge::Bottom, 100);
    add("K", Edge::Bottom, 50);
    add("G", Edge::Left, 350);
    project.cutouts[0].seeds = {{200, 95}, {200, 120}, {320, 70}, {320, 95}};
    project.cutouts[0].wanted.reset();
    const auto offers = mendsOf(project, {foundAt("A", Edge::Bottom, 89.7), foundAt("T", Edge::Bottom, 100)});
    ASSERT_EQ(offers.size(), 1U);
    EXPECT_EQ(offers[0].words, "Move line B by 0.30 mm along with A, which is laid where its wall stands");
    EXPECT_NEAR(distanceOf(offers[0].project, "A"), 89.7, 1e-9);
    EXPECT_NEAR(distanceOf(offers[0].project, "B"), 145.7, 1e-9);
    EXPECT_EQ(distanceOf(offers[0].project, "T"), 100);
    EXPECT_NEAR(sizeBetween(offers[0].solved, "A", "B"), 56, 1e-9);
}

TEST(Mends, NothingForAWallOnItsLineOrMeasuredAgain) {
    EXPECT_TRUE(mendsOf(hand::recordedWindow(), {foundAt("A", Edge::Bottom, 89.96)}).empty());
    EXPECT_TRUE(mendsOf(hand::recordedWindow(), {foundAt("A", Edge::Bottom, 90.4)}).empty());
    EXPECT_TRUE(mendsOf(hand::recordedWindow(), {foundAt("A", Edge::Bottom, 89.7), foundAt("A", Edge::Bottom, 90)}).empty());
}

// Expected from: the promise: entries of the record come along unchanged, and the wall then stands on its line.
TEST(Mends, TheWallThenStandsOnItsLine) {
    Project project = hand::recordedWindow();
    project.record = {foundAt("A", Edge::Bottom, 89.7)};
    const auto offers = mends(project, solve(project), 0);
    ASSERT_EQ(offers.size(), 1U);
    EXPECT_EQ(offers[0].project.record, project.record);
    EXPECT_TRUE(mends(offers[0].project, offers[0].solved, 0).empty());
}

}  // namespace
}  // namespace kerfwall

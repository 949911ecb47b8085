// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/marking.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/geometry/moving.h"
#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

Project marked(Project project, std::vector<Point> seeds) {
    project.cutouts.push_back({"cutout-1", std::move(seeds), {}, {}, {}});
    return project;
}

// Expected from: pencil. The middle face runs from (110, 90) to (290, 146): its centre is (200, 118).
TEST(Marking, AClickMarksTheFaceAtItsCentreAndASecondTakesTheMarkAway) {
    const auto first = markWaste(gridOfFour(), {130, 100}, "");
    ASSERT_TRUE(first);
    EXPECT_EQ(first->what, Marked::Added);
    ASSERT_EQ(first->project.cutouts.size(), 1U);
    EXPECT_EQ(first->project.cutouts.front().seeds, (std::vector<Point>{{200, 118}}));
    const auto second = markWaste(first->project, {280, 140}, "");
    ASSERT_TRUE(second);
    EXPECT_EQ(second->what, Marked::Taken);
    EXPECT_TRUE(second->project.cutouts.empty());
}

// Expected from: the rule that neighbours join; a corner alone makes no neighbours.
TEST(Marking, ANeighbouringFaceJoinsTheCutoutAndOneAcrossACornerDoesNot) {
    const Project project = marked(gridOfFour(), {{200, 118}});
    const auto right = markWaste(project, {350, 118}, "");
    ASSERT_TRUE(right);
    EXPECT_EQ(right->what, Marked::Joined);
    EXPECT_EQ(right->project.cutouts.front().seeds.size(), 2U);
    const auto across = markWaste(project, {350, 200}, "");
    ASSERT_TRUE(across);
    EXPECT_EQ(across->what, Marked::Added);
    EXPECT_EQ(across->project.cutouts.back().id, "cutout-2");
    const auto asked = markWaste(project, {350, 200}, "cutout-1");
    ASSERT_TRUE(asked);
    EXPECT_EQ(asked->what, Marked::Joined);
}

TEST(Marking, RefusesALineAndAPlaceOffThePanel) {
    EXPECT_EQ(markWaste(gridOfFour(), {200, 90}, "").error(), NoMarking::OnALine);
    EXPECT_EQ(markWaste(gridOfFour(), {-3, 90}, "").error(), NoMarking::NotOnPanel);
}

// Expected from: pencil. C pushed from 110 to 220 passes the seed at 200: the face is now 220 to 290, centre 255.
TEST(Marking, TheSeedFollowsItsFaceWhenALinePassesIt) {
    const Project before = marked(gridOfFour(), {{200, 118}});
    Project after = before;
    after.lines[2].place = ByOffset{Edge::Left, 220};
    after = carryCutouts(before, solve(before), after);
    ASSERT_EQ(after.cutouts.size(), 1U);
    EXPECT_EQ(after.cutouts.front().seeds, (std::vector<Point>{{255, 118}}));
}

TEST(Marking, ASeedThatStillLiesInItsFaceStays) {
    const Project before = marked(gridOfFour(), {{200, 118}});
    Project after = before;
    after.lines[0].place = ByOffset{Edge::Bottom, 80};
    EXPECT_EQ(carryCutouts(before, solve(before), after).cutouts, before.cutouts);
}

// Expected from: pencil. A line x 180 parts 110 to 290 in 110 to 180 (without the seed: its centre, 145) and
// 180 to 290 (with the seed at 200, which stays).
TEST(Marking, ALineLaidAcrossACutoutKeepsBothHalvesMarked) {
    const Project before = marked(gridOfFour(), {{200, 118}});
    Project after = before;
    addLine(after, "E", ByOffset{Edge::Left, 180});
    after = carryCutouts(before, solve(before), after);
    ASSERT_EQ(after.cutouts.size(), 1U);
    ASSERT_EQ(after.cutouts.front().seeds.size(), 2U);
    EXPECT_NE(std::ranges::find(after.cutouts.front().seeds, Point{145, 118}), after.cutouts.front().seeds.end());
    EXPECT_NE(std::ranges::find(after.cutouts.front().seeds, Point{200, 118}), after.cutouts.front().seeds.end());
}

TEST(Marking, TakingTheLineBetweenTwoCutoutsAwayJoinsThem) {
    Project before = marked(gridOfFour(), {{200, 118}});
    before.cutouts.push_back({"cutout-2", {{350, 118}}, {{"A", "D", 20, {}}}, {}, {}});
    const Solved solved = solve(before);
    Project after = before;
    std::erase_if(after.lines, [](const LayoutLine& line) { return line.id == "D"; });
    after = carryCutouts(before, solved, after);
    ASSERT_EQ(after.cutouts.size(), 1U);
    EXPECT_EQ(after.cutouts.front().id, "cutout-1");
    EXPECT_EQ(after.cutouts.front().seeds.size(), 1U);
    EXPECT_EQ(after.cutouts.front().corners.size(), 1U);
}

// Expected from: the rule that a mark line bounds no face.
TEST(Marking, AMarkLineAcrossACutoutPartsNothing) {
    const Project before = marked(gridOfFour(), {{200, 118}});
    Project after = before;
    addLine(after, "E", ByOffset{Edge::Left, 180});
    after.lines.back().cut = false;
    EXPECT_EQ(carryCutouts(before, solve(before), after).cutouts, before.cutouts);
}

// Expected from: pencil. A pushed above B leaves no place that is above A and below B.
TEST(Marking, AFaceThatHasVanishedIsMarkedNoMore) {
    const Project before = marked(gridOfFour(), {{200, 118}});
    Project after = before;
    after.lines[0].place = ByOffset{Edge::Bottom, 170};
    EXPECT_TRUE(carryCutouts(before, solve(before), after).cutouts.empty());
    EXPECT_EQ(vanishedCutouts(before, solve(before), after), (std::vector<std::string>{"cutout-1"}));
    after.lines[0].place = ByOffset{Edge::Bottom, 140};
    EXPECT_TRUE(vanishedCutouts(before, solve(before), after).empty());
}

}  // namespace
}  // namespace kerfwall

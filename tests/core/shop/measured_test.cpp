// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/measured.h"

#include <gtest/gtest.h>

#include "core/shop/measured_words.h"
#include "tests/core/shop/recorded_window.h"

// All worked by pencil from recorded_window.h: fence 90.0 for A, 146 - 3.2 = 142.8 for B; stop 110.0 for C and 286.8 for
// D. Tape 0.15: two layers are 0.30, three would be 0.45. A shim moves a kerf only towards fence or stop (facts.md 1).
namespace kerfwall {
namespace {

using hand::foundAcross;
using hand::foundAt;

std::vector<MeasuredAnswer> answersOf(Project project, const std::vector<Record>& record) {
    project.record = record;
    const Solved solved = solve(project);
    return measuredAnswers(project, solved, plan(project, solved));
}

MeasuredAnswer answerTo(const Record& record, const Project& project = hand::recordedWindow()) {
    return answersOf(project, {record}).at(0);
}

void expectMove(const MeasuredAnswer& answer, double shift, double setting, bool isStop, bool addsLayers) {
    EXPECT_EQ(answer.stands, Stands::Short);
    EXPECT_NEAR(answer.off, 0.4, 1e-9);
    ASSERT_TRUE(answer.moveOut);
    const MoveOut& out = *answer.moveOut;
    EXPECT_NEAR(out.by, 0.4, 1e-9);
    EXPECT_NEAR(out.shift.value_or(0), shift, 1e-9);
    EXPECT_NEAR(out.setting.value_or(0), setting, 1e-9);
    EXPECT_EQ(out.isStop, isStop);
    EXPECT_EQ(out.addsLayers, addsLayers);
    EXPECT_EQ(out.layers, 2);
    EXPECT_NEAR(out.leaves, 0.1, 1e-9);
}

// The waste lies beyond A: its wall, found at 90.4, must come nearer to the fence. Fence 90.0 - 0.4, or layers added.
TEST(Measured, AWallShortWithTheWasteBeyondComesNearerToTheFence) {
    expectMove(answerTo(foundAt("A", Edge::Bottom, 90.4)), -0.4, 89.6, false, true);
}

// The waste lies between B and the fence: its wall, found at 145.6, must go farther out. Fence 142.8 + 0.4, or layers
// that lie in peeled off.
TEST(Measured, AWallShortWithTheWasteBetweenGoesFartherFromTheFence) {
    expectMove(answerTo(foundAt("B", Edge::Bottom, 145.6)), 0.4, 143.2, false, false);
}

// The same wall measured from the top edge: 250 - 145.6.
TEST(Measured, FromTheOppositeEdgeItIsTheSame) {
    expectMove(answerTo(foundAt("B", Edge::Top, 104.4)), 0.4, 143.2, false, false);
}

TEST(Measured, AtTheStopAsAtTheFence) {
    expectMove(answerTo(foundAt("C", Edge::Left, 110.4)), -0.4, 109.6, true, true);
    expectMove(answerTo(foundAt("D", Edge::Right, 110.4)), 0.4, 287.2, true, false);
}

// Past by 0.3, the opening between A and B is 56.3: 30 to 120 mm may be off by 0.3 in class m.
TEST(Measured, AWallPastItsLineStaysAndSaysWhatItCosts) {
    for (const Record& record : {foundAt("A", Edge::Bottom, 89.7), foundAt("B", Edge::Bottom, 146.3)}) {
        const MeasuredAnswer answer = answerTo(record);
        EXPECT_EQ(answer.stands, Stands::Past) << record.line->first;
        EXPECT_NEAR(answer.off, 0.3, 1e-9);
        EXPECT_FALSE(answer.moveOut);
        ASSERT_EQ(answer.costs.size(), 1U);
        EXPECT_NEAR(answer.costs[0].drawn, 56, 1e-9);
        EXPECT_NEAR(answer.costs[0].comes, 56.3, 1e-9);
        EXPECT_EQ(answer.costs[0].keeps, ToleranceClass::Medium);
    }
}

// 0.3 and 0.2 past make 56.5: 0.8 is allowed in class c.
TEST(Measured, BothWallsPastTheirLinesCostTogether) {
    const auto answers =
        answersOf(hand::recordedWindow(), {foundAt("A", Edge::Bottom, 89.7), foundAt("B", Edge::Bottom, 146.2)});
    ASSERT_EQ(answers[0].costs.size(), 1U);
    EXPECT_NEAR(answers[0].costs[0].comes, 56.5, 1e-9);
    EXPECT_EQ(answers[0].costs[0].keeps, ToleranceClass::Coarse);
}

// B is cut after A. An opening of 55.6 lacks 0.4, which B gives; where B was found on its line, A gives it.
TEST(Measured, AcrossTheOpeningTheWallCutLaterMoves) {
    const MeasuredAnswer later = answerTo(foundAcross("A", "B", 55.6));
    ASSERT_TRUE(later.moveOut);
    EXPECT_EQ(later.moveOut->line, "B");
    expectMove(later, 0.4, 143.2, false, false);
    const auto answers =
        answersOf(hand::recordedWindow(), {foundAt("B", Edge::Bottom, 146.02), foundAcross("B", "A", 55.6)});
    EXPECT_EQ(answers[0].stands, Stands::OnLine);
    ASSERT_TRUE(answers[1].moveOut);
    EXPECT_EQ(answers[1].moveOut->line, "A");
    const MeasuredAnswer wide = answerTo(foundAcross("A", "B", 56.4));
    EXPECT_EQ(wide.stands, Stands::Past);
    ASSERT_EQ(wide.costs.size(), 1U);
    EXPECT_NEAR(wide.costs[0].comes, 56.4, 1e-9);
}

// 1.5 short would take ten layers; no more than four lie flat: 0.6, and 0.9 is left.
TEST(Measured, NoMoreLayersThanLieFlatAndNoneThatWouldGoPast) {
    EXPECT_EQ(answerTo(foundAt("A", Edge::Bottom, 91.5)).moveOut->layers, 4);
    EXPECT_NEAR(answerTo(foundAt("A", Edge::Bottom, 91.5)).moveOut->leaves, 0.9, 1e-9);
    EXPECT_EQ(answerTo(foundAt("A", Edge::Bottom, 90.1)).moveOut->layers, 0);
    EXPECT_EQ(answerTo(foundAt("A", Edge::Bottom, 90.45)).moveOut->layers, 3) << "a whole number of layers";
}

// On a gauge turned by 20 degrees 0.4 square to the wall is 0.4 / cos 20 = 0.42567 along its fence.
TEST(Measured, OnATurnedGaugeTheStopMovesFartherThanTheWall) {
    Project project = hand::recordedWindow();
    for (std::size_t i : {2U, 3U}) {
        project.lines[i].place = ByAngle{Edge::Left, 20, Point{i == 2 ? 150.0 : 290.0, 118}};
        project.lines[i].saw = "gauge";
    }
    project.cutouts[0].wanted.reset();
    // Square across, 140 mm along a level line are 140 cos 20 = 131.55697.
    const MeasuredAnswer answer = answerTo(foundAcross("C", "D", 131.15697), project);
    ASSERT_TRUE(answer.moveOut);
    EXPECT_NEAR(answer.moveOut->by, 0.4, 1e-5);
    EXPECT_NEAR(std::abs(answer.moveOut->shift.value()), 0.42567, 2e-5);
}

TEST(Measured, OnARailItIsCutAgainToItsMarks) {
    Project project = hand::recordedWindow();
    project.lines[0].saw = "rail";
    const MeasuredAnswer answer = answerTo(foundAt("A", Edge::Bottom, 90.4), project);
    ASSERT_TRUE(answer.moveOut);
    EXPECT_FALSE(answer.moveOut->shift);
    EXPECT_EQ(answer.text, "Wall A stands 0.40 mm short of its line. Cut wall A again to its marks: 0.40 mm of waste still stands before its line.");
}

// Expected from: the promise: the newest measure of a wall counts, from whichever edge.
TEST(Measured, AWallMeasuredAgainIsAnsweredOnce) {
    const auto answers =
        answersOf(hand::recordedWindow(), {foundAt("A", Edge::Bottom, 90.4), foundAt("A", Edge::Top, 160)});
    EXPECT_TRUE(answers[0].isPassed);
    EXPECT_EQ(answers[0].text, "Wall A was measured again since.");
    EXPECT_EQ(answers[1].stands, Stands::OnLine);
}

// Expected from: the promise: a distance from an edge that the wall does not run along says nothing.
TEST(Measured, WhatSaysNothingIsNotAnswered) {
    const MeasuredAnswer askew = answerTo(foundAt("A", Edge::Left, 110));
    EXPECT_FALSE(askew.stands);
    EXPECT_TRUE(askew.text.starts_with("From the left edge nothing can be said of line A"));
    EXPECT_FALSE(answerTo(foundAcross("A", "C", 110)).stands);
    Record bore;
    bore.bore = {"A", "C"};
    bore.measured = 40;
    EXPECT_FALSE(answerTo(bore).stands);
}

// A second window under A down to K at 40: A has a wall on each side. Across the upper one 55.6 lacks 0.4; B's wall is
// out, so A's upper wall moves, whose waste lies beyond: fence 90.0 - 0.4. Across the lower one (50 drawn, 49.6 found)
// K's is out, so A's lower wall moves, whose waste lies between: its fence 90 - 3.2 + 0.4.
TEST(Measured, OfALineWithWallsOnBothSidesTheOneAcrossWhichWasMeasured) {
    Project project = hand::recordedWindow();
    LayoutLine line;
    line.id = "K";
    line.place = ByOffset{Edge::Bottom, 40};
    project.lines.push_back(line);
    project.cutouts.push_back({"lower", {{200, 60}}, {}, {}, {}});
    project.lines[0].saw = "rip";
    const auto answers = answersOf(project, {foundAt("A", Edge::Bottom, 90.4), foundAt("B", Edge::Bottom, 146),
                                             foundAt("K", Edge::Bottom, 40), foundAcross("A", "B", 55.6),
                                             foundAcross("A", "K", 49.6)});
    EXPECT_FALSE(answers[0].stands);
    ASSERT_TRUE(answers[3].moveOut && answers[4].moveOut);
    EXPECT_EQ(answers[3].moveOut->line, "A");
    EXPECT_NEAR(answers[3].moveOut->setting.value(), 89.6, 1e-9);
    EXPECT_EQ(answers[4].moveOut->line, "A");
    EXPECT_NEAR(answers[4].moveOut->setting.value(), 87.2, 1e-9);
}

// A corner bored to a radius of 20 is 40 across.
TEST(Measured, ABoreIsHeldAgainstItsDiameter) {
    Project project = hand::recordedWindow();
    project.cutouts[0].corners = {{"A", "C", 20, {}}};
    Record bore;
    bore.bore = {"C", "A"};
    bore.measured = 39.7;
    EXPECT_EQ(answerTo(bore, project).stands, Stands::Short);
    EXPECT_NEAR(answerTo(bore, project).off, 0.3, 1e-9);
    bore.measured = 40.2;
    EXPECT_EQ(answerTo(bore, project).stands, Stands::Past);
}

// The whole sentences, for both sides of the waste.
TEST(Measured, SaysItInWholeSentences) {
    EXPECT_EQ(answerTo(foundAt("A", Edge::Bottom, 90.4)).text,
              "Wall A stands 0.40 mm short of its line. Move the fence 0.40 mm nearer to the blade, from 90.0 mm to 89.6 mm by the "
              "scale it was set by, and cut wall A again. Or leave it where it stands and lay 2 layers of 0.15 mm tape between panel "
              "and fence, which leaves 0.10 mm.");
    EXPECT_EQ(answerTo(foundAt("B", Edge::Bottom, 145.6)).text,
              "Wall B stands 0.40 mm short of its line. Move the fence 0.40 mm farther from the blade, from 142.8 mm to 143.2 mm by "
              "the scale it was set by, and cut wall B again. Or, where it was set up with tape between panel and fence, peel 2 layers "
              "of 0.15 mm tape off, which leaves 0.10 mm.");
    EXPECT_EQ(answerTo(foundAt("A", Edge::Bottom, 89.7)).text,
              "Wall A stands 0.30 mm past its line and stays there. Left so, the size between B and A comes out 56.3 mm, 0.30 mm over "
              "(within class m of ISO 2768-1).");
}

}  // namespace
}  // namespace kerfwall

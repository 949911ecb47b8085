// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/cut_choice.h"

#include <gtest/gtest.h>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

constexpr std::size_t kRip = 0;
constexpr std::size_t kSled = 1;
constexpr std::size_t kGauge = 2;
constexpr std::size_t kRail = 3;

Project oneLine(double width = 700, double height = 500) {
    Project project = hand::panelOf(width, height);
    project.lines.resize(1);
    project.lines[0].id = "A";
    return project;
}

/// A kerf on one side of the line, as each saw would cut it; stopped ones 50 short of both ends.
CutAsked cutAsked(const Project& project, std::size_t line, Point from, Point to, Side side) {
    CutAsked cut{line, from, to, {}};
    const double length = distance(from, to);
    for (std::size_t saw = 0; saw < benchOf(project).saws.size(); ++saw) {
        Kerf kerf{.side = side, .saw = saw, .width = benchOf(project).saws[saw].kerf, .depth = 6};
        kerf.stopped = project.lines[line].extent == Extent::Stopped;
        kerf.fullFrom = kerf.surfaceFrom = kerf.stopped ? 50 : 0;
        kerf.fullTo = kerf.surfaceTo = kerf.stopped ? length - 50 : length;
        cut.atSaw.push_back(kerf);
    }
    return cut;
}

std::optional<std::size_t> chosen(const Project& project, Point from, Point to) {
    return chooseCuts(project, {cutAsked(project, 0, from, to, Side::Left)}).cuts.at(0).saw;
}

// Expected from: what each saw is for: along the fence, square on the sled, askew on the gauge to its 60
// degrees, steeper on the rail.
TEST(CutChoice, GoesByTheLinesDirection) {
    const Project project = oneLine();
    EXPECT_EQ(chosen(project, {0, 100}, {700, 100}), kRip);
    EXPECT_EQ(chosen(project, {100, 500}, {100, 0}), kSled);
    EXPECT_EQ(chosen(project, {100, 0}, {130, 500}), kGauge);
    EXPECT_EQ(chosen(project, {0, 100}, {700, 160}), kRail);
}

// Expected from: an upright line runs along the left edge; a level one is square to it, and with 700 longer
// than the sled's 600, so the gauge takes it.
TEST(CutChoice, GoesByTheReferenceEdge) {
    Project project = oneLine();
    project.panel.referenceEdge = Edge::Left;
    EXPECT_EQ(chosen(project, {100, 500}, {100, 0}), kRip);
    EXPECT_EQ(chosen(project, {0, 100}, {700, 100}), kGauge);
    project.panel.width = 600;
    EXPECT_EQ(chosen(project, {0, 100}, {600, 100}), kSled);
}

// Expected from: the fence comes to 600; 700 high, a line at 650 is 50 from the top edge, which may lie on
// the fence only on a panel true at all corners, and where the project prefers the fewest set-ups to one
// reference edge.
TEST(CutChoice, LeavesTheFenceWhereItDoesNotReach) {
    Project project = oneLine(700, 700);
    EXPECT_EQ(chosen(project, {0, 600}, {700, 600}), kRip);
    EXPECT_EQ(chosen(project, {0, 650}, {700, 650}), kRail);
    project.panel.squareCorner = SquareCorner::All;
    EXPECT_EQ(chosen(project, {0, 650}, {700, 650}), kRail);
    project.plan.prefer = Prefer::FewestSetups;
    EXPECT_EQ(chosen(project, {0, 650}, {700, 650}), kRip);
}

TEST(CutChoice, TakesTheSawTheLineNames) {  // Expected from: the project file, version 1.
    Project project = oneLine();
    project.lines[0].saw = "rail";
    EXPECT_EQ(chosen(project, {0, 100}, {700, 100}), kRail);
}

TEST(CutChoice, AStoppedKerfNeedsASawThatCanStop) {  // Expected from: the table saws cannot.
    Project project = oneLine();
    project.lines[0].extent = Extent::Stopped;
    EXPECT_EQ(chosen(project, {0, 100}, {700, 100}), kRail);
    project.bench->saws.resize(3);
    EXPECT_EQ(chosen(project, {0, 100}, {700, 100}), std::nullopt);
}

// Expected from: a mitre saw of 300 less its shallow end, sqrt(6 (216 - 6)) = 35.5: 264.5.
TEST(CutChoice, PlansABenchWithoutATableSaw) {
    Project project = oneLine(400, 260);
    Saw mitre;
    mitre.id = "mitre";
    mitre.kind = SawKind::SlidingMitre;
    mitre.blade = 216;
    mitre.maxCut = 300;
    project.bench->saws = {mitre, project.bench->saws[kRail]};
    EXPECT_EQ(chosen(project, {100, 0}, {100, 260}), 0u);
    EXPECT_EQ(chosen(project, {0, 100}, {400, 100}), 1u);
    EXPECT_EQ(chosen(project, {100, 0}, {130, 260}), 0u) << "its arm turned, its stop set";
    project.panel.height = 265;
    EXPECT_EQ(chosen(project, {100, 0}, {100, 265}), 1u);
}

TEST(CutChoice,
     PutsSeenLinesOnASawThatWorksFromTheLayoutFace) {  // Expected from: the project file, version 1.
    Project project = oneLine();
    project.plan.prefer = Prefer::SeenLines;
    EXPECT_EQ(chosen(project, {100, 0}, {130, 500}), kRail);
    EXPECT_EQ(chosen(project, {100, 0}, {100, 500}), kSled);
}

TEST(CutChoice, ASledTakesASlightLeanOnAWedgeOnlyWhereNothingElseCan) {  // Expected from: common practice.
    Project project = oneLine();
    project.bench->saws = {project.bench->saws[kSled]};
    EXPECT_EQ(chosen(project, {100, 0}, {130, 500}), 0u);
    EXPECT_EQ(chosen(project, {100, 0}, {300, 500}), std::nullopt);
}

TEST(CutChoice, FindsNoneOnAnEmptyBench) {  // Expected from: nothing cuts without a saw.
    Project project = oneLine();
    project.bench->saws.clear();
    EXPECT_EQ(chosen(project, {0, 100}, {700, 100}), std::nullopt);
}

/// Level lines across 400 x 400 at these heights, the waste above them or below.
struct Asked {
    double at;
    Side side;
};
ChosenCuts chosenFor(Project& project, const std::vector<Asked>& kerfs) {
    std::vector<CutAsked> cuts;
    project.lines.clear();
    for (const Asked& kerf : kerfs) {
        LayoutLine& line = project.lines.emplace_back();
        line.id = "L" + std::to_string(cuts.size());
        cuts.push_back(cutAsked(project, cuts.size(), {0, kerf.at}, {400, kerf.at}, kerf.side));
    }
    return chooseCuts(project, cuts);
}

// Expected from: pencil. A fence at 90.0 cuts a kerf above 90 and one below 93.2 (93.2 - 3.2 = 90); a third
// below 200 needs 196.8.
TEST(CutChoice, KerfsOfOneSettingAreOneSetup) {
    Project project = oneLine(400, 400);
    const ChosenCuts two = chosenFor(project, {{90, Side::Left}, {93.2, Side::Right}});
    EXPECT_EQ(two.setups, 1);
    EXPECT_EQ(two.lowerBound, 1);
    const ChosenCuts three = chosenFor(project, {{90, Side::Left}, {93.2, Side::Right}, {200, Side::Right}});
    EXPECT_EQ(three.setups, 2);
    EXPECT_EQ(three.lowerBound, 2);
}

// Expected from: pencil. On a panel of 400 true all round kerfs above 100 and below 300 come out of one fence at
// 100.0, the panel turned end for end; with one reference edge they need 100.0 and 296.8.
TEST(CutChoice, TurnedEndForEndTwoKerfsAreOneSetup) {
    Project project = oneLine(400, 400);
    project.panel.squareCorner = SquareCorner::All;
    EXPECT_EQ(chosenFor(project, {{100, Side::Left}, {300, Side::Right}}).setups, 2);
    project.plan.prefer = Prefer::FewestSetups;
    EXPECT_EQ(chosenFor(project, {{100, Side::Left}, {300, Side::Right}}).setups, 1);
    project.panel.squareCorner = SquareCorner::Both;
    EXPECT_EQ(chosenFor(project, {{100, Side::Left}, {300, Side::Right}}).setups, 2);
}

// Expected from: the report: cut to marks each line is a set-up, both its sides one; with fences they are two
// (150.0 and 146.8). So a line with waste on both sides goes to the rail, one with waste on one side does not.
TEST(CutChoice, BothSidesOfALineAreOneSetupToMarks) {
    Project project = oneLine(400, 400);
    std::vector<CutAsked> cuts;
    for (const Side side : {Side::Left, Side::Right}) {
        cuts.push_back(cutAsked(project, 0, {0, 150}, {400, 150}, side));
    }
    const ChosenCuts chosen = chooseCuts(project, cuts);
    EXPECT_EQ(chosen.setups, 1);
    EXPECT_EQ(chosen.cuts.at(0).saw, kRail);
    cuts.pop_back();
    EXPECT_EQ(chooseCuts(project, cuts).cuts.at(0).saw, kRip);
}

// Expected from: pencil. A square line goes to the sled, one askew to the gauge: the same table saw. With another
// kerf on the sled its blade would have to be changed: then the gauge does both, as many set-ups, one machine fewer.
TEST(CutChoice, OneMachineIsBetterThanTwo) {
    Project project = oneLine(400, 400);
    project.lines.push_back(project.lines[0]);
    project.lines[1].id = "B";
    const auto both = [&] {
        return chooseCuts(project, {cutAsked(project, 0, {100, 0}, {100, 400}, Side::Right),
                                    cutAsked(project, 1, {200, 0}, {230, 400}, Side::Right)});
    };
    EXPECT_EQ(both().cuts.at(0).saw, kSled);
    EXPECT_EQ(both().cuts.at(1).saw, kGauge);
    project.bench->saws[kSled].kerf = 2.4;
    EXPECT_EQ(both().cuts.at(0).saw, kGauge);
    EXPECT_EQ(both().setups, 2);
}

}  // namespace
}  // namespace kerfwall

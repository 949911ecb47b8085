// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/saw_choice.h"

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

std::optional<std::size_t> chosen(const Project& project, Point from, Point to) {
    return chooseSaws(project, {{0, from, to}}).at(0);
}

// Expected from: what each saw is for: along the fence, square on the sled, askew on the gauge to its 60
// degrees, steeper on the rail.
TEST(SawChoice, GoesByTheLinesDirection) {
    const Project project = oneLine();
    EXPECT_EQ(chosen(project, {0, 100}, {700, 100}), kRip);
    EXPECT_EQ(chosen(project, {100, 500}, {100, 0}), kSled);
    EXPECT_EQ(chosen(project, {100, 0}, {130, 500}), kGauge);
    EXPECT_EQ(chosen(project, {0, 100}, {700, 160}), kRail);
}

// Expected from: an upright line runs along the left edge; a level one is square to it, and with 700 longer
// than the sled's 600, so the gauge takes it.
TEST(SawChoice, GoesByTheReferenceEdge) {
    Project project = oneLine();
    project.panel.referenceEdge = Edge::Left;
    EXPECT_EQ(chosen(project, {100, 500}, {100, 0}), kRip);
    EXPECT_EQ(chosen(project, {0, 100}, {700, 100}), kGauge);
    project.panel.width = 600;
    EXPECT_EQ(chosen(project, {0, 100}, {600, 100}), kSled);
}

// Expected from: the fence comes to 600; 700 high, a line at 650 is 50 from the top edge, which may lie on
// the fence only on a panel true at all corners.
TEST(SawChoice, LeavesTheFenceWhereItDoesNotReach) {
    Project project = oneLine(700, 700);
    EXPECT_EQ(chosen(project, {0, 600}, {700, 600}), kRip);
    EXPECT_EQ(chosen(project, {0, 650}, {700, 650}), kRail);
    project.panel.squareCorner = SquareCorner::All;
    EXPECT_EQ(chosen(project, {0, 650}, {700, 650}), kRip);
}

TEST(SawChoice, TakesTheSawTheLineNames) {  // Expected from: the project file, version 1.
    Project project = oneLine();
    project.lines[0].saw = "rail";
    EXPECT_EQ(chosen(project, {0, 100}, {700, 100}), kRail);
}

TEST(SawChoice, AStoppedKerfNeedsASawThatCanStop) {  // Expected from: the table saws cannot.
    Project project = oneLine();
    project.lines[0].extent = Extent::Stopped;
    EXPECT_EQ(chosen(project, {0, 100}, {700, 100}), kRail);
    project.bench->saws.resize(3);
    EXPECT_EQ(chosen(project, {0, 100}, {700, 100}), std::nullopt);
}

// Expected from: a mitre saw of 300 less its shallow end, sqrt(6 (216 - 6)) = 35.5: 264.5.
TEST(SawChoice, PlansABenchWithoutATableSaw) {
    Project project = oneLine(400, 260);
    Saw mitre;
    mitre.id = "mitre";
    mitre.kind = SawKind::SlidingMitre;
    mitre.blade = 216;
    mitre.maxCut = 300;
    project.bench->saws = {mitre, project.bench->saws[kRail]};
    EXPECT_EQ(chosen(project, {100, 0}, {100, 260}), 0u);
    EXPECT_EQ(chosen(project, {0, 100}, {400, 100}), 1u);
    EXPECT_EQ(chosen(project, {100, 0}, {130, 260}), 1u);
    project.panel.height = 265;
    EXPECT_EQ(chosen(project, {100, 0}, {100, 265}), 1u);
}

TEST(SawChoice,
     PutsSeenLinesOnASawThatWorksFromTheLayoutFace) {  // Expected from: the project file, version 1.
    Project project = oneLine();
    project.plan.prefer = Prefer::SeenLines;
    EXPECT_EQ(chosen(project, {100, 0}, {130, 500}), kRail);
    EXPECT_EQ(chosen(project, {100, 0}, {100, 500}), kSled);
}

TEST(SawChoice, ASledTakesASlightLeanOnAWedgeOnlyWhereNothingElseCan) {  // Expected from: common practice.
    Project project = oneLine();
    project.bench->saws = {project.bench->saws[kSled]};
    EXPECT_EQ(chosen(project, {100, 0}, {130, 500}), 0u);
    EXPECT_EQ(chosen(project, {100, 0}, {300, 500}), std::nullopt);
}

TEST(SawChoice, FindsNoneOnAnEmptyBench) {  // Expected from: nothing cuts without a saw.
    Project project = oneLine();
    project.bench->saws.clear();
    EXPECT_EQ(chosen(project, {0, 100}, {700, 100}), std::nullopt);
}

}  // namespace
}  // namespace kerfwall

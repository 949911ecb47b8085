// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>

#include "core/geometry/solve.h"
#include "core/shop/remedies.h"
#include "tests/core/geometry/projects.h"
#include "tests/core/shop/finding_fixture.h"

// What is offered for edges that are not true, narrow kerfs, wide drills, low bands and small panels. Each remedy was
// tried: its project no longer has the finding.
namespace kerfwall::test {
namespace {

using testing_bench::only;

std::vector<Remedy> mended(const Project& project, const std::string& code) {
    const Solved solved = solve(project);
    const auto found = only(findings(project, solved), code);
    EXPECT_FALSE(found.empty()) << "no " << code;
    const auto all = found.empty() ? std::vector<Remedy>{} : remedies(project, solved, found.front());
    for (const Remedy& remedy : all) {
        if (!remedy.clears) continue;
        EXPECT_LT(only(findings(remedy.project, remedy.solved), code).size(), found.size()) << remedy.words;
    }
    return all;
}

bool offers(const std::vector<Remedy>& all, const std::string& words) {
    return std::ranges::find(all, words, &Remedy::words) != all.end();
}

std::string wordsOf(const std::vector<Remedy>& all) {
    std::string words;
    for (const Remedy& remedy : all) words += remedy.words + "\n";
    return words;
}

/// The window's right wall laid 110 from the right edge, which is not true: 290 from the left.
Project fromTheRight() {
    Project project = windowProject();
    project.lines[3] = offsetLine("D", Edge::Right, 110);
    return project;
}

// Expected from: pencil: 400 - 110.
TEST(PlanRemedies, TheLineIsLaidFromTheEdgeThatIsTrueOrTheCornerIsTrued) {
    const auto all = mended(fromTheRight(), "edge-untrue");
    EXPECT_TRUE(offers(all, "Lay D 290.0 mm from the left edge")) << wordsOf(all);
    EXPECT_TRUE(offers(all, "True the bottom-right corner to 90° and say so")) << wordsOf(all);
    ASSERT_FALSE(all.empty());
    EXPECT_EQ(all[0].project.lines[3].place, Place(ByOffset{Edge::Left, 290}));
    EXPECT_EQ(all[0].solved.cutouts[0].drawnArea, solve(fromTheRight()).cutouts[0].drawnArea);
}

// Expected from: laid from the left edge D would run the other way, and what hangs on it would jump.
TEST(PlanRemedies, ALineThatOthersHangOnStaysWhereItIs) {
    Project project = fromTheRight();
    project.lines.push_back(offsetLine("E", LineId("D"), 40));
    const auto all = mended(project, "edge-untrue");
    EXPECT_FALSE(offers(all, "Lay D 290.0 mm from the left edge")) << wordsOf(all);
    EXPECT_TRUE(offers(all, "True the bottom-right corner to 90° and say so")) << wordsOf(all);
}

TEST(PlanRemedies, AKerfAgainstAnUntrueEdgeGoesToAnotherSaw) {  // Expected from: the sled cuts square to the edge.
    Project project = windowProject();
    project.lines[2].saw = "rip";
    EXPECT_TRUE(offers(mended(project, "edge-untrue"), "Saw C with saw sled, whose kerf is 3.2 mm"));
    const auto all = mended(project, "bench-limit");
    EXPECT_TRUE(offers(all, "True all four corners of the panel, 400.0 mm × 250.0 mm, to 90° and say so")) << wordsOf(all);
}

TEST(PlanRemedies, NarrowKerfsAreSawnWithAWiderSaw) {  // Expected from: C and D at the sled's 1.8; the gauge has 3.2.
    Project project = windowProject();
    project.bench = stockBench();
    project.bench->saws.at(1).kerf = 1.8;
    project.lines[2].saw = project.lines[3].saw = "sled";
    const auto all = mended(project, "rough-room");
    EXPECT_TRUE(std::ranges::any_of(all, [](const Remedy& is) { return is.words.starts_with("Saw "); })) << wordsOf(all);
}

TEST(PlanRemedies, AWideDrillIsChangedForASmallerOneOrForALargerBit) {  // Expected from: what is on the bench.
    Project project = windowProject();
    setTools(project, 2.2, 6.35);
    project.bench->bores = {6, 20};
    project.bench->bits = {10};
    const auto all = mended(project, "drill-wide");
    EXPECT_TRUE(offers(all, "Drill the relief holes with 6.0 mm")) << wordsOf(all);
    EXPECT_TRUE(offers(all, "Trim with the bit of 10.0 mm")) << wordsOf(all);
    EXPECT_TRUE(offers(all, "Drill no relief holes of 8.0 mm; saw on into the corners")) << wordsOf(all);
}

// Expected from: pencil: 12 - 5.5.
TEST(PlanRemedies, ALowBandIsRaisedByShallowerKerfs) {
    Project project = windowProject();
    project.kerfDepth = 7;
    project.cutouts[0].corners = {{"A", "C", 20, ""}};
    EXPECT_TRUE(offers(mended(project, "web-ride"), "Saw the kerfs 6.5 mm deep"));
}

TEST(PlanRemedies, ASmallPanelGoesToTheRail) {  // Expected from: the rail is clamped to it.
    Project project = panelOf(299, 250);
    project.lines = {offsetLine("A", Edge::Bottom, 90), offsetLine("B", Edge::Bottom, 146)};
    project.cutouts = {cutoutAt("slot", {{150, 120}})};
    const auto all = mended(project, "small-stock");
    EXPECT_TRUE(offers(all, "Saw A and B with saw rail, whose kerf is 2.2 mm")) << wordsOf(all);
}

}  // namespace
}  // namespace kerfwall::test

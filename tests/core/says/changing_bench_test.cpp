// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/changing_bench.h"

#include <gtest/gtest.h>

#include "core/says/tool_ranges.h"
#include "core/says/typed_list.h"

namespace kerfwall {
namespace {

Project panelWithLine(const std::string& saw) {
    Project project;
    project.panel.width = 400;
    project.panel.height = 250;
    project.panel.thickness = 12;
    LayoutLine line;
    line.id = "A";
    line.place = ByOffset{Edge::Bottom, 90};
    line.saw = saw;
    project.lines = {line};
    return project;
}

// Expected from: the project file: a project that names no bench is made with the stock bench.
TEST(ChangingBench, TheStockBenchBecomesTheProjectsOwn) {
    Project project = panelWithLine("rail");
    ownBench(project).cornerDrill = 6;
    Bench expected = stockBench();
    expected.cornerDrill = 6;
    EXPECT_EQ(project.bench, expected);
}

// Expected from: the project file: each saw has an id of its own.
TEST(ChangingBench, AnAddedSawGetsAFreeName) {
    const Project once = withSaw(panelWithLine("rail"), SawKind::GuideRail);
    const Project twice = withSaw(once, SawKind::GuideRail);
    ASSERT_EQ(twice.bench->saws.size(), 6u);
    EXPECT_EQ(twice.bench->saws[4].id, "rail-2");
    EXPECT_EQ(twice.bench->saws[5].id, "rail-3");
    EXPECT_EQ(twice.bench->saws[5].kerf, stockSaw(SawKind::GuideRail).kerf);
}

// Expected from: the project file: a line may name a saw that is on the bench, and no other.
TEST(ChangingBench, ALineForgetsASawThatIsTakenAway) {
    EXPECT_EQ(withoutSaw(panelWithLine("rail"), 3).lines[0].saw, std::nullopt);
    EXPECT_EQ(withoutSaw(panelWithLine("rail"), 0).lines[0].saw, "rail");
    EXPECT_EQ(withoutSaw(panelWithLine("rail"), 0).bench->saws.size(), 3u);
}

TEST(ChangingBench, ALineFollowsASawsNewName) {
    const auto renamed = withSawCalled(panelWithLine("rail"), 3, "plunge saw");
    ASSERT_TRUE(renamed);
    EXPECT_EQ(renamed->lines[0].saw, "plunge saw");
    EXPECT_EQ(renamed->bench->saws[3].id, "plunge saw");
}

TEST(ChangingBench, ASawIsNotCalledNothingOrAsAnother) {
    EXPECT_EQ(withSawCalled(panelWithLine("rail"), 3, "").error(), "A saw needs a name; lines name it by that.");
    EXPECT_EQ(withSawCalled(panelWithLine("rail"), 3, "sled").error(),
              "There is a saw called sled already; give this one another name.");
    EXPECT_TRUE(withSawCalled(panelWithLine("rail"), 3, "rail"));
}

// Expected from: pencil. A blade of 80 is not more than twice a kerf of 40.
TEST(ChangingBench, ABenchMustSuitTheKerfsDepth) {
    Project project = panelWithLine("rail");
    project.panel.thickness = 60;
    project.kerfDepth = 40;
    Bench bench;
    bench.saws = {stockSaw(SawKind::SlidingMitre)};
    bench.saws[0].blade = 80;
    EXPECT_EQ(withBench(project, bench).error(),
              "The blade of saw mitre is not more than twice as wide as the kerfs are deep, 40.0 mm; set a lesser depth first.");
    project.kerfDepth = 39;
    const auto taken = withBench(project, bench);
    ASSERT_TRUE(taken);
    EXPECT_EQ(taken->lines[0].saw, std::nullopt);
}

// Expected from: pencil; 1/2 in is 12.7 mm.
TEST(TypedList, SizesAreSetApartBySemicolons) {
    EXPECT_EQ(readLengths("20; 25,5 ;30", Units::Millimetres, kDrillDiameter), (std::vector<double>{20, 25.5, 30}));
    EXPECT_EQ(readLengths("1/2; 1", Units::Inches, kDrillDiameter), (std::vector<double>{12.7, 25.4}));
    EXPECT_EQ(readLengths(" ", Units::Millimetres, kDrillDiameter), std::vector<double>{});
    EXPECT_EQ(readLengths("20;", Units::Millimetres, kDrillDiameter), std::vector<double>{20});
}

TEST(TypedList, ABadSizeIsToldByItsPlace) {
    EXPECT_EQ(readLengths("20; 400", Units::Millimetres, kDrillDiameter).error(),
              "The 2nd size, \"400\": a drill's or bore's diameter is 1 to 300 mm.");
    EXPECT_TRUE(readLengths("20; ; 30", Units::Millimetres, kDrillDiameter).error().starts_with("The 2nd size, \"\": "));
    EXPECT_TRUE(readLengths("big", Units::Millimetres, kDrillDiameter).error().starts_with("The 1st size, \"big\": "));
}

}  // namespace
}  // namespace kerfwall

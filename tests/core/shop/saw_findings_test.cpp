// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>

#include "core/geometry/solve.h"
#include "core/shop/finding_groups.h"
#include "tests/core/geometry/projects.h"
#include "tests/core/shop/finding_fixture.h"

namespace kerfwall::test {
namespace {

using testing_bench::only;
using testing_bench::saysANumber;

std::vector<Finding> minded(const Project& project) { return sawFindings(project, solve(project)); }

Project withSaw(const LineId& line, SawKind kind, double Saw::* limit, double value) {
    Project project = windowProject();
    project.bench = stockBench();
    Saw& saw = *std::ranges::find(project.bench->saws, kind, &Saw::kind);
    saw.*limit = value;
    std::ranges::find(project.lines, line, &LayoutLine::id)->saw = saw.id;
    return project;
}

// Expected from: the project file: no saw, then kerf 3.2 and bench-limit, always a stop.
TEST(SawFindings, ABenchWithoutASawIsToldForEveryKerf) {
    Project project = windowProject();
    project.bench = Bench{};
    const Solved solved = solve(project);
    EXPECT_EQ(findLine(solved, "A")->kerfs.at(0).width, 3.2);
    const std::vector<Finding> found = sawFindings(project, solved);
    ASSERT_EQ(found.size(), 4u);
    EXPECT_EQ(found[0].code, "bench-limit");
    EXPECT_EQ(found[0].severity, Severity::Stop);
    EXPECT_EQ(found[0].lines, (std::vector<LineId>{"A"}));
    EXPECT_NE(found[0].text.find("400.0 mm along this line"), std::string::npos) << found[0].text;
}

TEST(SawFindings, TheStockBenchCutsAWindow) { EXPECT_TRUE(minded(windowProject()).empty()); }

// Expected from: pencil: lines A and C run 400 and 250 on the panel, A lies 90 from the edge on the fence.
TEST(SawFindings, ANamedSawBeyondItsLimitIsToldWithThatLimit) {
    struct Case {
        LineId line;
        SawKind kind;
        double Saw::* limit;
        double asked, most;
        const char* words;
    };
    for (const Case& is : {Case{"A", SawKind::RipFence, &Saw::maxFence, 90, 89, "its fence opens to 89.0 mm"},
                           Case{"C", SawKind::CrosscutSled, &Saw::maxCut, 250, 249, "it cuts 249.0 mm at most"},
                           Case{"A", SawKind::GuideRail, &Saw::railLength, 400, 399, "its rail lets it cut 399.0 mm"}}) {
        const auto found = minded(withSaw(is.line, is.kind, is.limit, is.most));
        ASSERT_EQ(found.size(), 1u) << is.words;
        EXPECT_EQ(found[0].code, "bench-limit");
        EXPECT_EQ(found[0].severity, Severity::Stop);
        EXPECT_EQ(found[0].lines, (std::vector<LineId>{is.line}));
        EXPECT_NEAR(found[0].value.value_or(0), is.asked, 1e-9);
        EXPECT_EQ(found[0].limit, is.most);
        EXPECT_EQ(found[0].unit, "mm");
        EXPECT_NE(found[0].text.find(is.words), std::string::npos) << found[0].text;
        EXPECT_TRUE(minded(withSaw(is.line, is.kind, is.limit, is.asked)).empty()) << is.words;
    }
}

// Expected from: a rip fence needs an edge along the line. Upright C has the left and the right one, which are true
// only on a panel true all round.
TEST(SawFindings, ALineThatWouldBeCutAgainstAnUntrueEdgeIsTold) {
    Project project = withSaw("C", SawKind::RipFence, &Saw::maxFence, 600);
    const auto found = minded(project);
    EXPECT_EQ(only(found, "bench-limit").size(), 1u);
    const auto untrue = only(found, "edge-untrue");
    ASSERT_EQ(untrue.size(), 1u);
    EXPECT_EQ(untrue[0].severity, Severity::Care);
    EXPECT_EQ(untrue[0].lines, (std::vector<LineId>{"C"}));
    EXPECT_TRUE(saysANumber(untrue[0].text)) << untrue[0].text;
    project.panel.squareCorner = SquareCorner::All;
    EXPECT_TRUE(only(minded(project), "edge-untrue").empty());
    EXPECT_TRUE(only(minded(project), "bench-limit").empty());
}

/// A slot across a whole panel, between lines 30 and 60 above the bottom, cut on the rip fence.
Project slotAcross(double width, double height) {
    Project project = panelOf(width, height);
    project.lines = {offsetLine("A", Edge::Bottom, 30), offsetLine("B", Edge::Bottom, 60)};
    project.cutouts = {cutoutAt("slot", {{width / 2, 45}})};
    return project;
}

std::vector<Finding> small(const Project& project) { return only(minded(project), "small-stock"); }

// Expected from: the report's table: care under 300 or under the size across, stop under 150. On a limit is not under.
TEST(SawFindings, ASmallPanelOnTheRipFence) {
    EXPECT_TRUE(small(slotAcross(300, 100)).empty());
    const auto care = small(slotAcross(299.9, 100));
    ASSERT_EQ(care.size(), 1u);
    EXPECT_EQ(care[0].severity, Severity::Care);
    EXPECT_EQ(care[0].value, 299.9);
    EXPECT_EQ(care[0].limit, 300);
    EXPECT_EQ(care[0].lines, (std::vector<LineId>{"A", "B"}));
    EXPECT_EQ(care[0].at, (Point{149.95, 0}));
    EXPECT_TRUE(saysANumber(care[0].text));
    EXPECT_EQ(small(slotAcross(150, 100)).at(0).severity, Severity::Care);
    const auto stop = small(slotAcross(149.9, 100));
    ASSERT_EQ(stop.size(), 1u);
    EXPECT_EQ(stop[0].severity, Severity::Stop);
    EXPECT_EQ(stop[0].limit, 150);
}
TEST(SawFindings, APanelThatIsDeeperThanItsEdgeOnTheFence) {
    EXPECT_TRUE(small(slotAcross(350, 350)).empty());
    const auto care = small(slotAcross(350, 350.1));
    ASSERT_EQ(care.size(), 1u);
    EXPECT_EQ(care[0].severity, Severity::Care);
    EXPECT_EQ(care[0].limit, 350.1);
    EXPECT_NE(care[0].text.find("its size across"), std::string::npos) << care[0].text;
}
TEST(SawFindings, TheProjectsOwnLimitForSmallStockGoesFirst) {
    Project project = slotAcross(200, 350);
    project.limits["small-stock"].care = 200;
    EXPECT_TRUE(small(project).empty());
    project.limits["small-stock"].care = 201;
    EXPECT_EQ(small(project).at(0).limit, 201);
}
// Expected from: a rail is clamped on the panel, however small.
TEST(SawFindings, SmallStockIsOnlyToldAtTheRipFence) {
    Project project = slotAcross(140, 100);
    for (LayoutLine& line : project.lines) line.saw = "rail";
    EXPECT_TRUE(small(project).empty());
}

}  // namespace
}  // namespace kerfwall::test

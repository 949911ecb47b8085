// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/shop/finding_fixture.h"

namespace kerfwall {
namespace {

using namespace testing_bench;

// A window of 100 x 50 on a panel of 400 x 250 x 12, corner 0 (lines C and A) as each test wants it.
struct CornerBench {
    Project project = panelOf(400, 250, 12);
    Solved solved = answerFor(project);

    explicit CornerBench(double width = 3.2) {
        solved.lines = {lineWithKerf("A", {0, 100}, {400, 100}, Side::Left, width),
                        lineWithKerf("B", {0, 150}, {400, 150}, Side::Right, width),
                        lineWithKerf("C", {150, 250}, {150, 0}, Side::Left, width),
                        lineWithKerf("D", {250, 250}, {250, 0}, Side::Right, width)};
        put(project, solved, rectangle("window", {{150, 100}, {250, 150}}, 6.35));
    }
    SolvedCutout& cutout() { return solved.cutouts.front(); }
    Corner& corner() { return cutout().corners.front(); }
    void hollow(double depth) {
        Hollow dip;
        dip.at = {148, 100};
        dip.depth = depth;
        dip.wall = "A";
        dip.lips = {"C", "A"};
        dip.corner = 0;
        cutout().hollows = {dip};
    }
    [[nodiscard]] std::vector<Finding> minded(const std::string& code) const {
        return only(findings(project, solved), code);
    }
};

TEST(CornerFindings, ASoundWindowHasNone) {
    const CornerBench bench;
    EXPECT_TRUE(findings(bench.project, bench.solved).empty());
}

// Expected from: the limits 0.05 and 0.3 mm, common practice, no source.
TEST(CornerFindings, GrooveFiresBeyondItsLimitsAndNotOnThem) {
    CornerBench bench;
    bench.hollow(0.05);
    EXPECT_TRUE(bench.minded("corner-groove").empty());
    bench.hollow(0.0501);
    ASSERT_EQ(bench.minded("corner-groove").size(), 1u);
    EXPECT_EQ(bench.minded("corner-groove")[0].severity, Severity::Care);
    EXPECT_EQ(bench.minded("corner-groove")[0].limit, 0.05);
    bench.hollow(0.3);
    EXPECT_EQ(bench.minded("corner-groove")[0].severity, Severity::Care);
    bench.hollow(0.3001);
    EXPECT_EQ(bench.minded("corner-groove")[0].severity, Severity::Stop);
    EXPECT_EQ(bench.minded("corner-groove")[0].limit, 0.3);
    EXPECT_EQ(bench.minded("corner-groove")[0].value, 0.3001);
}

// Expected from: r >= w / (1 + cos a) at 120 degrees: bit 2 * 3.2 / 0.5 = 12.8, kerf 6.35 * 0.5 = 3.175,
// so 3.1.
TEST(CornerFindings, GrooveNamesTheBitAndTheKerfThatMendIt) {
    CornerBench bench;
    bench.hollow(0.2);
    bench.corner().angle = 120;
    bench.corner().regime = Regime::Pivot;
    const Finding finding = bench.minded("corner-groove").at(0);
    EXPECT_NE(
        finding.text.find("A bit of 12.8 mm or more leaves this corner clean; or a kerf of 3.1 mm or less."),
        std::string::npos)
        << finding.text;
    EXPECT_EQ(finding.lines, (std::vector<LineId>{"C", "A"}));
    EXPECT_EQ(finding.cutout, "window");
    EXPECT_EQ(finding.at, (Point{148, 100}));
}

// Expected from: pencil. At 170 degrees 1 + cos is 0.0152: a bit of 421 mm and a kerf of 0.096 mm are no
// tools; sound up to acos(3.2 / 6.35 - 1) = 119.7 degrees.
TEST(CornerFindings, GrooveNamesTheAngleWhereNoToolMendsIt) {
    CornerBench bench;
    bench.hollow(0.2);
    bench.corner().angle = 170;
    bench.corner().regime = Regime::DeepDip;
    const std::string text = bench.minded("corner-groove").at(0).text;
    EXPECT_NE(text.find("119.7°"), std::string::npos) << text;
    EXPECT_EQ(text.find("421"), std::string::npos) << text;
}

// Expected from: pencil. At 90 degrees the corner's own kerfs, 3.2, are narrower than r = 6.35: it is J's.
TEST(CornerFindings, GrooveNamesTheStrangerWhereTheOwnKerfsAreSound) {
    CornerBench bench;
    bench.hollow(0.2);
    bench.cutout().hollows[0].lips = {"A", "J"};
    EXPECT_NE(bench.minded("corner-groove").at(0).text.find("Stop the kerf of J before this corner"),
              std::string::npos);
}

// Expected from: w >= 2 r: 13 against 12.7; 90 degrees wants a bit of 26 or a kerf of 6.3 (6.35 rounded
// down).
TEST(CornerFindings, ABearingThatFallsInStops) {
    CornerBench bench(13);
    bench.corner().regime = Regime::FallsIn;
    const Finding finding = bench.minded("corner-groove").at(0);
    EXPECT_EQ(finding.severity, Severity::Stop);
    EXPECT_EQ(finding.value, 13);
    EXPECT_EQ(finding.limit, 12.7);
    EXPECT_NE(finding.text.find("A bit of 26.0 mm or more"), std::string::npos) << finding.text;
}

// Expected from: w > R (1 + cos a). A bore of radius 10 at 135 degrees has room for 10 * 0.292893 = 2.929;
// radius 11 for 3.222. With 3.2 the first overruns, the second does not.
TEST(CornerFindings, KerfsThatOverrunABoreAreMinded) {
    CornerBench bench;
    bench.corner().angle = 135;
    bench.corner().regime = Regime::Bored;
    bench.corner().boreRadius = 10;
    bench.corner().radius = 10;
    const Finding finding = bench.minded("corner-groove").at(0);
    EXPECT_EQ(finding.severity, Severity::Care);
    EXPECT_NEAR(*finding.limit, 10 * (1 - std::sqrt(0.5)), 1e-12);
    bench.corner().boreRadius = 11;
    bench.corner().radius = 11;
    EXPECT_TRUE(bench.minded("corner-groove").empty());
}

// Expected from: pencil. Two corners of 90 degrees need 2 r = 12.7 of the wall between them.
TEST(CornerFindings, OverlapFiresWhereTheWallIsShorterThanBothArcs) {
    for (const double width : {12.7, 12.69}) {
        Project project = panelOf(400, 250, 12);
        Solved solved = answerFor(project);
        put(project, solved, rectangle("slot", {{150, 100}, {150 + width, 150}}, 6.35));
        const auto some = only(findings(project, solved), "corner-overlap");
        EXPECT_EQ(some.size(), width < 12.7 ? 2u : 0u);
        for (const Finding& finding : some) {
            EXPECT_EQ(finding.severity, Severity::Care);
            EXPECT_NEAR(*finding.value, 12.7, 1e-12);
            EXPECT_NEAR(*finding.limit, 12.69, 1e-12);
            EXPECT_NE(finding.text.find("A bit of 12.6 mm or less"), std::string::npos) << finding.text;
        }
    }
}

// Expected from: the limit of 10 mm, common practice; the arc's distance grows with the bit: 12.7 * 10
// / 12.5.
TEST(CornerFindings, APointedCornerIsMindedBeyondTen) {
    CornerBench bench;
    bench.corner().shortBy = 10;
    EXPECT_TRUE(bench.minded("corner-short").empty());
    bench.corner().shortBy = 12.5;
    bench.corner().angle = 39;
    const Finding finding = bench.minded("corner-short").at(0);
    EXPECT_EQ(finding.severity, Severity::Care);
    EXPECT_EQ(finding.value, 12.5);
    EXPECT_EQ(finding.limit, 10);
    EXPECT_NE(finding.text.find("a bit of 10.1 mm or less"), std::string::npos) << finding.text;
    bench.corner().regime = Regime::Bored;
    EXPECT_TRUE(bench.minded("corner-short").empty());
}

// Expected from: pencil. 6.35 (sqrt 2 - 1) = 2.63 short at each corner of 90 degrees.
TEST(CornerFindings, AWindowWantedSharpGetsOneNote) {
    CornerBench bench;
    bench.project.cutouts[0].wanted = Wanted{{{150, 100}, {250, 100}, {250, 150}, {150, 150}}, 0, ""};
    const auto some = bench.minded("corner-short");
    ASSERT_EQ(some.size(), 1u);
    EXPECT_EQ(some[0].severity, Severity::Note);
    EXPECT_NE(some[0].text.find("2.63 mm"), std::string::npos) << some[0].text;
    bench.project.cutouts[0].wanted->cornerRadius = 6.35;
    EXPECT_TRUE(bench.minded("corner-short").empty());
}

// Expected from: pencil. The project's own limits count: 0.1 instead of 0.05.
TEST(CornerFindings, TheProjectsLimitsCount) {
    CornerBench bench;
    bench.hollow(0.09);
    EXPECT_EQ(bench.minded("corner-groove").size(), 1u);
    bench.project.limits["corner-groove"].care = 0.1;
    EXPECT_TRUE(bench.minded("corner-groove").empty());
    bench.project.limits["corner-groove"].stop = 0.08;
    EXPECT_EQ(bench.minded("corner-groove").at(0).severity, Severity::Stop);
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/shop/finding_fixture.h"

namespace kerfwall {
namespace {

using namespace testing_bench;

// Expected from: sqrt(d (D - d)), 160 and 6: 30.397.
const double kRunOut = std::sqrt(6.0 * 154.0);

// Window "lower" and, `apart` above it, window "upper". The wall C of the lower one is cut by a stopped kerf:
// its line runs up at x = 150, full depth from 106.35 to 143.65, cut with the stock rail saw.
struct StoppedBench {
    Project project = panelOf(400, 400, 18);
    Solved solved = answerFor(project);

    explicit StoppedBench(double apart) {
        SolvedLine line = lineWithKerf("C", {150, 0}, {150, 400}, Side::Right);
        Kerf& kerf = line.kerfs.front();
        kerf.stopped = true;
        kerf.saw = 3;
        kerf.fullFrom = 106.35;
        kerf.fullTo = 143.65;
        kerf.surfaceFrom = kerf.fullFrom - kRunOut;
        kerf.surfaceTo = kerf.fullTo + kRunOut;
        solved.lines = {line};
        put(project, solved, rectangle("lower", {{150, 100}, {250, 150}}, 6.35));
        put(project, solved, rectangle("upper", {{100, 150 + apart}, {300, 250 + apart}}, 6.35));
        for (Wall& wall : solved.cutouts[0].walls) {
            wall.waste = wall.line == "C" ? Side::Right : Side::Left;
        }
        for (Wall& wall : solved.cutouts[1].walls) {
            wall.line = "U" + wall.line;
        }
    }
    [[nodiscard]] std::vector<Finding> minded() const { return only(findings(project, solved), "runout"); }
};

// Expected from: pencil. The run-out ends at 143.65 + 30.397 = 174.047: 24.047 above the lower window.
TEST(RunoutFindings, AnotherCutoutIsACare) {
    EXPECT_TRUE(StoppedBench(24.1).minded().empty());
    const auto some = StoppedBench(24).minded();
    ASSERT_EQ(some.size(), 1u);
    EXPECT_EQ(some[0].severity, Severity::Care);
    EXPECT_EQ(some[0].cutout, "upper");
    EXPECT_NEAR(*some[0].value, kRunOut, 1e-9);
    EXPECT_NEAR(*some[0].limit, 30.35, 1e-6);
    EXPECT_EQ(some[0].lines, std::vector<LineId>{"C"});
    EXPECT_TRUE(saysANumber(some[0].text));
}

// Expected from: sqrt(R^2 - (R - d + z)^2) at z = 5, 1 above the floor: sqrt(80^2 - 79^2) = 12.610, so the
// wall is met where it stands within 143.65 + 12.610 - 150 = 6.260 of the lower window.
TEST(RunoutFindings, AWallAtTheBearingsHeightStops) {
    EXPECT_EQ(StoppedBench(6.3).minded().at(0).severity, Severity::Care);
    const Finding finding = StoppedBench(6.2).minded().at(0);
    EXPECT_EQ(finding.severity, Severity::Stop);
    EXPECT_EQ(finding.lines, (std::vector<LineId>{"C", "UA"}));
}

// Expected from: pencil. The lower window's own wall K, not of C's corners, 20 above the full depth's end;
// the walls A and B of its own corners do not count. A blade of 20^2 / 6 + 6 = 72.7 is no blade to propose.
TEST(RunoutFindings, AnOwnWallStopsButNotThoseOfItsCorners) {
    StoppedBench bench(100);
    EXPECT_TRUE(bench.minded().empty());
    Wall wall;
    wall.line = "K";
    wall.from = {200, 163.65};
    wall.to = {100, 163.65};
    bench.solved.cutouts[0].walls.push_back(wall);
    const Finding finding = bench.minded().at(0);
    EXPECT_EQ(finding.severity, Severity::Stop);
    EXPECT_EQ(finding.lines, (std::vector<LineId>{"C", "K"}));
    EXPECT_NEAR(*finding.limit, 20, 1e-6);
    EXPECT_NE(finding.text.find("Stop it 10.4 mm earlier"), std::string::npos) << finding.text;
    EXPECT_EQ(finding.text.find("blade"), std::string::npos) << finding.text;
}

// Expected from: pencil. A hole of 14 in 18 begins 2 below the face; there the round still reaches
// sqrt(80^2 - 76^2) = 24.980. From the left edge at y = 143.65 + 24.9 + 7 it is met, at + 25.1 it is not.
TEST(RunoutFindings, AClampHoleIsACareWhereTheRoundReachesIt) {
    for (const double up : {24.9, 25.1}) {
        StoppedBench bench(100);
        ClampHole hole;
        hole.edge = Edge::Left;
        hole.at = 400 - (143.65 + up + 7);
        hole.diameter = 14;
        hole.depth = 170;
        bench.project.clampHoles = {hole};
        const auto some = bench.minded();
        ASSERT_EQ(some.size(), up < 25 ? 1u : 0u);
        if (!some.empty()) {
            EXPECT_EQ(some[0].severity, Severity::Care);
            EXPECT_EQ(some[0].hole, 0u);
        }
    }
}

}  // namespace
}  // namespace kerfwall

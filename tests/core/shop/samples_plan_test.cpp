// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <array>
#include <fstream>
#include <sstream>

#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "core/shop/bore.h"
#include "core/shop/rough_cut.h"
#include "tests/core/shop/hand_built.h"

// The settings of every sample, worked by pencil from the distances in its file. All have kerfs 6 deep
// (a bearing of 5 and 1 more, less than half of 12 or 18), table-saw kerfs of 3.2, rail kerfs of 2.2, the
// bottom edge and the bottom-left corner true. Face down with the bottom edge near the operator the left end
// lies to the right, where the stop stands. Rip fence: y with the waste beyond, y - 3.2 with the waste
// between; stop likewise. Blade 6, on the sled 6 + 12 = 18.
namespace kerfwall {
namespace {

struct Sample {
    Project project;
    Solved solved;
    OrderOfWork order;
};

Sample sampleOf(const std::string& name) {
    std::ifstream file(std::string(KERFWALL_SAMPLES) + "/" + name + ".kerfwall");
    std::stringstream text;
    text << file.rdbuf();
    Sample sample;
    const auto project = readProject(text.str());
    EXPECT_TRUE(project) << name;
    sample.project = project.value_or(Project{});
    sample.solved = solve(sample.project);
    sample.order = plan(sample.project, sample.solved);
    return sample;
}

void expectFence(const Sample& sample, const LineId& line, double fence, double mark) {
    const WorkStep step = hand::stepFor(sample.order, line);
    EXPECT_EQ(step.saw, "rip") << line;
    EXPECT_NEAR(step.setting.fence.value_or(-1), fence, 1e-9) << line;
    EXPECT_NEAR(step.setting.bladeHeight.value_or(-1), 6, 1e-9) << line;
    EXPECT_FALSE(step.faceUp);
    EXPECT_EQ(step.against, Edge::Bottom);
    EXPECT_EQ(step.leads, Edge::Left);
    ASSERT_EQ(step.see.size(), 1u) << line;
    EXPECT_EQ(step.see[0].edge, Edge::Left);
    EXPECT_NEAR(step.see[0].at, mark, 1e-9) << line;
}

/// Stop, and the mark on the top edge, from its start at the right.
void expectStop(const Sample& sample, const LineId& line, const std::string& saw, double stop, double mark) {
    const WorkStep step = hand::stepFor(sample.order, line);
    EXPECT_EQ(step.saw, saw) << line;
    EXPECT_NEAR(step.setting.stop.value_or(-1), stop, 1e-4) << line;
    EXPECT_NEAR(step.setting.bladeHeight.value_or(-1), saw == "sled" ? 18 : 6, 1e-9) << line;
    EXPECT_FALSE(step.faceUp);
    EXPECT_EQ(step.against, Edge::Bottom);
    EXPECT_EQ(step.stopEdge, Edge::Left);
    EXPECT_EQ(step.stopSide, Side::Right);
    EXPECT_EQ(step.leads, Edge::Top);
    ASSERT_EQ(step.see.size(), 1u) << line;
    EXPECT_EQ(step.see[0].edge, Edge::Top);
    EXPECT_NEAR(step.see[0].at, mark, 1e-4) << line;
}

void expectTurn(const Sample& sample, const LineId& line, double angle, Side turn) {
    const WorkStep step = hand::stepFor(sample.order, line);
    EXPECT_NEAR(step.setting.angle.value_or(-1), angle, 1e-4) << line;
    EXPECT_EQ(step.turn, turn) << line;
}

std::vector<WorkStep> stepsOf(const Sample& sample, Task task) {
    std::vector<WorkStep> steps;
    for (const WorkStep& step : sample.order.steps) {
        if (step.task == task) {
            steps.push_back(step);
        }
    }
    return steps;
}

/// Bearing above the router table, wood left to trim; anticlockwise on a table. Of the steps that have a
/// setting.
void expectTrim(const Sample& sample, std::size_t cutouts, double bearing, double bite) {
    std::vector<WorkStep> steps = stepsOf(sample, Task::Trim);
    std::erase_if(steps, [](const WorkStep& step) { return !step.setting.bearing; });
    ASSERT_EQ(steps.size(), cutouts);
    for (const WorkStep& step : steps) {
        EXPECT_NEAR(step.setting.bearing.value_or(-1), bearing, 1e-9);
        EXPECT_NEAR(step.setting.bite.value_or(-1), bite, 1e-9);
        EXPECT_EQ(step.setting.feedClockwise, false);
        EXPECT_TRUE(step.faceUp);
    }
}

// Expected from: pencil. 250 - 101.85 = 148.15 and 250 - 148.15 = 101.85 from the top of the left edge;
// 148.15 - 3.2 = 144.95; 260.65 - 3.2 = 257.45; 400 - 139.35 = 260.65. Bearing 12 - 6 + 1, bite 3.2 - 0.5. A
// relief drill of 8: 6.35 (sqrt 2 - 1) + 4 + 0.5 = 7.130 from the corner, 7.130 / sqrt 2 = 5.042 from each
// line.
TEST(SamplesPlan, CrateEnd) {
    const Sample sample = sampleOf("crate_end");
    expectFence(sample, "A", 101.85, 148.15);
    expectFence(sample, "B", 144.95, 101.85);
    expectStop(sample, "C", "sled", 139.35, 260.65);
    expectStop(sample, "D", "sled", 257.45, 139.35);
    EXPECT_EQ(sample.order.setups, 4);
    expectTrim(sample, 1, 7, 2.7);
    const std::vector<WorkStep> drills = stepsOf(sample, Task::Drill);
    ASSERT_EQ(drills.size(), 1u);
    // 139.35 + 5.04 = 144.39, 101.85 + 5.04 = 106.89.
    EXPECT_NE(drills[0].text.find("144.39 mm from the left edge and 106.89 mm from the bottom edge"),
              std::string::npos)
        << drills[0].text;
}

// Expected from: pencil. 300 - 3.2 = 296.8, the mark 400 - 300 from the top. tan 3 = 0.0524078: L meets the
// bottom edge at 170 - 15.7223 = 154.2777, waste beyond, and the top at 170 + 5.2408 = 175.2408, 324.7592
// from the right. M is its mirror image: at the bottom 345.7223, waste towards the stop, less 3.2 / cos 3
// = 3.2044: 342.5179; at the top 175.2408 from the right. Face down L leans to the left of the push: the
// gauge turns clockwise, for M anticlockwise. Bearing 18 - 6 + 1.
TEST(SamplesPlan, BenchLeg) {
    const Sample sample = sampleOf("bench_leg");
    expectFence(sample, "R", 296.8, 100);
    expectStop(sample, "L", "gauge", 154.2777, 324.7592);
    expectStop(sample, "M", "gauge", 342.5179, 175.2408);
    expectTurn(sample, "L", 3, Side::Right);
    expectTurn(sample, "M", 3, Side::Left);
    EXPECT_EQ(sample.order.setups, 3);
    expectTrim(sample, 1, 13, 2.7);
    const std::vector<WorkStep> holes = stepsOf(sample, Task::Hole);
    ASSERT_EQ(holes.size(), 2u);
    // 400 - 150 = 250 and 400 - 320 = 80 above the bottom-left corner; half of 18.
    EXPECT_NE(holes[0].text.find("60.0 mm deep"), std::string::npos);
    EXPECT_NE(holes[0].text.find("9.0 mm below the layout face"), std::string::npos);
    EXPECT_NE(holes[0].text.find("250.0 mm from the bottom-left corner"), std::string::npos) << holes[0].text;
    EXPECT_NE(holes[0].text.find("80.0 mm from the bottom-left corner"), std::string::npos) << holes[0].text;
}

void expectPlunge(const Sample& sample, const LineId& line, Side turn) {
    const WorkStep step = hand::stepFor(sample.order, line);
    EXPECT_EQ(step.saw, "rail");
    EXPECT_TRUE(step.faceUp);
    EXPECT_NEAR(step.setting.depth.value_or(-1), 6, 1e-9);
    ASSERT_TRUE(step.setting.plunge);
    EXPECT_NEAR(step.setting.plunge->fullFrom, 120.0316, 1e-3);
    EXPECT_NEAR(step.setting.plunge->fullTo, 180.2776, 1e-3);
    EXPECT_NEAR(step.setting.plunge->surfaceFrom, 89.6342, 1e-3);
    EXPECT_NEAR(step.setting.plunge->surfaceTo, 210.6750, 1e-3);
    EXPECT_EQ(step.leads, Edge::Top);
    expectTurn(sample, line, 56.3099, turn);
}

// Expected from: pencil. 210 - 3.2 = 206.8. N1 runs from (430, 0) over (370, 90) and (330, 150): 108.1665 and
// 180.2776 along it. Its slope is 1.5, the tip's angle 56.3099, half of it has tangent 0.535184: the bit's
// arc touches 6.35 / 0.535184 = 11.8651 from the tip, so full depth from 120.0316 to 180.2776; run-outs of
// sqrt(6 x 154) = 30.3974. Waste on its left, rail on the left of the cut: pushed against the line, from the
// top. N2 is its mirror image, run from the top with the waste on its right: from the top too. Kerf 2.2
// leaves 1.7 to trim, and at both tips 6.35 (1 - 0.47186) = 3.35 > 2.2 asks for sawing on.
TEST(SamplesPlan, StallPennant) {
    const Sample sample = sampleOf("stall_pennant");
    expectFence(sample, "B", 90, 210);
    expectFence(sample, "T", 206.8, 90);
    expectStop(sample, "L", "sled", 110, 390);
    expectPlunge(sample, "N1", Side::Right);
    expectPlunge(sample, "N2", Side::Left);
    EXPECT_EQ(sample.order.setups, 5);
    expectTrim(sample, 1, 7, 1.7);
    EXPECT_EQ(roughCutOf(sample.solved, sample.solved.cutouts.at(0)).sawOn.size(), 2u);
}

// Expected from: pencil. 260 - 3.2 = 256.8, 280 - 3.2 = 276.8. Bores of 50 touch both lines 25 from each:
// centres (145, 165), (255, 165), (145, 235), (255, 235); the hole saw of 50 is on the bench: two rows, fence 165 and 235,
// the second from the stop at 255 where the first ended. Up to a bore with the waste beyond the line (A, C) by 4 layers of
// 0.15 from 140.6 and 120.6, else peeled: B's wall from 259.4, D's from 279.4. Rests of sqrt(25^2 - 24.5^2) = 4.975.
TEST(SamplesPlan, RoundWindow) {
    const Sample sample = sampleOf("round_window");
    expectFence(sample, "A", 140, 260);
    expectFence(sample, "B", 256.8, 140);
    expectStop(sample, "C", "sled", 120, 280);
    expectStop(sample, "D", "sled", 276.8, 120);
    EXPECT_EQ(sample.order.setups, 4);
    const std::vector<WorkStep> bores = stepsOf(sample, Task::Bore);
    ASSERT_EQ(bores.size(), 2u);
    EXPECT_NEAR(bores[0].setting.fence.value_or(-1), 165, 1e-9);
    EXPECT_NEAR(bores[1].setting.fence.value_or(-1), 235, 1e-9);
    for (const auto& [row, stops] : {std::pair{0u, std::array{145.0, 255.0}}, std::pair{1u, std::array{255.0, 145.0}}}) {
        EXPECT_NE(bores[row].text.find("50.0 mm drill or hole saw"), std::string::npos);
        EXPECT_EQ(bores[row].against, Edge::Bottom);
        EXPECT_EQ(bores[row].stopSide, Side::Right);
        ASSERT_EQ(bores[row].bores.size(), 2u);
        for (const std::size_t i : {0u, 1u}) EXPECT_NEAR(bores[row].bores[i].centre.x, stops.at(i), 1e-9);
    }
    const auto says = [&](const LineId& line, const std::string& words) {
        const std::string text = hand::stepFor(sample.order, line).text;
        EXPECT_NE(text.find(words), std::string::npos) << text;
    };
    says("A", "set the fence 140.6 mm for the first cut and add up to 4 layers of tape");
    says("B", "stands at 259.4 mm, 259.55 mm, 259.7 mm, 259.85 mm and 260.0 mm");
    says("C", "set the stop 120.6 mm for the first cut");
    says("D", "stands at 279.4 mm, 279.55 mm, 279.7 mm, 279.85 mm and 280.0 mm");
    const std::string trim = stepsOf(sample, Task::Trim).at(0).text;
    EXPECT_NE(trim.find("up to 4.97 mm short of the bores at B with C, C with A, A with D and D with B"), std::string::npos) << trim;
    EXPECT_EQ(stepsOf(sample, Task::Hand).size(), 1u);
    EXPECT_TRUE(stepsOf(sample, Task::Drill).empty());
    expectTrim(sample, 1, 7, 2.7);
}

// Expected from: pencil. Waste above A and J, below B; right of C, E and G, left of D, F and H (681.8, further
// than the sled's stop comes, so the gauge takes it). S lies on x + y = 870 and meets the bottom edge's line 870 from the left end,
// waste towards it, less 3.2 / cos 45 = 4.5255: 865.4745; it leaves the panel at the top at x = 370, 330 from
// the right; going up it leans to the left, face down to the right: the gauge turns anticlockwise. The corner
// of H and J: a circle of 44, 22 - 8 = 14 to its near side, centre (663, 172). The slot is 10 wide: the bit
// of 12.7 does not fit.
TEST(SamplesPlan, MindThese) {
    const Sample sample = sampleOf("mind_these");
    expectFence(sample, "A", 120, 380);
    expectFence(sample, "B", 216.8, 280);
    expectFence(sample, "J", 150, 350);
    expectStop(sample, "C", "sled", 100, 600);
    expectStop(sample, "D", "sled", 236.8, 460);
    expectStop(sample, "E", "sled", 300, 400);
    expectStop(sample, "F", "sled", 306.8, 390);
    expectStop(sample, "G", "sled", 560, 140);
    expectStop(sample, "H", "gauge", 681.8, 15);
    expectStop(sample, "S", "gauge", 865.4745, 330);
    expectTurn(sample, "S", 45, Side::Left);
    EXPECT_EQ(sample.order.setups, 10);
    const std::vector<WorkStep> bores = stepsOf(sample, Task::Bore);
    ASSERT_EQ(bores.size(), 1u);
    EXPECT_NE(
        bores[0].text.find("from the pivot 14.0 mm to the near side of the cut, 22.0 mm to its far side"),
        std::string::npos);
    EXPECT_NE(bores[0].text.find("663.0 mm from the left edge and 172.0 mm from the bottom edge"),
              std::string::npos);
    expectTrim(sample, 2, 13, 2.7);
    EXPECT_EQ(stepsOf(sample, Task::Rough).size(), 2u);
}

// Expected from: law: no plan needs more set-ups than it makes, and none goes below the bound.
TEST(SamplesPlan, TheBoundIsNeverAboveTheSetups) {
    for (const std::string name : {"crate_end", "bench_leg", "stall_pennant", "round_window", "mind_these"}) {
        const Sample sample = sampleOf(name);
        EXPECT_LE(sample.order.lowerBound, sample.order.setups) << name;
        EXPECT_GT(sample.order.lowerBound, 0) << name;
    }
}

}  // namespace
}  // namespace kerfwall

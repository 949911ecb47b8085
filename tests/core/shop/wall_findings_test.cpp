// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "core/geometry/distance.h"
#include "tests/core/shop/finding_fixture.h"

namespace kerfwall {
namespace {

using namespace testing_bench;

struct WallBench {
    Project project = panelOf(400, 250, 12);
    Solved solved = answerFor(project);

    WallBench() { put(project, solved, rectangle("window", {{150, 100}, {250, 150}}, 6.35)); }
    SolvedCutout& cutout() { return solved.cutouts.front(); }
    [[nodiscard]] std::vector<Finding> minded(const std::string& code) const {
        return only(findings(project, solved), code);
    }
};

// Expected from: the limits 0.05 and 0.3 mm, common practice; the run-out sqrt(6 (160 - 6)) = 30.397 of the
// stock bench's rail saw, up to the next tenth.
TEST(WallFindings, NickFiresBeyondItsLimitsAndNamesTheKerfToStop) {
    WallBench bench;
    Hollow dip;
    dip.at = {250, 125};
    dip.wall = "D";
    dip.lips = {"J", "D"};
    dip.depth = 0.05;
    bench.cutout().hollows = {dip};
    EXPECT_TRUE(bench.minded("wall-nick").empty());
    bench.cutout().hollows[0].depth = 0.2;
    const Finding finding = bench.minded("wall-nick").at(0);
    EXPECT_EQ(finding.severity, Severity::Care);
    EXPECT_EQ(finding.lines, (std::vector<LineId>{"D", "J"}));
    EXPECT_EQ(finding.at, (Point{250, 125}));
    EXPECT_NE(finding.text.find("Stop the kerf of J with saw rail at least 30.4 mm before this wall"),
              std::string::npos)
        << finding.text;
    bench.cutout().hollows[0].depth = 0.31;
    EXPECT_EQ(bench.minded("wall-nick").at(0).severity, Severity::Stop);
    bench.cutout().hollows[0].corner = 2;
    EXPECT_TRUE(bench.minded("wall-nick").empty());
    EXPECT_EQ(bench.minded("corner-groove").size(), 1u);
}

// Expected from: pencil. Lost from (250, 110) to (250, 140): 30 mm.
TEST(WallFindings, ALostWallStops) {
    WallBench bench;
    bench.cutout().lost = {{"D", {250, 110}, {250, 140}}};
    const Finding finding = bench.minded("wall-lost").at(0);
    EXPECT_EQ(finding.severity, Severity::Stop);
    EXPECT_EQ(finding.value, 30);
    EXPECT_EQ(finding.at, (Point{250, 125}));
    EXPECT_TRUE(saysANumber(finding.text));
}

// Expected from: pencil. A 10 mm slot against a bit of 12.7: a line must move 2.7.
TEST(NarrowFindings, ABitThatDoesNotFitStopsAndNothingElseIsSaidOfTheCutout) {
    Project project = panelOf(400, 250, 12);
    Solved solved = answerFor(project);
    SolvedCutout slot = rectangle("slot", {{150, 100}, {160, 150}}, 4);
    slot.opening = slot.work = {};
    slot.parts = 0;
    slot.sizes = {{"C", "D", 10, {}, 3, 1}, {"A", "B", 50, {}, 0, 2}};
    put(project, solved, slot);
    const auto all = findings(project, solved);
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].code, "narrow");
    EXPECT_EQ(all[0].severity, Severity::Stop);
    EXPECT_EQ(all[0].value, 10);
    EXPECT_EQ(all[0].limit, 12.7);
    EXPECT_EQ(all[0].lines, (std::vector<LineId>{"C", "D"}));
    EXPECT_NE(all[0].text.find("A bit of less than 10.0 mm fits; or move a line by 2.7 mm or more."),
              std::string::npos)
        << all[0].text;
}

// Expected from: pencil. Two rooms of 60 x 50 joined by a neck of 9, from x = 210 to 230.
TEST(NarrowFindings, ANeckTheBitCannotPassStops) {
    Project project = panelOf(500, 250, 12);
    Solved solved = answerFor(project);
    SolvedCutout rooms = rectangle("rooms", {{150, 100}, {210, 150}}, 6.35);
    const SolvedCutout second = rectangle("rooms", {{230, 100}, {290, 150}}, 6.35);
    rooms.opening = makeOutline({rooms.opening.loops[0], second.opening.loops[0]});
    rooms.work = rooms.opening;
    rooms.walls.clear();
    rooms.corners.clear();
    const auto wall = [&](const LineId& line, Point from, Point to) {
        Wall one;
        one.line = line;
        one.from = from;
        one.to = to;
        rooms.walls.push_back(one);
    };
    wall("A", {150, 100}, {290, 100});
    wall("N", {210, 120}, {230, 120});
    wall("M", {230, 129}, {210, 129});
    wall("B", {290, 150}, {150, 150});
    rooms.parts = 2;
    put(project, solved, rooms);
    const Finding finding = only(findings(project, solved), "narrow").at(0);
    EXPECT_EQ(finding.severity, Severity::Stop);
    EXPECT_NEAR(*finding.value, 9, 1e-12);
    EXPECT_EQ(finding.lines, (std::vector<LineId>{"N", "M"}));
    EXPECT_NE(finding.text.find("A bit of less than 9.0 mm fits; or move a line by 3.7 mm or more."),
              std::string::npos)
        << finding.text;
}

// Expected from: pencil. A mouth of 11 on the bottom edge; 12.7 - 11 = 1.7.
TEST(NarrowFindings, AMouthTooNarrowIsACare) {
    WallBench bench;
    SolvedCutout& cutout = bench.cutout();
    cutout.open = true;
    cutout.mouthClosed = true;
    OutlinePiece mouth = straight({150, 0}, {161, 0});
    mouth.on = "bottom";
    cutout.drawn.loops[0].push_back(mouth);
    const Finding finding = bench.minded("narrow").at(0);
    EXPECT_EQ(finding.severity, Severity::Care);
    EXPECT_NEAR(*finding.value, 11, 1e-12);
    EXPECT_NE(finding.text.find("widen it by 1.7 mm or more"), std::string::npos) << finding.text;
}

// Expected from: pencil. A window 50 wide does not take a bush of 60.
TEST(NarrowFindings, ABushThatDoesNotEnterStops) {
    WallBench bench;
    bench.project.use.byBush = true;
    bench.solved.use.guide = 60;
    bench.cutout().work = {};
    const Finding finding = bench.minded("narrow").at(0);
    EXPECT_EQ(finding.severity, Severity::Stop);
    EXPECT_EQ(finding.value, 50);
    EXPECT_EQ(finding.limit, 60);
    EXPECT_TRUE(saysANumber(finding.text));
}

TEST(DrawingFindings, TroubleAndDoubtStop) {
    WallBench bench;
    bench.solved.troubles = {{"/lines/4",
                              "lines A and E lie on one another; move or delete one of them.",
                              {200, 100},
                              {"A", "E"},
                              ""}};
    bench.cutout().doubts = {{{250, 150}, "the gap beside B is the bit's diameter to within 1 nm"}};
    const auto all = findings(bench.project, bench.solved);
    ASSERT_EQ(all.size(), 2u);
    EXPECT_EQ(all[0].code, "drawing");
    EXPECT_EQ(all[0].severity, Severity::Stop);
    EXPECT_EQ(all[0].text.substr(0, 13), "Lines A and E");
    EXPECT_EQ(all[1].code, "unsure");
    EXPECT_EQ(all[1].severity, Severity::Stop);
    EXPECT_TRUE(saysANumber(all[0].text));
    EXPECT_TRUE(saysANumber(all[1].text));
}

// Expected from: the report's order: stops first, then cares, then notes, each in the order of the codes.
TEST(Findings, StandInOrder) {
    WallBench bench;
    bench.solved.lines = {lineWithKerf("A", {0, 100}, {400, 100}, Side::Left)};
    bench.solved.kerfDepth = 10;
    Hollow dip;
    dip.wall = "D";
    dip.depth = 0.2;
    bench.cutout().hollows = {dip};
    bench.cutout().lost = {{"B", {0, 0}, {1, 0}}};
    bench.cutout().corners[1].boreRadius = 22;
    bench.project.clampHoles = {{"", Edge::Left, 125, 6, 146, {}, ""}};
    std::vector<std::string> codes;
    for (const Finding& finding : findings(bench.project, bench.solved)) {
        codes.push_back(finding.code);
    }
    EXPECT_EQ(codes, (std::vector<std::string>{"wall-lost", "web-thin", "wall-nick", "hole-through",
                                               "hole-wall", "bore-missing"}));
}

}  // namespace
}  // namespace kerfwall

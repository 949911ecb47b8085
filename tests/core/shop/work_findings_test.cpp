// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "core/geometry/wanted_outline.h"
#include "tests/core/shop/finding_fixture.h"

namespace kerfwall {
namespace {

using namespace testing_bench;

// A window of 140 x 100, bush 24 and bit 12.7: it cuts 128.7 x 88.7 in the work, corners of 6.35, walls drawn
// in by (24 - 12.7) / 2 = 5.65. Wanted: that, larger by `more` all round, with corners of `radius`.
struct WorkBench {
    Project project = panelOf(400, 300, 12);
    Solved solved = answerFor(project);

    explicit WorkBench(double more, double radius = 6.35) {
        project.use.byBush = true;
        project.use.bush = 24;
        solved.use.guide = 24;
        put(project, solved, rectangle("window", {{100, 100}, {240, 200}}, 6.35, 5.65));
        const double low = 105.65 - more;
        project.cutouts[0].wanted =
            Wanted{{{low, low}, {234.35 + more, low}, {234.35 + more, 194.35 + more}, {low, 194.35 + more}},
                   radius,
                   ""};
    }
    [[nodiscard]] std::vector<Finding> minded(const std::string& code) const {
        return only(findings(project, solved), code);
    }
};

// Expected from: pencil, and the limits 0.2 and 1 mm, common practice. Larger by m all round with the same
// corner radius, the arcs' centres are m further out too: the mismatch is m at the walls and m sqrt 2 in
// line with the corners' centres, at the arcs' middles.
TEST(WorkFindings, SizeFiresBeyondItsLimits) {
    EXPECT_TRUE(WorkBench(0).minded("work-size").empty());
    EXPECT_TRUE(WorkBench(0.14).minded("work-size").empty());
    const Finding care = WorkBench(0.5).minded("work-size").at(0);
    EXPECT_EQ(care.severity, Severity::Care);
    EXPECT_NEAR(*care.value, 0.5 * std::sqrt(2.0), 2e-3);
    EXPECT_EQ(care.limit, 0.2);
    EXPECT_EQ(WorkBench(0.7).minded("work-size").at(0).severity, Severity::Care);
    EXPECT_EQ(WorkBench(0.72).minded("work-size").at(0).severity, Severity::Stop);
}

// Expected from: pencil. The bottom wall alone stands 0.65 too high; the wall A moves down, away from the
// opening.
TEST(WorkFindings, SizeNamesTheWallAndTheWay) {
    WorkBench bench(0);
    bench.project.cutouts[0].wanted->outline[0].y -= 0.65;
    bench.project.cutouts[0].wanted->outline[1].y -= 0.65;
    const Finding small = bench.minded("work-size").at(0);
    EXPECT_NEAR(*small.value, 0.65, 2e-3);
    EXPECT_EQ(small.lines, std::vector<LineId>{"A"});
    EXPECT_NE(small.text.find("Move A 0.65 mm away from the opening; a wall must stand 5.65 mm outside"),
              std::string::npos)
        << small.text;
    bench.project.cutouts[0].wanted->outline[0].y += 1.3;
    bench.project.cutouts[0].wanted->outline[1].y += 1.3;
    const Finding large = bench.minded("work-size").at(0);
    EXPECT_NE(large.text.find("Move A 0.65 mm into the opening"), std::string::npos) << large.text;
}

// Expected from: pencil. Wanted sharp, or with corners of 3, the cutter leaves 6.35: a note, no wrong size.
// Wanted with 25 it cuts (25 - 6.35) (sqrt 2 - 1) = 7.72 too far into each corner.
TEST(WorkFindings, ARounderCornerIsNoWrongSizeButASharperOneIs) {
    EXPECT_TRUE(WorkBench(0, 0).minded("work-size").empty());
    EXPECT_TRUE(WorkBench(0, 3).minded("work-size").empty());
    const Finding finding = WorkBench(0, 25).minded("work-size").at(0);
    EXPECT_EQ(finding.severity, Severity::Stop);
    EXPECT_NEAR(*finding.value, 18.65 * (std::sqrt(2.0) - 1), 2e-3);
    EXPECT_TRUE(saysANumber(finding.text));
}

// Expected from: inside corner radius left in the work: c / 2 where the template's is less than B / 2, else
// rt - o. Template 6.35, B 24: 6.35. Template 22, o 5.65: 16.35.
TEST(WorkFindings, BushCornerNotesAnotherRadius) {
    EXPECT_TRUE(WorkBench(0).minded("bush-corner").empty());
    EXPECT_TRUE(WorkBench(0, 6.39).minded("bush-corner").empty());
    WorkBench bench(0, 8);
    const Finding finding = bench.minded("bush-corner").at(0);
    EXPECT_EQ(finding.severity, Severity::Note);
    EXPECT_NEAR(*finding.value, 6.35, 1e-12);
    EXPECT_EQ(finding.limit, 8);
    EXPECT_NE(finding.text.find("Bore the template's corner to a radius of 13.65 mm"), std::string::npos)
        << finding.text;
    bench.solved.cutouts[0].corners[2].radius = 22;
    const Finding bored = bench.minded("bush-corner").at(0);
    EXPECT_NEAR(*bored.value, 16.35, 1e-12);
    EXPECT_EQ(bored.lines, (std::vector<LineId>{"D", "B"}));
    EXPECT_EQ(bench.minded("bush-corner").size(), 1u);
}

// Expected from: pencil. A bearing of the bit's size follows the trimmed corner; a bush of 24 does not.
TEST(WorkFindings, ASharpWishIsNotedOnceWhereTheBearingFollows) {
    WorkBench bush(0, 0);
    EXPECT_EQ(bush.minded("bush-corner").size(), 1u);
    Project project = panelOf(400, 300, 12);
    Solved solved = answerFor(project);
    put(project, solved, rectangle("window", {{100, 100}, {240, 200}}, 6.35));
    project.cutouts[0].wanted = Wanted{{{100, 100}, {240, 100}, {240, 200}, {100, 200}}, 0, ""};
    const auto all = findings(project, solved);
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].code, "corner-short");
}

// Expected from: pencil. Open at the bottom, wanted 20 beyond the edge: only what lies on the panel counts.
TEST(WorkFindings, AnOpenCutoutIsComparedOnThePanel) {
    Project project = panelOf(400, 300, 12);
    Solved solved = answerFor(project);
    SolvedCutout frame = rectangle("frame", {{100, 0}, {240, 200}}, 6.35);
    frame.open = true;
    const std::array<double, 4> radii{0, 0, 6.35, 6.35};
    frame.work = makeOutline({roundedLoop({{100, 0}, {240, 0}, {240, 200}, {100, 200}}, radii)});
    frame.work.loops[0][0].on = "bottom";
    put(project, solved, frame);
    project.cutouts[0].wanted = Wanted{{{100, -20}, {240, -20}, {240, 200}, {100, 200}}, 0, ""};
    EXPECT_TRUE(only(findings(project, solved), "work-size").empty());
    project.cutouts[0].wanted = Wanted{{{100, 0}, {240, 0}, {240, 200}, {100, 200}}, 0, ""};
    EXPECT_TRUE(only(findings(project, solved), "work-size").empty());
    project.cutouts[0].wanted = Wanted{{{100, -20}, {240.5, -20}, {240.5, 200}, {100, 200}}, 0, ""};
    EXPECT_NEAR(*only(findings(project, solved), "work-size").at(0).value, 0.5, 2e-3);
}

// Expected from: pencil. Diameter 44 is not among 20, 25, 30, 35, 40, 50; circle jig from 22 - 8 = 14 to 22.
TEST(BoreFindings, AMissingDrillIsNotedOnceARadius) {
    WorkBench bench(0);
    for (Corner& corner : bench.solved.cutouts[0].corners) {
        corner.boreRadius = 22;
    }
    const auto some = bench.minded("bore-missing");
    ASSERT_EQ(some.size(), 1u);
    EXPECT_EQ(some[0].severity, Severity::Note);
    EXPECT_EQ(some[0].value, 44);
    EXPECT_NE(
        some[0].text.find("from the pivot 14.0 mm to the near side of the cut, 22.0 mm to its far side"),
        std::string::npos)
        << some[0].text;
    bench.project.bench = stockBench();
    bench.project.bench->circleBit.reset();
    EXPECT_NE(bench.minded("bore-missing")[0].text.find(
                  "The nearest at hand is 40.0 mm: bore the corner to a radius of 20.0 mm"),
              std::string::npos);
    for (Corner& corner : bench.solved.cutouts[0].corners) {
        corner.boreRadius = 25;
    }
    EXPECT_TRUE(bench.minded("bore-missing").empty());
    for (Corner& corner : bench.solved.cutouts[0].corners) {
        corner.boreRadius = 6;
    }
    EXPECT_TRUE(bench.minded("bore-missing").empty());
}

}  // namespace
}  // namespace kerfwall

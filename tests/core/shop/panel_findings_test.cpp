// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tests/core/shop/finding_fixture.h"

namespace kerfwall {
namespace {

using namespace testing_bench;

struct PanelBench {
    Project project;
    Solved solved;

    PanelBench(double thickness, double depth) : project(panelOf(400, 250, thickness)) {
        project.kerfDepth = depth;
        solved = answerFor(project);
        solved.lines = {lineWithKerf("A", {0, 100}, {400, 100}, Side::Left, 3.2, depth)};
    }
    [[nodiscard]] std::vector<Finding> minded(const std::string& code) const {
        return only(findings(project, solved), code);
    }
};

// Expected from: the limits: care under 5, stop under 3 or a third of the thickness; common practice.
TEST(PanelFindings, WebThin) {
    EXPECT_TRUE(PanelBench(12, 7).minded("web-thin").empty());
    const Finding care = PanelBench(12, 7.5).minded("web-thin").at(0);
    EXPECT_EQ(care.severity, Severity::Care);
    EXPECT_EQ(care.value, 4.5);
    EXPECT_EQ(care.limit, 5);
    EXPECT_NE(care.text.find("Saw 7.0 mm deep or less"), std::string::npos) << care.text;
    EXPECT_EQ(PanelBench(12, 8).minded("web-thin").at(0).severity, Severity::Care);
    const Finding third = PanelBench(12, 8.1).minded("web-thin").at(0);
    EXPECT_EQ(third.severity, Severity::Stop);
    EXPECT_EQ(third.limit, 4);
    const Finding three = PanelBench(8, 5.5).minded("web-thin").at(0);
    EXPECT_EQ(three.severity, Severity::Stop);
    EXPECT_EQ(three.limit, 3);
}

// Expected from: pencil. A groove of 3 in the back of 12 leaves 9, and 3 where it crosses a kerf of 6.
TEST(PanelFindings, AFencesGrooveCountsWithTheKerfAboveIt) {
    PanelBench bench(12, 6);
    Fence fence;
    fence.along = Edge::Bottom;
    fence.offset = 90;
    fence.from = 20;
    fence.to = 380;
    fence.width = 20;
    fence.height = 20;
    fence.groove = 3;
    fence.face = Face::Back;
    bench.project.fences = {fence};
    const Finding finding = bench.minded("web-thin").at(0);
    EXPECT_EQ(finding.severity, Severity::Stop);
    EXPECT_EQ(finding.value, 3);
    EXPECT_EQ(finding.limit, 4);
    EXPECT_EQ(finding.fence, 0u);
    bench.project.fences[0].offset = 110;
    EXPECT_TRUE(bench.minded("web-thin").empty());
    bench.project.fences[0].offset = 90;
    bench.project.fences[0].face = Face::Layout;
    EXPECT_TRUE(bench.minded("web-thin").empty());
}

// Expected from: the limits: care under the bearing's length, 5; stop under max(2.5, half of it).
TEST(PanelFindings, WallLow) {
    EXPECT_TRUE(PanelBench(12, 5).minded("wall-low").empty());
    const Finding care = PanelBench(12, 4.9).minded("wall-low").at(0);
    EXPECT_EQ(care.severity, Severity::Care);
    EXPECT_EQ(care.value, 4.9);
    EXPECT_EQ(care.limit, 5);
    EXPECT_NE(care.text.find("Saw 6.0 mm deep"), std::string::npos) << care.text;
    EXPECT_EQ(PanelBench(12, 2.5).minded("wall-low").at(0).severity, Severity::Care);
    EXPECT_EQ(PanelBench(12, 2.4).minded("wall-low").at(0).severity, Severity::Stop);
    PanelBench longBearing(18, 4.9);
    longBearing.project.bench = stockBench();
    longBearing.project.bench->trimBit->bearingLength = 10;
    EXPECT_EQ(longBearing.minded("wall-low").at(0).severity, Severity::Stop);
    EXPECT_EQ(longBearing.minded("wall-low").at(0).limit, 5);
}

// Expected from: pencil. 40 thick, kerfs 15 deep, the bearing 1 above the floor: the cut must be 26 long;
// the stock bit has 25. 16 deep, 25 is enough.
TEST(PanelFindings, BitShort) {
    EXPECT_TRUE(PanelBench(40, 16).minded("bit-short").empty());
    const Finding finding = PanelBench(40, 15).minded("bit-short").at(0);
    EXPECT_EQ(finding.severity, Severity::Stop);
    EXPECT_EQ(finding.value, 25);
    EXPECT_EQ(finding.limit, 26);
    EXPECT_NE(finding.text.find("a cutting length of 26.0 mm or more"), std::string::npos) << finding.text;
}

TEST(PanelFindings, ABenchWithoutATrimmingBitIsMinded) {
    PanelBench bench(12, 6);
    bench.project.bench = stockBench();
    bench.project.bench->trimBit.reset();
    const Finding finding = bench.minded("bit-short").at(0);
    EXPECT_EQ(finding.severity, Severity::Stop);
    EXPECT_TRUE(saysANumber(finding.text));
}

TEST(PanelFindings, APanelWithoutKerfsHasNone) {
    PanelBench bench(12, 11);
    bench.solved.lines.clear();
    EXPECT_TRUE(findings(bench.project, bench.solved).empty());
}

// Expected from: pencil: 4.5 mm is 0.177 in, and 7.0 mm is just over 17/64 in.
TEST(PanelFindings, TextsSpeakInInchesWhereTheProjectDoes) {
    PanelBench bench(12, 7.5);
    bench.project.units = Units::Inches;
    const std::string text = bench.minded("web-thin").at(0).text;
    EXPECT_NE(text.find("11/64"), std::string::npos) << text;
    EXPECT_NE(text.find("17/64"), std::string::npos) << text;
    EXPECT_EQ(text.find("mm"), std::string::npos) << text;
}

}  // namespace
}  // namespace kerfwall

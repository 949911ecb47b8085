// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tests/core/shop/finding_fixture.h"

namespace kerfwall {
namespace {

using namespace testing_bench;

Project withFence(Face face) {
    Project project = panelOf(400, 250, 12);
    Fence fence;
    fence.along = Edge::Bottom;
    fence.offset = 20;
    fence.body = Side::Right;
    fence.from = 30;
    fence.to = 130;
    fence.width = 20;
    fence.height = 15;
    fence.face = face;
    project.fences = {fence};
    return project;
}

std::vector<Finding> minded(const Project& project, Face toWork, const std::string& code) {
    Solved solved = answerFor(project);
    solved.use.againstWork = toWork;
    return only(findings(project, solved), code);
}

// Expected from: the report's table, and pencil for the middle of the body, x 30 to 130 and y 0 to 20.
TEST(FenceFindings, OnTheFaceThatDoesNotGoToTheWork) {
    const Finding finding = minded(withFence(Face::Back), Face::Layout, "fence-side").at(0);
    EXPECT_EQ(finding.severity, Severity::Stop);
    EXPECT_EQ(finding.fence, 0u);
    EXPECT_EQ(finding.at, (Point{80, 10}));
    EXPECT_TRUE(saysANumber(finding.text));
    EXPECT_NE(finding.text.find("Fix it to the layout face"), std::string::npos) << finding.text;
    EXPECT_EQ(minded(withFence(Face::Layout), Face::Back, "fence-side").size(), 1U);
}

TEST(FenceFindings, NothingOnTheFaceThatDoes) {
    EXPECT_TRUE(minded(withFence(Face::Back), Face::Back, "fence-side").empty());
    EXPECT_TRUE(minded(withFence(Face::Layout), Face::Layout, "fence-side").empty());
}

// Expected from: pencil. A groove of 8 leaves 4 of 12, under max(3, 12 / 3) = 4 no; of 9 leaves 3: stop.
TEST(FenceFindings, AGrooveTooDeepHasItsPlaceAtTheFence) {
    Project project = withFence(Face::Layout);
    project.fences.front().groove = 9;
    const Finding finding = minded(project, Face::Layout, "web-thin").at(0);
    EXPECT_EQ(finding.severity, Severity::Stop);
    EXPECT_EQ(finding.value, 3);
    EXPECT_EQ(finding.at, (Point{80, 10}));
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/bore_rows.h"

#include <gtest/gtest.h>

#include "core/geometry/solve.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall::test {
namespace {

/// A window of A (90 up), B (210 up), C (110 in), D (290 in) with its corners bored: C with A, A with D, D with B, B with C.
Project boredWindow(double leftLow, double rightLow, double rightHigh, double leftHigh) {
    Project project = windowProject();
    project.lines[1] = offsetLine("B", Edge::Bottom, 210);
    project.cutouts[0].corners = {
        {"C", "A", leftLow, ""}, {"A", "D", rightLow, ""}, {"D", "B", rightHigh, ""}, {"B", "C", leftHigh, ""}};
    return project;
}

std::vector<BoreRow> rowsOf(const Project& project) { return boreRows(project, solve(project)); }

/// Each row as its diameter, its fence and its stops.
using Said = std::vector<std::vector<double>>;
Said said(const std::vector<BoreRow>& rows) {
    Said all;
    for (const BoreRow& row : rows) {
        std::vector<double>& one = all.emplace_back(std::vector<double>{2 * row[0].radius, row[0].fence});
        for (const Bore& bore : row) one.push_back(bore.stop);
    }
    return all;
}

void expectSaid(const Project& project, const Said& expected) {
    const Said is = said(rowsOf(project));
    ASSERT_EQ(is.size(), expected.size());
    for (std::size_t row = 0; row < is.size(); ++row) {
        ASSERT_EQ(is[row].size(), expected[row].size()) << row;
        for (std::size_t i = 0; i < is[row].size(); ++i) EXPECT_NEAR(is[row][i], expected[row][i], 1e-6) << row << " " << i;
    }
}

// Expected from: pencil. Bores of 40 stand 20 from both lines: 110 and 190 from the fence, 130 and 270 from the left end.
// The second row begins at the stop where the first ended.
TEST(BoreRows, OneDiameterIsARowForEachFence) {
    expectSaid(boredWindow(20, 20, 20, 20), {{40, 110, 130, 270}, {40, 190, 270, 130}});
}

// Expected from: pencil. B at 135, 45 above A: bores of 40 on the left at 110 and 115, one of 50 on the right at 135 - 25 =
// 110. The fence stays at 110 while the drill is changed.
TEST(BoreRows, TheFenceStaysFromOneDiameterToTheNext) {
    Project project = windowProject();
    project.lines[1] = offsetLine("B", Edge::Bottom, 135);
    project.cutouts[0].corners = {{"C", "A", 20, ""}, {"B", "C", 20, ""}, {"D", "B", 25, ""}};
    project.cutouts[0].seeds = {{200, 112}};
    const Said is = said(rowsOf(project));
    ASSERT_EQ(is.size(), 3u);
    const bool smallFirst = is[0][0] == 40;
    EXPECT_NEAR(is[0][1], smallFirst ? 115 : 110, 1e-6);
    EXPECT_NEAR(is[1][1], 110, 1e-6);
    EXPECT_NEAR(is[2][1], smallFirst ? 110 : 115, 1e-6);
}

// Expected from: law: the order corners were bored in changes neither the rows' number nor what they hold.
TEST(BoreRows, EveryBoredCornerIsInOneRow) {
    const Project project = boredWindow(20, 25, 20, 22);
    std::size_t bores = 0;
    for (const BoreRow& row : rowsOf(project)) bores += row.size();
    EXPECT_EQ(bores, 4u);
    // 40 twice at 110 and 190; 50 at 115; 44, which no drill has, on the jig.
    EXPECT_EQ(rowsOf(project).size(), 4u);
}

// Expected from: a circle jig has no fence: bores of 44 are one row wherever they lie.
TEST(BoreRows, TheCircleJigTakesAllOfOneDiameter) {
    const std::vector<BoreRow> rows = rowsOf(boredWindow(22, 22, 22, 22));
    ASSERT_EQ(rows.size(), 1u);
    EXPECT_EQ(rows[0].size(), 4u);
}

}  // namespace
}  // namespace kerfwall::test

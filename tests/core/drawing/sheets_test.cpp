// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/sheets.h"

#include <gtest/gtest.h>

#include "tests/core/drawing/drawn_panel.h"

namespace kerfwall {
namespace {

Sheets sheetsOf(double width, double height, const Printing& printing, const std::string& paper) {
    const Project project = blankPanel(width, height, 12);
    return sheetsFor(project.panel, printing, *paperOf(paper, project.panel));
}

// Expected from: ISO 216, and ANSI/ASME Y14.1 for letter and tabloid (8.5 x 11 and 11 x 17 inches).
TEST(Papers, HaveTheSizesOfTheirStandards) {
    const Panel panel = blankPanel(600, 400, 12).panel;
    const std::vector<Paper> papers{{"a4", 210, 297},
                                    {"a3", 297, 420},
                                    {"a2", 420, 594},
                                    {"a1", 594, 841},
                                    {"a0", 841, 1189},
                                    {"letter", 8.5 * 25.4, 11 * 25.4},
                                    {"tabloid", 11 * 25.4, 17 * 25.4},
                                    {"panel", 600, 400}};
    for (const Paper& paper : papers) {
        const auto found = paperOf(paper.name, panel);
        ASSERT_TRUE(found) << paper.name;
        EXPECT_DOUBLE_EQ(found->width, paper.width) << paper.name;
        EXPECT_DOUBLE_EQ(found->height, paper.height) << paper.name;
    }
}

TEST(Papers, RefuseAnUnknownNameAndListTheKnownOnes) {
    const auto paper = paperOf("a9", blankPanel(600, 400, 12).panel);
    ASSERT_FALSE(paper);
    EXPECT_NE(paper.error().find("a9"), std::string::npos);
    EXPECT_NE(paper.error().find("tabloid"), std::string::npos);
}

// Expected from: pencil. 190 x 277 print; (600 - 10) / 180 = 3.3, (400 - 10) / 267 = 1.5: 4 x 2.
TEST(Sheets, TileA600By400PanelOnEightUprightA4) {
    const Sheets sheets = sheetsOf(600, 400, {}, "a4");
    EXPECT_EQ(sheets.columns, 4);
    EXPECT_EQ(sheets.rows, 2);
    EXPECT_EQ(sheets.sheets.size(), 8U);
    EXPECT_EQ(sheets.sheets.front().row, 0);
    EXPECT_GT(sheets.sheets.front().window.low.y, sheets.sheets.back().window.low.y)
        << "the first row is the top one";
}

// Expected from: pencil. 190 mm print on A4 with margins of 10: 190 takes one sheet, 190.01 two, and
// with an overlap of 10 two reach 370, three 550.
TEST(Sheets, TakeNoSheetMoreThanThePanelNeeds) {
    EXPECT_EQ(sheetsOf(190, 277, {}, "a4").sheets.size(), 1U);
    EXPECT_EQ(sheetsOf(190.01, 277, {}, "a4").columns, 2);
    EXPECT_EQ(sheetsOf(370, 277, {}, "a4").columns, 2);
    EXPECT_EQ(sheetsOf(550, 277, {}, "a4").columns, 3);
    EXPECT_EQ(sheetsOf(550.01, 277, {}, "a4").columns, 4);
}

// Expected from: pencil. Printed 1.02 times as large, a sheet shows 190 / 1.02 = 186.3 mm of the panel:
// (550 - 10) / 176.3 = 3.06, so four sheets where three would do without the correction.
TEST(Sheets, ShowLessOfThePanelWhereThePrinterStretches) {
    Printing printing;
    printing.scaleX = 1.02;
    EXPECT_EQ(sheetsOf(550, 277, printing, "a4").columns, 4);
}

TEST(Sheets, OverlapTheirNeighboursAndCoverThePanel) {
    for (const double overlap : {0.0, 6.5, 10.0, 40.0}) {
        Printing printing;
        printing.overlap = overlap;
        const Sheets sheets = sheetsOf(733, 911, printing, "letter");
        for (const Sheet& sheet : sheets.sheets) {
            for (const Sheet& other : sheets.sheets) {
                if (other.column == sheet.column + 1) {
                    EXPECT_NEAR(sheet.window.high.x - other.window.low.x, overlap, 1e-9);
                }
                if (other.row == sheet.row + 1) {
                    EXPECT_NEAR(other.window.high.y - sheet.window.low.y, overlap, 1e-9);
                }
            }
        }
        EXPECT_LE(sheets.sheets.front().window.low.x, 0);
        EXPECT_GE(sheets.sheets.front().window.high.y, 911);
        EXPECT_GE(sheets.sheets.back().window.high.x, 733);
        EXPECT_LE(sheets.sheets.back().window.low.y, 0);
    }
}

TEST(Sheets, PutThePanelsCornerOnTheSheetsCornerWhereOneSheetIsAsLarge) {
    const Sheets sheets = sheetsOf(600, 400, {}, "panel");
    ASSERT_EQ(sheets.sheets.size(), 1U);
    const Sheet& sheet = sheets.sheets.front();
    EXPECT_EQ(sheet.window.low, (Point{0, 0}));
    EXPECT_EQ(sheet.window.high, (Point{600, 400}));
    EXPECT_EQ(sheet.corner, (Point{0, 0}));
}

}  // namespace
}  // namespace kerfwall

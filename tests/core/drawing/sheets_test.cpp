// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/sheets.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/drawing/drawn_panel.h"

namespace kerfwall {
namespace {

Sheets sheetsOf(double width, double height, const Printing& printing, const std::string& paper) {
    const Project project = blankPanel(width, height, 12);
    return sheetsFor(project.panel, printing, *paperOf(paper, project.panel));
}

// Expected from: ISO 216, and ANSI/ASME Y14.1 for letter to E (8.5 x 11, 11 x 17, 17 x 22, 22 x 34, 34 x 44 inches).
TEST(Papers, HaveTheSizesOfTheirStandards) {
    const Panel panel = blankPanel(600, 400, 12).panel;
    const std::vector<Paper> papers{{"a4", 210, 297},
                                    {"a3", 297, 420},
                                    {"a2", 420, 594},
                                    {"a1", 594, 841},
                                    {"a0", 841, 1189},
                                    {"letter", 8.5 * 25.4, 11 * 25.4},
                                    {"tabloid", 11 * 25.4, 17 * 25.4},
                                    {"ansi-c", 431.8, 558.8},
                                    {"ansi-d", 558.8, 863.6},
                                    {"ansi-e", 863.6, 1117.6},
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
    EXPECT_NE(paper.error().find("roll-"), std::string::npos);
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

TEST(Sheets, BeginAtThePanelsCorner) {
    const Sheets sheets = sheetsOf(600, 400, {}, "a4");
    const auto first = std::ranges::find_if(sheets.sheets, [](const Sheet& s) { return s.column == 0 && s.row == 1; });
    ASSERT_NE(first, sheets.sheets.end());
    EXPECT_EQ(first->window.low, (Point{0, 0}));
    EXPECT_EQ(first->corner, (Point{10, 10}));
}

// Expected from: pencil. 257 x 180 print upright as 190 x 277, two sheets; lying as 277 x 190, one.
TEST(Sheets, LieOnTheirSideWhereThatTakesFewer) {
    const Sheets sheets = sheetsOf(257, 180, {}, "a4");
    EXPECT_EQ(sheets.sheets.size(), 1U);
    EXPECT_EQ(sheets.paper, (Paper{"a4", 297, 210}));
    EXPECT_EQ(sheetsOf(170, 180, {}, "a4").paper, (Paper{"a4", 210, 297})) << "upright where both take as many";
}

/// How many sheets cover a length, counted one after the other.
int countAlong(double size, double room, double overlap) {
    int count = 1;
    for (double covered = room; covered < size - 1e-9; covered += room - overlap) ++count;
    return count;
}

// Expected from: a count of its own, sheet after sheet from the corner, upright and lying.
TEST(Sheets, AreTheFewestOfBothWays) {
    for (const std::string name : {"a4", "a3", "a2", "a1", "a0", "letter", "tabloid", "ansi-c", "ansi-d", "ansi-e"}) {
        for (const double width : {150.0, 257.0, 600.0, 1220.0, 3000.0}) {
            for (const double height : {100.0, 400.0, 811.0, 2440.0}) {
                for (const double overlap : {0.0, 10.0, 25.0}) {
                    Printing printing;
                    printing.overlap = overlap;
                    const Paper paper = *paperOf(name, blankPanel(width, height, 12).panel);
                    const int upright = countAlong(width, paper.width - 20, overlap) * countAlong(height, paper.height - 20, overlap);
                    const int lying = countAlong(width, paper.height - 20, overlap) * countAlong(height, paper.width - 20, overlap);
                    EXPECT_EQ(static_cast<int>(sheetsOf(width, height, printing, name).sheets.size()), std::min(upright, lying))
                        << name << " " << width << " x " << height << " overlap " << overlap;
                }
            }
        }
    }
}

// Expected from: the trade's least margin of a quarter inch: 210 - 2 x 6.35 = 197.3 print.
TEST(Sheets, NeverPrintNearerToThePapersEdgeThanAQuarterInch) {
    Printing printing;
    printing.margin = 0;
    const Sheets sheets = sheetsOf(197.3, 284.3, printing, "a4");
    EXPECT_EQ(sheets.sheets.size(), 1U);
    EXPECT_EQ(sheets.sheets.front().corner, (Point{6.35, 6.35}));
    EXPECT_EQ(sheetsOf(197.4, 284.3, printing, "a4").sheets.size(), 2U);
}

// Expected from: pencil. 590 print across a roll of 610: 1200 x 580 lies along it on one sheet of 1220 x 610; 1200 x 1000
// takes (1000 - 10) / 580 = 1.7, so two of 1220 x 610, and as many the other way: (1200 - 10) / 580 = 2.05, three.
TEST(Sheets, CutARollAsLongAsThePatternTakes) {
    const Sheets one = sheetsOf(1200, 580, {}, "roll-610");
    EXPECT_EQ(one.sheets.size(), 1U);
    EXPECT_EQ(one.paper, (Paper{"roll-610", 1220, 610}));
    const Sheets two = sheetsOf(1200, 1000, {}, "roll-610");
    EXPECT_EQ(two.sheets.size(), 2U);
    EXPECT_EQ(two.paper, (Paper{"roll-610", 1220, 610}));
    EXPECT_EQ(sheetsOf(300, 1500, {}, "roll-610").paper, (Paper{"roll-610", 610, 1520}));
}

TEST(Sheets, RefuseARollOfNoWidth) {
    for (const std::string name : {"roll-", "roll-x", "roll-100", "roll-3000", "roll-610mm", "roll--610"}) {
        EXPECT_FALSE(paperOf(name, blankPanel(600, 400, 12).panel)) << name;
    }
}

// Expected from: pencil. Only the border drawn, 3 x 3 sheets of a3 on 800 x 1100 have a blank middle one.
TEST(Sheets, LeaveOutThoseWithNothingOnThem) {
    const Panel panel = blankPanel(800, 1100, 12).panel;
    const std::vector<Stretch> border{
        {{0, 0}, {800, 0}}, {{800, 0}, {800, 1100}}, {{800, 1100}, {0, 1100}}, {{0, 1100}, {0, 0}}};
    const Sheets sheets = sheetsFor(panel, {}, *paperOf("a3", panel), border);
    EXPECT_EQ(sheets.columns, 3);
    EXPECT_EQ(sheets.rows, 3);
    EXPECT_EQ(sheets.sheets.size(), 8U);
    EXPECT_TRUE(std::ranges::none_of(sheets.sheets, [](const Sheet& s) { return s.column == 1 && s.row == 1; }));
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

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/sheet_map.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace kerfwall {
namespace {

Sheets sheetsOn(double width, double height, const char* paper) {
    Panel panel;
    panel.width = width;
    panel.height = height;
    return sheetsFor(panel, {}, paper == std::string("panel") ? *paperOf(paper, panel) : Paper{"printer", 210, 297});
}

std::vector<std::string> namesOn(const Drawing& drawing) {
    std::vector<std::string> names;
    for (const Mark& mark : drawing.marks) {
        if (const auto* label = std::get_if<Label>(&mark)) names.push_back(label->text);
    }
    return names;
}

std::ptrdiff_t countOf(const Drawing& drawing, Ink ink) {
    return std::ranges::count_if(drawing.marks, [ink](const Mark& mark) {
        const auto* stroke = std::get_if<Stroke>(&mark);
        return stroke && stroke->ink == ink;
    });
}

// Expected from: pencil: 300 x 250 takes two upright A4 side by side: 8 sides, one of each joined to the other.
TEST(SheetMap, DashesWhereSheetsAreJoined) {
    const Sheets sheets = sheetsOn(300, 250, "a4");
    ASSERT_EQ(sheets.sheets.size(), 2U);
    const Drawing map = sheetMap(sheets);
    EXPECT_EQ(countOf(map, Ink::SheetJoint), 2);
    EXPECT_EQ(countOf(map, Ink::SheetEdge), 6);
    EXPECT_EQ(namesOn(map), (std::vector<std::string>{"A1", "A2"}));
    for (const Mark& mark : map.marks) {
        const auto* stroke = std::get_if<Stroke>(&mark);
        if (!stroke || stroke->ink != Ink::SheetJoint) continue;
        EXPECT_EQ(stroke->from.x, stroke->to.x);
        const double other = stroke->id == "A1" ? sheets.sheets[0].window.high.x : sheets.sheets[1].window.low.x;
        EXPECT_EQ(stroke->from.x, other);
    }
}

// Expected from: pencil: 600 x 400 takes 4 x 2 = 8 upright A4; a grid of 4 x 2 has 3 x 2 + 4 joints, each with two borders.
TEST(SheetMap, NamesRowsFromTheTopAndColumnsFromTheLeft) {
    const Drawing map = sheetMap(sheetsOn(600, 400, "a4"));
    EXPECT_EQ(namesOn(map), (std::vector<std::string>{"A1", "A2", "A3", "A4", "B1", "B2", "B3", "B4"}));
    EXPECT_EQ(countOf(map, Ink::SheetJoint), 20);
    EXPECT_EQ(countOf(map, Ink::SheetEdge), 8 * 4 - 20);
}

// Expected from: a sheet that is left out is no neighbour.
TEST(SheetMap, AMissingSheetIsNotJoined) {
    Sheets sheets = sheetsOn(300, 250, "a4");
    sheets.sheets.pop_back();
    EXPECT_EQ(countOf(sheetMap(sheets), Ink::SheetJoint), 0);
}

TEST(SheetMap, OneSheetHasNoName) {
    const Drawing map = sheetMap(sheetsOn(300, 250, "panel"));
    EXPECT_TRUE(namesOn(map).empty());
    EXPECT_EQ(map.bounds.high, (Point{300, 250}));
}

}  // namespace
}  // namespace kerfwall

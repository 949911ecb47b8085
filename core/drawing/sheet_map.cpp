// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/sheet_map.h"

#include <algorithm>
#include <array>

namespace kerfwall {
namespace {

constexpr double kNameHeight = 4.5;  // mm on paper or screen

bool hasSheet(const Sheets& sheets, int column, int row) {
    return std::ranges::any_of(sheets.sheets, [&](const Sheet& each) { return each.column == column && each.row == row; });
}

void addSides(Drawing& drawing, const Sheets& sheets, const Sheet& sheet) {
    const auto& [low, high] = sheet.window;
    const std::array<Point, 4> corners{low, {high.x, low.y}, high, {low.x, high.y}};
    // Rows count down from the top.
    const std::array<bool, 4> joined{hasSheet(sheets, sheet.column, sheet.row + 1), hasSheet(sheets, sheet.column + 1, sheet.row),
                                     hasSheet(sheets, sheet.column, sheet.row - 1), hasSheet(sheets, sheet.column - 1, sheet.row)};
    for (std::size_t i = 0; i < corners.size(); ++i) {
        drawing.marks.emplace_back(
            Stroke{joined[i] ? Ink::SheetJoint : Ink::SheetEdge, corners[i], corners[(i + 1) % corners.size()], sheetNameOf(sheet)});
    }
}

}  // namespace

std::string sheetNameOf(const Sheet& sheet) {
    return std::string(1, static_cast<char>('A' + sheet.row % 26)) + std::to_string(sheet.column + 1);
}

Drawing sheetMap(const Sheets& sheets) {
    Drawing drawing;
    if (sheets.sheets.empty()) return drawing;
    drawing.bounds = sheets.sheets.front().window;
    for (const Sheet& sheet : sheets.sheets) {
        const auto& [low, high] = sheet.window;
        drawing.bounds = {{std::min(drawing.bounds.low.x, low.x), std::min(drawing.bounds.low.y, low.y)},
                          {std::max(drawing.bounds.high.x, high.x), std::max(drawing.bounds.high.y, high.y)}};
        addSides(drawing, sheets, sheet);
    }
    if (sheets.sheets.size() < 2) return drawing;
    for (const Sheet& sheet : sheets.sheets) {
        const auto& [low, high] = sheet.window;
        drawing.marks.emplace_back(Label{Ink::SheetEdge, {(low.x + high.x) / 2, (low.y + high.y) / 2}, sheetNameOf(sheet), kNameHeight,
                                         Anchor::Middle, 0, sheetNameOf(sheet)});
    }
    return drawing;
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/sheets.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "core/drawing/blank_sheets.h"
#include "core/says/paper_name.h"

namespace kerfwall {
namespace {

struct NamedPaper {
    const char* name;
    double width;
    double height;
};

constexpr double kInch = 25.4;  // mm, exactly

// ISO 216; ANSI/ASME Y14.1 for the others. Upright, mm.
constexpr std::array kPapers{
    NamedPaper{"a4", 210, 297},
    NamedPaper{"a3", 297, 420},
    NamedPaper{"a2", 420, 594},
    NamedPaper{"a1", 594, 841},
    NamedPaper{"a0", 841, 1189},
    NamedPaper{"letter", 8.5 * kInch, 11 * kInch},
    NamedPaper{"tabloid", 11 * kInch, 17 * kInch},
    NamedPaper{"ansi-c", 17 * kInch, 22 * kInch},
    NamedPaper{"ansi-d", 22 * kInch, 34 * kInch},
    NamedPaper{"ansi-e", 34 * kInch, 44 * kInch},
};

constexpr double kSameLength = 1e-9;  // mm: a panel that fits to the last digit takes no further sheet

Tiles tilesAlong(double size, double room, double overlap) {
    Tiles tiles;
    tiles.window = room;
    // An overlap of the whole sheet would never get on.
    tiles.step = std::max(room - overlap, room / 10);
    const double share = room - tiles.step;
    tiles.count = std::max(1, static_cast<int>(std::ceil((size - share) / tiles.step - kSameLength)));
    return tiles;
}

Sheets tiled(const Panel& panel, const Printing& printing, const Paper& paper, const std::vector<Stretch>* drawn) {
    Sheets sheets;
    sheets.paper = paper;
    // On the printer 1 mm of the pattern is scale mm: less of the panel fits where it is stretched.
    const double margin = std::min(std::max(printing.margin, kLeastMargin), std::min(paper.width, paper.height) / 3);
    const Tiles across = tilesAlong(panel.width, (paper.width - 2 * margin) / printing.scaleX, printing.overlap);
    const Tiles up = tilesAlong(panel.height, (paper.height - 2 * margin) / printing.scaleY, printing.overlap);
    sheets.columns = across.count;
    sheets.rows = up.count;
    const std::vector<bool> kept = drawn ? sheetsWithMarks(across, up, *drawn)
                                         : std::vector<bool>(static_cast<std::size_t>(across.count) * up.count, true);
    for (int row = 0; row < up.count; ++row) {
        const int fromBelow = up.count - 1 - row;
        const double low = fromBelow * up.step;
        for (int column = 0; column < across.count; ++column) {
            if (!kept[static_cast<std::size_t>(fromBelow) * across.count + column]) continue;
            const double left = column * across.step;
            sheets.sheets.push_back({column, row, {{left, low}, {left + across.window, low + up.window}}, {margin, margin}});
        }
    }
    return sheets;
}

/// A roll's paper as long as the pattern takes, the panel's y or its x along the roll.
Paper cutFromRoll(const Panel& panel, const Printing& printing, const Paper& paper, double width, bool upright) {
    const double margins = 2 * std::max(printing.margin, kLeastMargin);
    return upright ? Paper{paper.name, width, panel.height * printing.scaleY + margins}
                   : Paper{paper.name, panel.width * printing.scaleX + margins, width};
}

Sheets fewestSheets(const Panel& panel, const Printing& printing, const Paper& paper, const std::vector<Stretch>* drawn) {
    if (paper.name == "panel") {
        return {paper, 1, 1, {{0, 0, {{0, 0}, {panel.width, panel.height}}, {0, 0}}}};
    }
    if (paper.name == "printer") return tiled(panel, printing, paper, drawn);
    Paper first = paper;
    Paper second{paper.name, paper.height, paper.width};
    if (const std::optional<double> width = rollWidth(paper.name)) {
        first = cutFromRoll(panel, printing, paper, *width, true);
        second = cutFromRoll(panel, printing, paper, *width, false);
    }
    Sheets upright = tiled(panel, printing, first, drawn);
    Sheets lying = tiled(panel, printing, second, drawn);
    return lying.sheets.size() < upright.sheets.size() ? lying : upright;
}

}  // namespace

std::expected<Paper, std::string> paperOf(const std::string& name, const Panel& panel) {
    if (name == "panel") return Paper{name, panel.width, panel.height};
    if (const std::optional<double> width = rollWidth(name)) return Paper{name, *width, panel.height + 2 * kLeastMargin};
    for (const NamedPaper& paper : kPapers) {
        if (name == paper.name) return Paper{name, paper.width, paper.height};
    }
    return std::unexpected("\"" + name + "\" is not a paper; allowed is one of " + paperNamesInWords() + ".");
}

Sheets sheetsFor(const Panel& panel, const Printing& printing, const Paper& paper) {
    return fewestSheets(panel, printing, paper, nullptr);
}

Sheets sheetsFor(const Panel& panel, const Printing& printing, const Paper& paper, const std::vector<Stretch>& drawn) {
    return fewestSheets(panel, printing, paper, &drawn);
}

}  // namespace kerfwall

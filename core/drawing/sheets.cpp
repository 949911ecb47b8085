// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/sheets.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace kerfwall {
namespace {

struct NamedPaper {
    const char* name;
    double width;
    double height;
};

// ISO 216; ANSI/ASME Y14.1 for letter and tabloid. Upright, mm.
constexpr std::array kPapers{
    NamedPaper{"a4", 210, 297},          NamedPaper{"a3", 297, 420},  NamedPaper{"a2", 420, 594},
    NamedPaper{"a1", 594, 841},          NamedPaper{"a0", 841, 1189}, NamedPaper{"letter", 215.9, 279.4},
    NamedPaper{"tabloid", 279.4, 431.8},
};

constexpr double kSameLength = 1e-9;  // mm: a panel that fits to the last digit takes no further sheet

/// One direction of the tiling: where each sheet's window begins, and how long it is.
struct Tiles {
    int count = 1;
    double first = 0;
    double window = 0;
    double step = 0;
};

Tiles tilesAlong(double size, double room, double overlap) {
    Tiles tiles;
    tiles.window = room;
    // An overlap of the whole sheet would never get on.
    tiles.step = std::max(room - overlap, room / 10);
    const double share = room - tiles.step;
    tiles.count = std::max(1, static_cast<int>(std::ceil((size - share) / tiles.step - kSameLength)));
    const double covered = tiles.count * tiles.step + share;
    tiles.first = -(covered - size) / 2;  // the spare paper lies half on either side of the panel
    return tiles;
}

}  // namespace

std::expected<Paper, std::string> paperOf(const std::string& name, const Panel& panel) {
    if (name == "panel") return Paper{name, panel.width, panel.height};
    for (const NamedPaper& paper : kPapers) {
        if (name == paper.name) return Paper{name, paper.width, paper.height};
    }
    return std::unexpected("\"" + name +
                           "\" is not a paper; a4, a3, a2, a1, a0, letter, tabloid and panel are.");
}

Sheets sheetsFor(const Panel& panel, const Printing& printing, const Paper& paper) {
    Sheets sheets;
    sheets.paper = paper;
    if (paper.name == "panel") {
        sheets.columns = sheets.rows = 1;
        sheets.sheets.push_back({0, 0, {{0, 0}, {panel.width, panel.height}}, {0, 0}});
        return sheets;
    }
    // On the printer 1 mm of the pattern is scale mm: less of the panel fits where it is stretched.
    const double margin = std::min(printing.margin, std::min(paper.width, paper.height) / 3);
    const Tiles across =
        tilesAlong(panel.width, (paper.width - 2 * margin) / printing.scaleX, printing.overlap);
    const Tiles up =
        tilesAlong(panel.height, (paper.height - 2 * margin) / printing.scaleY, printing.overlap);
    sheets.columns = across.count;
    sheets.rows = up.count;
    for (int row = 0; row < up.count; ++row) {
        const double low = up.first + (up.count - 1 - row) * up.step;
        for (int column = 0; column < across.count; ++column) {
            const double left = across.first + column * across.step;
            sheets.sheets.push_back(
                {column, row, {{left, low}, {left + across.window, low + up.window}}, {margin, margin}});
        }
    }
    return sheets;
}

}  // namespace kerfwall

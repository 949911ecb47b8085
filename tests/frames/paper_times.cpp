// SPDX-License-Identifier: GPL-3.0-or-later
// How long the full-size pattern of a 3000 x 3000 panel on A4 takes to be written as a PDF, and how much memory: its own sheets
// only, and beside it, in the same run, the same sheets drawn by the toolkit's general SVG renderer from the pattern's SVG.
#include <sys/resource.h>

#include <QSvgRenderer>
#include <cstdio>

#include "core/drawing/pattern_drawing.h"
#include "core/geometry/solve.h"
#include "tests/bench/bench_layouts.h"
#include "tests/frames/offscreen_run.h"
#include "ui/paper_pattern.h"
#include "ui/paper_svg.h"

namespace kerfwall {
namespace {

/// Windows on every part of a panel of 3000 x 3000.
Project largePanel(int lines) {
    Project project = bench::windows(lines);
    const double grow = std::min(3000 / project.panel.width, 3000 / project.panel.height);
    project.panel.width = project.panel.height = 3000;
    for (LayoutLine& line : project.lines) {
        if (auto* points = std::get_if<ByPoints>(&line.place)) *points = {grow * points->p, grow * points->q};
    }
    for (Cutout& cutout : project.cutouts) {
        for (Point& seed : cutout.seeds) seed = grow * seed;
    }
    return project;
}

double peakMegabytes() {
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    return static_cast<double>(used.ru_maxrss) / 1024;
}

std::vector<PaperPage> bySvg(const Project& project, const Solved& solved, const Sheets& sheets, QSvgRenderer& renderer) {
    const QByteArray svg = svgOf(patternDrawing(project, solved), project.panel.width, project.panel.height, QStringLiteral("pattern"));
    renderer.load(svg);
    std::vector<PaperPage> pages;
    for (const Sheet& sheet : sheets.sheets) {
        pages.push_back({sheets.paper.width, sheets.paper.height, [&, sheet](QPainter& painter) {
                             const double foot = sheets.paper.height - sheet.corner.y + sheet.window.low.y;
                             painter.setClipRect(QRectF(sheet.corner.x, sheets.paper.height - sheet.corner.y - (sheet.window.high.y - sheet.window.low.y),
                                                        sheet.window.high.x - sheet.window.low.x, sheet.window.high.y - sheet.window.low.y));
                             renderer.render(&painter, QRectF(sheet.corner.x - sheet.window.low.x, foot - project.panel.height, project.panel.width,
                                                              project.panel.height));
                         }});
    }
    return pages;
}

struct Written {
    std::size_t sheets = 0;
    double took = 0;  // ms
};

Written writeOwn(int lines) {
    const Project project = largePanel(lines);
    const Solved solved = solve(project);
    const double before = frames::processorTime();
    const auto pages = patternPages(project, solved, {}, *paperOf("a4", project.panel));
    const auto pdf = pdfOf(pages, QStringLiteral("pattern"));
    const Written written{pages.size(), frames::processorTime() - before};
    std::printf("%3d lines, %3zu sheets of A4: %.2f s, %.1f MB of PDF, peak memory %.0f MB\n", lines, written.sheets, written.took / 1e3,
                static_cast<double>(pdf ? pdf->size() : 0) / 1e6, peakMegabytes());
    return written;
}

void writeBySvg(int lines, const Written& own) {
    const Project project = largePanel(lines);
    const Solved solved = solve(project);
    const Sheets sheets = patternSheets(project, solved, *paperOf("a4", project.panel));
    QSvgRenderer renderer;
    const double before = frames::processorTime();
    const auto pdf = pdfOf(bySvg(project, solved, sheets, renderer), QStringLiteral("pattern"));
    const double took = frames::processorTime() - before;
    std::printf("%3d lines by the SVG renderer: %.2f s, %.1f MB of PDF: %.0f times as long\n", lines, took / 1e3,
                static_cast<double>(pdf ? pdf->size() : 0) / 1e6, took / own.took);
}

}  // namespace
}  // namespace kerfwall

int main(int argc, char** argv) {
    const kerfwall::frames::OffscreenRun run(argc, argv);
    // Its own first: memory once taken is not given back.
    const kerfwall::Written few = kerfwall::writeOwn(12);
    const kerfwall::Written more = kerfwall::writeOwn(40);
    kerfwall::writeOwn(200);
    kerfwall::writeBySvg(12, few);
    kerfwall::writeBySvg(40, more);
}

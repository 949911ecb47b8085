// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <algorithm>
#include <cmath>

#include "core/geometry/solve.h"
#include "tests/ui/papers/read_paper.h"
#include "tests/ui/papers/read_paths.h"
#include "ui/paper_pattern.h"

namespace kerfwall {
namespace {

constexpr double kLineWithin = 0.005;  // mm
constexpr double kArcWithin = 0.010;   // mm

/// A sheet as pencil lays it: the paper's size as it lies, and where the panel's bottom-left corner falls on each page.
struct Grid {
    double width = 0;
    double height = 0;
    int columns = 1;
    int rows = 1;
    double stepX = 0;
    double stepY = 0;
    double margin = 0;
};

int countAlong(double size, double room) {
    int count = 1;
    for (double covered = room; covered < size - 1e-9; covered += room - 10) ++count;
    return count;
}

/// Margin and overlap 10; upright unless lying takes fewer.
Grid gridOf(const Panel& panel, double width, double height) {
    const auto lay = [&](double w, double h) {
        return Grid{w, h, countAlong(panel.width, w - 20), countAlong(panel.height, h - 20), w - 30, h - 30, 10};
    };
    const Grid upright = lay(width, height);
    const Grid lying = lay(height, width);
    return lying.columns * lying.rows < upright.columns * upright.rows ? lying : upright;
}

struct Expected {
    std::vector<std::pair<Point, Point>> lines;
    std::vector<OutlinePiece> arcs;
};

/// Straight from the solved project, not from any drawing.
Expected expectedOf(const Project& project, const Solved& solved) {
    Expected expected;
    const double w = project.panel.width;
    const double h = project.panel.height;
    expected.lines = {{{0, 0}, {w, 0}}, {{w, 0}, {w, h}}, {{w, h}, {0, h}}, {{0, h}, {0, 0}}};
    for (const SolvedLine& line : solved.lines) expected.lines.emplace_back(line.from, line.to);
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const Outline* outline : {&cutout.opening, &cutout.work}) {
            for (const OutlineLoop& loop : outline->loops) {
                for (const OutlinePiece& piece : loop) {
                    if (piece.isArc) {
                        expected.arcs.push_back(piece);
                    } else {
                        expected.lines.emplace_back(piece.from, piece.to);
                    }
                }
            }
        }
    }
    return expected;
}

bool isFound(const PagePaths& page, Point from, Point to) {
    return std::ranges::any_of(page.lines, [&](const PageLine& line) {
        const bool along = distance(line.from, from) < kLineWithin && distance(line.to, to) < kLineWithin;
        const bool back = distance(line.from, to) < kLineWithin && distance(line.to, from) < kLineWithin;
        return along || back;
    });
}

bool reaches(Point from, Point to, double left, double top, double right, double bottom) {
    for (int i = 0; i <= 200; ++i) {
        const Point at = from + (i / 200.0) * (to - from);
        if (at.x > left && at.x < right && at.y > top && at.y < bottom) return true;
    }
    return false;
}

Point on(const PageCurve& curve, double t) {
    const double s = 1 - t;
    const auto& h = curve.handles;
    return (s * s * s) * h[0] + (3 * s * s * t) * h[1] + (3 * s * t * t) * h[2] + (t * t * t) * h[3];
}

/// Every cubic of the arc's own circle on the page stays on it, and the arc's both ends are met.
void expectArc(const PagePaths& page, Point centre, double radius, Point from, Point to, const std::string& what) {
    bool starts = false;
    bool ends = false;
    for (const PageCurve& curve : page.curves) {
        const double away = std::max(std::abs(distance(curve.handles[0], centre) - radius),
                                     std::abs(distance(curve.handles[3], centre) - radius));
        if (away > 0.02) continue;
        double worst = 0;
        for (int i = 0; i <= 20; ++i) worst = std::max(worst, std::abs(distance(on(curve, i / 20.0), centre) - radius));
        if (worst > 0.3) continue;  // another circle through both ends
        EXPECT_LT(worst, kArcWithin) << what;
        starts = starts || distance(curve.handles[0], from) < kArcWithin || distance(curve.handles[3], from) < kArcWithin;
        ends = ends || distance(curve.handles[0], to) < kArcWithin || distance(curve.handles[3], to) < kArcWithin;
    }
    EXPECT_TRUE(starts && ends) << what << ": an arc's end is not where it should be";
}

struct Case {
    const char* paper;
    double width;  // upright, mm; 0: as large as the panel
    double height;
};

class TrueToSize : public testing::TestWithParam<const char*> {
  protected:
    void check(const Project& project, const Case& one) {
        const Solved solved = solve(project);
        const std::string what = std::string(GetParam()) + " on " + one.paper + (project.printing.face == Face::Back ? ", back" : "");
        const auto pdf = pdfOf(patternPages(project, solved, {}, *paperOf(one.paper, project.panel)), QStringLiteral("t"));
        ASSERT_TRUE(pdf) << what;
        QFile file(m_dir.filePath(QStringLiteral("pattern.pdf")));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(*pdf);
        file.close();
        const std::vector<PagePaths> pages = pathsOf(file.fileName());
        const Panel& panel = project.panel;
        const Grid grid = one.width == 0 ? Grid{panel.width, panel.height} : gridOf(panel, one.width, one.height);
        const Expected expected = expectedOf(project, solved);
        ASSERT_EQ(pages.size(), static_cast<std::size_t>(grid.columns * grid.rows)) << what;
        for (std::size_t page = 0; page < pages.size(); ++page) {
            checkPage(pages[page], grid, static_cast<int>(page) % grid.columns, static_cast<int>(page) / grid.columns, project,
                      expected, what + ", page " + std::to_string(page + 1));
        }
    }

    static void checkPage(const PagePaths& page, const Grid& grid, int column, int row, const Project& project,
                          const Expected& expected, const std::string& what) {
        const double left = grid.margin - column * grid.stepX;
        const double foot = grid.height - grid.margin + (grid.rows - 1 - row) * grid.stepY;
        const auto put = [&](Point place) {
            return Point{left + (project.printing.face == Face::Back ? project.panel.width - place.x : place.x), foot - place.y};
        };
        for (const auto& [from, to] : expected.lines) {
            if (!reaches(put(from), put(to), grid.margin, grid.margin, grid.width - grid.margin, grid.height - grid.margin)) continue;
            EXPECT_TRUE(isFound(page, put(from), put(to))) << what << ": " << from.x << "," << from.y << " to " << to.x << "," << to.y;
        }
        for (const OutlinePiece& arc : expected.arcs) {
            const Point centre = put(arc.centre);
            const bool seen = centre.x - arc.radius > grid.margin && centre.x + arc.radius < grid.width - grid.margin &&
                              centre.y - arc.radius > grid.margin && centre.y + arc.radius < grid.height - grid.margin;
            if (seen) expectArc(page, centre, arc.radius, put(arc.from), put(arc.to), what);
        }
    }

    QTemporaryDir m_dir;
};

// Expected from: the solved project's own places, mapped by pencil: the grid begins at the panel's bottom-left corner, which
// lies 10 from the left and the bottom of the lowest row's first sheet; each sheet shows the paper less 20, less 10 of overlap.
// ISO 216, ANSI/ASME Y14.1. On the back x counts from the right.
TEST_P(TrueToSize, EveryLineLiesWithin5AndEveryArcWithin10MicrometresOnEveryPaper) {
    Project project = sampleProject(QString::fromLatin1(GetParam()));
    for (const Face face : {Face::Layout, Face::Back}) {
        project.printing.face = face;
        for (const Case& one : {Case{"a4", 210, 297}, Case{"letter", 215.9, 279.4}, Case{"a3", 297, 420},
                                Case{"tabloid", 279.4, 431.8}, Case{"a0", 841, 1189}, Case{"panel", 0, 0}}) {
            check(project, one);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Samples, TrueToSize,
                         testing::Values("bench_leg.kerfwall", "crate_end.kerfwall", "mind_these.kerfwall", "round_window.kerfwall",
                                         "stall_pennant.kerfwall"),
                         [](const auto& one) { return QString::fromLatin1(one.param).section(QLatin1Char('.'), 0, 0).toStdString(); });

}  // namespace
}  // namespace kerfwall

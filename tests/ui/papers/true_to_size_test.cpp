// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/drawing/pattern_drawing.h"
#include "core/geometry/solve.h"
#include "tests/ui/papers/expected_marks.h"
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

/// The page's cubics on that circle, none further off it than an arc may be.
std::vector<PageCurve> cubicsOn(const PagePaths& page, Point centre, double radius, const std::string& what) {
    std::vector<PageCurve> found;
    for (const PageCurve& curve : page.curves) {
        const double away = std::max(std::abs(distance(curve.handles[0], centre) - radius),
                                     std::abs(distance(curve.handles[3], centre) - radius));
        if (away > 0.02) continue;
        double worst = 0;
        for (int i = 0; i <= 20; ++i) worst = std::max(worst, std::abs(distance(on(curve, i / 20.0), centre) - radius));
        if (worst > 0.3) continue;  // another circle through both ends
        EXPECT_LT(worst, kArcWithin) << what;
        found.push_back(curve);
    }
    return found;
}

/// The arc's both ends are met by cubics of its circle.
void expectArc(const PagePaths& page, Point centre, double radius, Point from, Point to, const std::string& what) {
    const std::vector<PageCurve> cubics = cubicsOn(page, centre, radius, what);
    const auto met = [&](Point end) {
        return std::ranges::any_of(cubics, [&](const PageCurve& curve) {
            return distance(curve.handles[0], end) < kArcWithin || distance(curve.handles[3], end) < kArcWithin;
        });
    };
    EXPECT_TRUE(met(from) && met(to)) << what << ": an arc's end is not where it should be";
}

/// Cubics go round the whole circle, or further where an outline's arc lies on it.
void expectCircle(const PagePaths& page, Point centre, double radius, const std::string& what) {
    double sweep = 0;
    for (const PageCurve& curve : cubicsOn(page, centre, radius, what)) {
        const Point start = unit(curve.handles[0] - centre);
        const Point end = unit(curve.handles[3] - centre);
        sweep += std::abs(std::atan2(cross(start, end), dot(start, end)));
    }
    EXPECT_GT(sweep, 2 * std::numbers::pi - 1e-3) << what << ": a hole of radius " << radius << " at " << centre.x << "," << centre.y;
}

Drawing unmirroredPattern(Project project, const Solved& solved) {
    project.printing.face = Face::Layout;
    return patternDrawing(project, solved);
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
        ExpectedMarks expected = expectedMarks(project, solved);
        const Drawing drawing = unmirroredPattern(project, solved);
        // Centre lines, tangent marks, ticks and hatching, whose places tests of the drawing check by pencil.
        for (const Mark& mark : drawing.marks) {
            if (const auto* stroke = std::get_if<Stroke>(&mark)) expected.lines.emplace_back(stroke->from, stroke->to);
        }
        ASSERT_EQ(pages.size(), static_cast<std::size_t>(grid.columns * grid.rows)) << what;
        for (std::size_t page = 0; page < pages.size(); ++page) {
            checkPage(pages[page], grid, static_cast<int>(page) % grid.columns, static_cast<int>(page) / grid.columns, project,
                      expected, what + ", page " + std::to_string(page + 1));
        }
    }

    static void checkPage(const PagePaths& page, const Grid& grid, int column, int row, const Project& project,
                          const ExpectedMarks& expected, const std::string& what) {
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
            if (meets(grid, centre, arc.radius)) expectArc(page, centre, arc.radius, put(arc.from), put(arc.to), what);
        }
        for (const ExpectedCircle& circle : expected.circles) {
            const Point centre = put(circle.centre);
            if (meets(grid, centre, circle.radius)) expectCircle(page, centre, circle.radius, what);
        }
    }

    /// Whether some of the circle round the arc lies in the sheet's window; a path is written whole wherever a part of it shows.
    static bool meets(const Grid& grid, Point centre, double radius) {
        const Point near{std::clamp(centre.x, grid.margin, grid.width - grid.margin), std::clamp(centre.y, grid.margin, grid.height - grid.margin)};
        return distance(near, centre) < radius;
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

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print_pages.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QPrinter>
#include <QTemporaryDir>
#include <algorithm>
#include <cmath>

#include "core/geometry/solve.h"
#include "tests/core/geometry/projects.h"
#include "tests/ui/papers/read_paths.h"
#include "ui/papers.h"
#include "ui/print_labels.h"
#include "ui/print_wish.h"
#include "ui/printers.h"

namespace kerfwall {
namespace {

class PrintIntoFile : public testing::Test {
  protected:
    PrintIntoFile() {
        m_printer.setOutputFormat(QPrinter::PdfFormat);
        m_printer.setOutputFileName(m_dir.filePath(QStringLiteral("printed.pdf")));
    }
    [[nodiscard]] QString path() const { return m_printer.outputFileName(); }

    QTemporaryDir m_dir;
    QPrinter m_printer{QPrinter::HighResolution};
};

/// 1500 x 1200 with a line 400 above the bottom: more than one piece of any roll here.
Project wideStall() {
    Project project = test::panelOf(1500, 1200);
    project.lines = {test::offsetLine("A", Edge::Bottom, 400)};
    return project;
}

// Expected from: pencil. A roll of 610 with margins of 10 shows 590 across; with 10 of overlap the panel's 1200 takes three
// strips (590, 1170, 1750), and so does its 1500. Whichever way it lies, the line is one stroke of 1500 on each sheet it shows on.
TEST_F(PrintIntoFile, ARollIsReadBackWithin5Micrometres) {
    Project project = wideStall();
    const Solved solved = solve(project);
    const PrintWish wish{};
    project.printing.paper = "roll-610";
    const Sheets sheets = printSheets(project, solved, wish);
    ASSERT_EQ(std::min(sheets.paper.width, sheets.paper.height), 610);
    setUp(m_printer, sheets.paper);
    ASSERT_TRUE(printPattern(m_printer, project, solved, {}));
    const auto pages = pathsOf(path());
    ASSERT_EQ(pages.size(), 3U);
    ASSERT_EQ(sheets.sheets.size(), 3U);
    std::size_t seen = 0;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const Sheet& sheet = sheets.sheets[i];
        const double left = sheet.corner.x - sheet.window.low.x;
        const double foot = sheets.paper.height - sheet.corner.y + sheet.window.low.y - 400;
        if (400 < sheet.window.low.y || 400 > sheet.window.high.y) continue;
        ++seen;
        const auto isLine = [&](const PageLine& line) {
            return std::abs(std::min(line.from.x, line.to.x) - left) < 0.005 && std::abs(std::max(line.from.x, line.to.x) - left - 1500) < 0.005 &&
                   std::abs(line.from.y - foot) < 0.005 && std::abs(line.to.y - foot) < 0.005;
        };
        EXPECT_TRUE(std::ranges::any_of(pages[i].lines, isLine)) << "sheet " << i + 1;
    }
    EXPECT_GT(seen, 0U);
}

// Expected from: pencil. A panel of 270 x 180 takes one A4 on its side, its corner 10 from the sheet's, and the line 100 above it.
TEST_F(PrintIntoFile, PaperOnItsSideIsPrintedOnItsSide) {
    Project project = test::panelOf(270, 180);
    project.lines = {test::offsetLine("A", Edge::Bottom, 100)};
    const Solved solved = solve(project);
    setUp(m_printer, printSheets(project, solved, {}).paper);
    ASSERT_TRUE(printPattern(m_printer, project, solved, {}));
    const auto pages = pathsOf(path());
    ASSERT_EQ(pages.size(), 1U);
    EXPECT_TRUE(std::ranges::any_of(pages[0].lines, [](const PageLine& line) {
        return distance(line.from, {10, 100}) < 0.005 && distance(line.to, {280, 100}) < 0.005;
    }));
}

TEST_F(PrintIntoFile, StoppedHalfWayTheOldFileStaysAndNothingElseLies) {
    QFile old(path());
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    m_printer.setPageSize(QPageSize(QPageSize::A4));
    std::size_t told = 0;
    const Project project = wideStall();
    const auto printed = printPattern(m_printer, project, solve(project), {}, [&](std::size_t sheet, std::size_t all) {
        told = sheet;
        EXPECT_GT(all, 20U);
        return sheet < 3;
    });
    ASSERT_FALSE(printed);
    EXPECT_EQ(told, 3U);
    EXPECT_TRUE(printed.error().contains(QStringLiteral("nothing was written"))) << printed.error().toStdString();
    EXPECT_EQ(QDir(m_dir.path()).entryList(QDir::Files), QStringList{QStringLiteral("printed.pdf")});
    ASSERT_TRUE(old.open(QIODevice::ReadOnly));
    EXPECT_EQ(old.readAll(), "old");
}

TEST_F(PrintIntoFile, SaysWhyWhereItCannotBeWritten) {
    m_printer.setOutputFileName(m_dir.filePath(QStringLiteral("no/such/folder/printed.pdf")));
    const Project project = wideStall();
    for (const auto& printed : {printPattern(m_printer, project, solve(project), {}), printLabels(m_printer, project, solve(project), {})}) {
        ASSERT_FALSE(printed);
        EXPECT_TRUE(printed.error().contains(QStringLiteral("could not be written"))) << printed.error().toStdString();
    }
    EXPECT_FALSE(QDir(m_dir.filePath(QStringLiteral("no"))).exists());
}

}  // namespace
}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print_labels.h"

#include <gtest/gtest.h>

#include <QPageLayout>
#include <QPrinter>
#include <QTemporaryDir>

#include "core/geometry/solve.h"
#include "tests/core/geometry/projects.h"
#include "tests/ui/papers/read_paper.h"
#include "tests/ui/papers/text_boxes.h"

namespace kerfwall {
namespace {

// Expected from: pencil, as for labelGrid: eight on A4 upright; A3's sixteen lie across it, and all stand on the sheet.
TEST(PrintLabels, FillTheSheet) {
    const QTemporaryDir dir;
    const Project project = test::windowProject();
    for (const auto& [size, labels, sheet] : {std::tuple(QPageSize::A4, 8, QRectF(0, 0, 210, 297)), std::tuple(QPageSize::A3, 16, QRectF(0, 0, 297, 420))}) {
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(dir.filePath(QStringLiteral("labels.pdf")));
        printer.setPageSize(QPageSize(size));
        ASSERT_TRUE(printLabels(printer, project, solve(project), {}));
        const QString text = textOf(printer.outputFileName());
        EXPECT_EQ(text.count(QStringLiteral("Made on")), labels);
        for (const TextBox& box : textBoxesOf(printer.outputFileName())) EXPECT_TRUE(sheet.contains(box.box)) << box.text.toStdString();
    }
}

}  // namespace
}  // namespace kerfwall

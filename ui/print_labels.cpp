// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print_labels.h"

#include <QPainter>
#include <QPrinter>

#include "ui/paper_label.h"
#include "ui/paper_text.h"

namespace kerfwall {

std::expected<void, QString> printLabels(QPrinter& printer, const Project& project, const Solved& solved, const std::vector<Finding>& findings) {
    printer.setFullPage(true);
    const QRectF sheet = printer.paperRect(QPrinter::Millimeter);
    const Paper paper{"printer", sheet.width(), sheet.height()};
    const LabelGrid grid = labelGrid(paper);
    const PaperPage page = grid.columns * grid.rows > 0 ? labelSheet(project, solved, findings, paper) : labelPage(project, solved, findings);
    QPainter painter;
    if (!painter.begin(&printer)) {
        return std::unexpected(PaperWords::tr("\u201c%1\u201d did not take the labels; check the printer, or publish the papers and print label.pdf.").arg(printer.printerName()));
    }
    const double perMm = printer.resolution() / 25.4;
    painter.scale(perMm, perMm);
    if (grid.isTurned && grid.columns * grid.rows > 0) {
        painter.translate(sheet.width(), 0);
        painter.rotate(90);
    }
    page.paint(painter);
    if (!painter.end()) return std::unexpected(PaperWords::tr("The labels were not printed; check the printer and print again."));
    return {};
}

}  // namespace kerfwall

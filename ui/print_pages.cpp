// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print_pages.h"

#include <QPainter>
#include <QPrinter>

#include "ui/paper_text.h"
#include "ui/whole_file.h"

namespace kerfwall {
namespace {

std::expected<void, QString> printIntoFile(const QPrinter& printer, const std::vector<PaperPage>& pages, const PaperProgress& progress) {
    const auto pdf = pdfOf(pages, printer.docName(), progress);
    if (!pdf) return std::unexpected(pdf.error());
    const auto written = writeWhole(printer.outputFileName(), *pdf);
    if (written) return {};
    return std::unexpected(unwrittenSentence(printer.outputFileName(), written.error()));
}

QString stoppedAfter(std::size_t sheet, std::size_t all) {
    return PaperWords::tr("Stopped after sheet %1 of %2; what the printer has already taken may still come out.").arg(sheet).arg(all);
}

}  // namespace

Paper paperIn(const QPrinter& printer) {
    const QRectF sheet = printer.paperRect(QPrinter::Millimeter);
    return {"printer", sheet.width(), sheet.height()};
}

std::expected<void, QString> printPages(QPrinter& printer, const std::vector<PaperPage>& pages, const PaperProgress& progress) {
    if (!printer.outputFileName().isEmpty()) return printIntoFile(printer, pages, progress);
    printer.setFullPage(true);
    QPainter painter;
    if (!painter.begin(&printer)) {
        return std::unexpected(
            PaperWords::tr("\u201c%1\u201d did not take the sheets; check the printer, or publish the papers and print their PDF.").arg(printer.printerName()));
    }
    const double perMm = printer.resolution() / 25.4;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0 && !printer.newPage()) {
            return std::unexpected(
                PaperWords::tr("The printer stopped after sheet %1 of %2; check it and print again.").arg(i).arg(pages.size()));
        }
        painter.save();
        painter.scale(perMm, perMm);
        pages[i].paint(painter);
        painter.restore();
        if (progress && !progress(i + 1, pages.size())) {
            printer.abort();
            return std::unexpected(stoppedAfter(i + 1, pages.size()));
        }
    }
    if (!painter.end()) return std::unexpected(PaperWords::tr("The last sheet was not printed; check the printer and print again."));
    return {};
}

}  // namespace kerfwall

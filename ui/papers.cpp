// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/papers.h"

#include <unistd.h>

#include <QBuffer>
#include <QDir>
#include <QPrinter>
#include <QSaveFile>
#include <memory>
#include <utility>

#include "core/shop/report_text.h"
#include "ui/paper_edges.h"
#include "ui/paper_facts.h"
#include "ui/paper_label.h"
#include "ui/paper_pattern.h"
#include "ui/paper_picture.h"
#include "ui/paper_setup.h"
#include "ui/paper_svg.h"
#include "ui/paper_text.h"

namespace kerfwall {
namespace {

constexpr int kPictureWidth = 1600;  // pixels
constexpr int kPictureQuality = 20;  // of lossless PNG: small files

struct NamedBytes {
    QString name;
    QByteArray bytes;
};

std::expected<std::vector<NamedBytes>, QString> madePapers(const Project& project, const Solved& solved,
                                                           const std::vector<Finding>& findings,
                                                           const OrderOfWork& order, const Paper& paper,
                                                           const PaperProgress& progress, EdgeStrips strips) {
    const QString title = titleOf(project);
    const auto pattern = pdfOf(patternPages(project, solved, findings, paper), title, progress);
    if (!pattern) return std::unexpected(pattern.error());
    const auto setup = pdfOf(setupPages(project, solved, findings, order, paper), title);
    if (!setup) return std::unexpected(setup.error());
    const auto label = pdfOf({labelPage(project, solved, findings)}, title);
    if (!label) return std::unexpected(label.error());
    QBuffer picture;
    picture.open(QIODevice::WriteOnly);
    pictureOf(project, solved, findings, kPictureWidth).save(&picture, "PNG", kPictureQuality);
    Project seen = project;  // the layout face; hatching would hide the outlines from a reader of the file
    seen.printing.face = Face::Layout;
    seen.printing.leaveOut.push_back(PatternLayer::Waste);
    Drawing drawing = patternDrawing(seen, solved);
    addUnsure(drawing, project.panel, findings);
    std::vector<NamedBytes> papers{
        {QStringLiteral("pattern.pdf"), *pattern},
        {QStringLiteral("pattern.svg"), svgOf(drawing, project.panel.width, project.panel.height, title)},
        {QStringLiteral("setup-sheet.pdf"), *setup},
        {QStringLiteral("label.pdf"), *label},
        {QStringLiteral("picture.png"), picture.data()},
        {QStringLiteral("report.json"),
         QByteArray::fromStdString(reportText(project, solved, findings, order))},
    };
    if (strips == EdgeStrips::LeftOut) return papers;
    const auto edges = pdfOf(edgeStripPages(project, solved, findings, paper), title);
    if (!edges) return std::unexpected(edges.error());
    papers.push_back({QStringLiteral("edge-marks.pdf"), *edges});
    return papers;
}

QString trouble(const QString& path, const QString& why) {
    return PaperWords::tr("%1 could not be written (%2); choose another folder or make room, and try again.")
        .arg(QDir::toNativeSeparators(path), why);
}

/// Every file is written whole beside its place before the first one takes its place.
std::expected<void, QString> writeAll(const QString& dir, const std::vector<NamedBytes>& papers) {
    if (!QDir().mkpath(dir))
        return std::unexpected(trouble(dir, PaperWords::tr("the folder cannot be made")));
    std::vector<std::unique_ptr<QSaveFile>> files;
    for (const NamedBytes& paper : papers) {
        auto file = std::make_unique<QSaveFile>(QDir(dir).filePath(paper.name));
        const bool written = file->open(QIODevice::WriteOnly) &&
                             file->write(paper.bytes) == paper.bytes.size() && file->flush() &&
                             ::fsync(file->handle()) == 0;
        if (!written) return std::unexpected(trouble(file->fileName(), file->errorString()));
        files.push_back(std::move(file));
    }
    for (const auto& file : files) {
        if (!file->commit()) return std::unexpected(trouble(file->fileName(), file->errorString()));
    }
    return {};
}

}  // namespace

std::expected<void, QString> publishPapers(const Project& project, const Solved& solved,
                                           const std::vector<Finding>& findings, const OrderOfWork& order,
                                           const QString& dir, const Paper& paper, const PaperProgress& progress,
                                           EdgeStrips strips) {
    const auto papers = madePapers(project, solved, findings, order, paper, progress, strips);
    if (!papers) return std::unexpected(papers.error());
    return writeAll(dir, *papers);
}

std::expected<void, QString> printPattern(QPrinter& printer, const Project& project, const Solved& solved,
                                          const std::vector<Finding>& findings) {
    printer.setFullPage(true);
    const QRectF sheet = printer.paperRect(QPrinter::Millimeter);
    const Paper paper{"printer", sheet.width(), sheet.height()};
    const std::vector<PaperPage> pages = patternPages(project, solved, findings, paper);
    QPainter painter;
    if (!painter.begin(&printer)) {
        return std::unexpected(
            PaperWords::tr("\u201c%1\u201d did not take the pattern; check the printer, or publish the "
                           "papers and print pattern.pdf.")
                .arg(printer.printerName()));
    }
    const double perMm = printer.resolution() / 25.4;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0 && !printer.newPage()) {
            return std::unexpected(
                PaperWords::tr("The printer stopped after sheet %1 of %2; check it and print again.")
                    .arg(i)
                    .arg(pages.size()));
        }
        painter.save();
        painter.scale(perMm, perMm);
        pages[i].paint(painter);
        painter.restore();
    }
    if (!painter.end()) {
        return std::unexpected(
            PaperWords::tr("The last sheet was not printed; check the printer and print again."));
    }
    return {};
}

}  // namespace kerfwall

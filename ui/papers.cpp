// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/papers.h"

#include <QBuffer>
#include <QDir>
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
#include "ui/print_pages.h"
#include "ui/whole_file.h"

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

/// Every file is written whole beside its place before the first one takes its place.
std::expected<void, QString> writeAll(const QString& dir, const std::vector<NamedBytes>& papers) {
    if (!QDir().mkpath(dir))
        return std::unexpected(unwrittenSentence(dir, PaperWords::tr("the folder cannot be made")));
    std::vector<std::unique_ptr<QSaveFile>> files;
    for (const NamedBytes& paper : papers) {
        auto file = std::make_unique<QSaveFile>(QDir(dir).filePath(paper.name));
        if (!writeBeside(*file, paper.bytes)) return std::unexpected(unwrittenSentence(file->fileName(), file->errorString()));
        files.push_back(std::move(file));
    }
    for (const auto& file : files) {
        if (!file->commit()) return std::unexpected(unwrittenSentence(file->fileName(), file->errorString()));
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
                                          const std::vector<Finding>& findings, const PaperProgress& progress) {
    return printPages(printer, patternPages(project, solved, findings, paperIn(printer)), progress);
}

}  // namespace kerfwall

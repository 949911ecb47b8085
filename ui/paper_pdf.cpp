// SPDX-License-Identifier: GPL-3.0-or-later
// The library asks its users to say that they hold its buffers in std::shared_ptr (4), not in its own
// older pointer.
#define POINTERHOLDER_TRANSITION 4
#include "ui/paper_pdf.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <cstdio>
#include <exception>
#include <memory>
#include <optional>
#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include "ui/paper_text.h"

namespace kerfwall {
namespace {

constexpr int kResolution = 1200;  // dots an inch; lines land exactly whatever it is
constexpr double kPointsPerMm = 72 / 25.4;

/// Nothing where it was stopped.
std::optional<QByteArray> painted(const std::vector<PaperPage>& pages, const QString& title, const PaperProgress& progress) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Kerfwall"));
    writer.setResolution(kResolution);
    const PaperPage& first = pages.front();
    // QPageSize turns wide sizes upright where it knows them by name: exact match and a name of its own.
    writer.setPageSize(QPageSize(QSizeF(first.width, first.height), QPageSize::Millimeter,
                                 QStringLiteral("kerfwall"), QPageSize::ExactMatch));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    QPainter painter(&writer);
    std::size_t done = 0;
    for (const PaperPage& page : pages) {
        if (done > 0) writer.newPage();
        painter.save();
        painter.scale(kResolution / 25.4, kResolution / 25.4);
        page.paint(painter);
        painter.restore();
        ++done;
        if (progress && !progress(done, pages.size())) return std::nullopt;
    }
    painter.end();
    return bytes;
}

/// The page's box exactly as large as asked for. The first writer rounds it to whole points and hangs
/// the drawing on the rounded page's top.
void setExactBox(QPDFObjectHandle page, const PaperPage& size) {
    const double rounded = page.getKey("/MediaBox").getArrayItem(3).getNumericValue();
    QPDFObjectHandle box = QPDFObjectHandle::newArray();
    box.appendItem(QPDFObjectHandle::newInteger(0));
    box.appendItem(QPDFObjectHandle::newReal(rounded - size.height * kPointsPerMm, 6));
    box.appendItem(QPDFObjectHandle::newReal(size.width * kPointsPerMm, 6));
    box.appendItem(QPDFObjectHandle::newReal(rounded, 6));
    page.replaceKey("/MediaBox", box);
}

QByteArray finished(const QByteArray& raw, const PaperPage& size) {
    QPDF pdf;
    pdf.processMemoryFile("papers", raw.constData(), static_cast<std::size_t>(raw.size()));
    for (QPDFPageObjectHelper& page : QPDFPageDocumentHelper(pdf).getAllPages()) {
        setExactBox(page.getObjectHandle(), size);
    }
    QPDFObjectHandle preferences = QPDFObjectHandle::newDictionary();
    preferences.replaceKey("/PrintScaling", QPDFObjectHandle::newName("/None"));
    pdf.getRoot().replaceKey("/ViewerPreferences", preferences);
    pdf.getRoot().removeKey("/Metadata");
    QPDFObjectHandle info = pdf.getTrailer().getKey("/Info");
    if (info.isDictionary()) {
        info.removeKey("/CreationDate");
        info.removeKey("/ModDate");
        info.removeKey("/Producer");
    }
    QPDFWriter writer(pdf);
    writer.setOutputMemory();
    writer.setDeterministicID(true);
    writer.write();
    const std::shared_ptr<Buffer> buffer = writer.getBufferSharedPointer();
    return {reinterpret_cast<const char*>(buffer->getBuffer()), static_cast<qsizetype>(buffer->getSize())};
}

}  // namespace

std::expected<QByteArray, QString> pdfOf(const std::vector<PaperPage>& pages, const QString& title,
                                         const PaperProgress& progress) {
    try {
        const std::optional<QByteArray> raw = painted(pages, title, progress);
        if (!raw) return std::unexpected(stoppedSentence());
        return finished(*raw, pages.front());
    } catch (const std::exception& trouble) {
        return std::unexpected(
            PaperWords::tr("The PDF of \u201c%1\u201d could not be made (%2); please try again.")
                .arg(title, QString::fromLocal8Bit(trouble.what())));
    }
}

QString stoppedSentence() { return PaperWords::tr("Stopped; nothing was written."); }

}  // namespace kerfwall

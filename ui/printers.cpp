// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/printers.h"

#include <QPageLayout>
#include <QPageSize>
#include <QPrinter>
#include <QPrinterInfo>
#include <QSettings>
#include <algorithm>

#include "core/drawing/paper_lie.h"

namespace kerfwall {
namespace {

constexpr double kLeastMargin = 6.35;  // mm, of the trade
const QString kChosen = QStringLiteral("printer");

QString keyOf(const QString& printer, const char* side) {
    QString name = printer.isEmpty() ? QStringLiteral("(pdf)") : printer.simplified();
    return QStringLiteral("printScale/%1/%2").arg(name.replace(QLatin1Char('/'), QLatin1Char('-')), QString::fromLatin1(side));
}

QPageSize pageSizeOf(const Paper& paper) {
    const auto [low, high] = std::minmax(paper.width, paper.height);
    return QPageSize(QSizeF(low, high), QPageSize::Millimeter, QString(), QPageSize::FuzzyMatch);
}

}  // namespace

QStringList printersHere() {
    QStringList names = QPrinterInfo::availablePrinterNames();
    const QString usual = QPrinterInfo::defaultPrinterName();
    if (names.removeOne(usual)) names.prepend(usual);
    return names;
}

QString chosenPrinter() { return QSettings().value(kChosen).toString(); }

void choosePrinter(const QString& printer) { QSettings().setValue(kChosen, printer); }

std::optional<PrintScale> keptScale(const QString& printer) {
    const QSettings settings;
    const double x = settings.value(keyOf(printer, "short")).toDouble();
    const double y = settings.value(keyOf(printer, "long")).toDouble();
    if (x <= 0 || y <= 0) return std::nullopt;
    return PrintScale{x, y};
}

void keepScale(const QString& printer, const PrintScale& scale) {
    QSettings settings;
    settings.setValue(keyOf(printer, "short"), scale.x);
    settings.setValue(keyOf(printer, "long"), scale.y);
}

double leastMarginOf(const QString& printer, const Paper& paper) {
    const QPrinterInfo info = QPrinterInfo::printerInfo(printer);
    if (printer.isEmpty() || info.isNull()) return kLeastMargin;
    QPrinter asked(info);
    asked.setPageSize(pageSizeOf(paper));
    QPageLayout layout = asked.pageLayout();
    layout.setUnits(QPageLayout::Millimeter);
    const QMarginsF blank = layout.minimumMargins();
    return std::max({kLeastMargin, blank.left(), blank.right(), blank.top(), blank.bottom()});
}

void setUp(QPrinter& printer, const Paper& paper) {
    printer.setPageSize(pageSizeOf(paper));
    printer.setPageOrientation(liesOnItsSide(paper) ? QPageLayout::Landscape : QPageLayout::Portrait);
    printer.setFullPage(true);
}

}  // namespace kerfwall

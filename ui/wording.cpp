// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wording.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

#include "core/says/length_text.h"

namespace kerfwall {
namespace {

constexpr int kMostDecimals = 3;        // a thousandth of a millimetre is beyond any rule
constexpr double kShownAlike = 5e-5;    // mm; below it two lengths read the same

QString text(const char* source) { return QCoreApplication::translate("kerfwall::Wording", source); }

int fieldDecimals(double mm) {
    double scale = 10;
    for (int decimals = 1; decimals < kMostDecimals; ++decimals, scale *= 10) {
        if (std::abs(std::round(mm * scale) / scale - mm) < kShownAlike) return decimals;
    }
    return kMostDecimals;
}

}  // namespace

QString edgeText(Edge edge) {
    switch (edge) {
        case Edge::Bottom: return text("bottom edge");
        case Edge::Right: return text("right edge");
        case Edge::Top: return text("top edge");
        case Edge::Left: return text("left edge");
    }
    return {};
}

QString edgeCountText(Edge edge) {
    switch (edge) {
        case Edge::Bottom: return text("bottom edge from the left");
        case Edge::Right: return text("right edge from the bottom");
        case Edge::Top: return text("top edge from the right");
        case Edge::Left: return text("left edge from the top");
    }
    return {};
}

QString baseText(const Base& base) {
    if (const auto* edge = std::get_if<Edge>(&base)) return edgeText(*edge);
    return text("line %1").arg(QString::fromStdString(std::get<LineId>(base)));
}

QString cutoutText(const std::string& id) {
    const QString name = QString::fromStdString(id);
    return name.startsWith(QStringLiteral("cutout")) ? name : text("cutout %1").arg(name);
}

char decimalSign() { return QLocale().decimalPoint() == QStringLiteral(",") ? ',' : '.'; }

QString lengthFor(double mm, Units units) {
    return QString::fromStdString(lengthText(mm, units, fieldDecimals(mm), decimalSign()));
}

QString lengthUnitFor(double mm, Units units) {
    return QString::fromStdString(lengthWithUnit(mm, units, fieldDecimals(mm), decimalSign()));
}

QString sizeFor(double mm, Units units) {
    // A hundredth is as fine as a calliper reads.
    QString size = lengthFor(std::round(mm * 100) / 100, units);
    if (units == Units::Millimetres && size.endsWith(QLatin1Char(decimalSign()) + QStringLiteral("0"))) size.chop(2);
    return size;
}

QString areaFor(double squareMm, Units units) {
    constexpr double kSquareCentimetre = 100;
    const bool inches = units == Units::Inches;
    const double area = squareMm / (inches ? kMillimetresPerInch * kMillimetresPerInch : kSquareCentimetre);
    QString number = QString::number(area, 'f', inches || area < 10 ? 2 : 1);
    number.replace(QLatin1Char('.'), QLatin1Char(decimalSign()));
    return number + (inches ? text(" in²") : text(" cm²"));
}

QString extentFor(const Box& box, Units units) {
    return text("%1 × %2").arg(sizeFor(box.high.x - box.low.x, units), sizeFor(box.high.y - box.low.y, units));
}

QString angleFor(double degrees) {
    QString number = QString::number(std::round(degrees * 1000) / 1000, 'f', 3);
    while (number.endsWith(QLatin1Char('0'))) number.chop(1);
    if (number.endsWith(QLatin1Char('.'))) number.chop(1);
    if (number == QStringLiteral("-0")) number = QStringLiteral("0");
    number.replace(QLatin1Char('.'), QLatin1Char(decimalSign()));
    return number + QChar(0x00b0);
}

}  // namespace kerfwall

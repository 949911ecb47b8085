// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/exact_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "core/says/length_text.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

QString text(const char* source) { return QCoreApplication::translate("kerfwall::JobCard", source); }

/// Up to the next step of so many decimals: what is told is never less than what may be.
QString roundedUp(double value, int decimals) {
    constexpr double kSlack = 1e-6;  // of a step
    const double step = std::pow(10.0, -decimals);
    QString number = QString::number(std::ceil(value / step - kSlack) * step, 'f', decimals);
    while (number.contains(QLatin1Char('.')) && (number.endsWith(QLatin1Char('0')) || number.endsWith(QLatin1Char('.')))) number.chop(1);
    return number.replace(QLatin1Char('.'), QLatin1Char(decimalSign()));
}

QString lengthUp(double mm, Units units) {
    return units == Units::Inches ? text("%1 in").arg(roundedUp(mm / kMillimetresPerInch, 3)) : roundedUp(mm, 2);
}

QString classWords(std::optional<ToleranceClass> keeps) {
    return keeps ? text("ISO 2768-1 %1").arg(QString::fromStdString(classWord(*keeps))) : text("no class of ISO 2768-1");
}

}  // namespace

QString exactWords(const Exactness& size, Units units) {
    return text("± %1, at worst %2 (%3)").arg(lengthUp(size.plusMinus.likely, units), lengthUp(size.plusMinus.worst, units),
                                             classWords(size.keeps));
}

QString exactSentences(const Exactness& size, double mm, Units units) {
    QString sentences = text("Likely within ± %1, from all the settings it depends on; about 95 of 100 within ± %2, none beyond ± %3.")
                            .arg(lengthUp(size.plusMinus.likely, units), lengthUp(expandedUncertainty(size.plusMinus), units),
                                 lengthUp(size.plusMinus.worst, units));
    const auto allowed = size.keeps ? lengthTolerance(*size.keeps, mm) : std::nullopt;
    if (allowed) {
        sentences += text(" Class %1 of ISO 2768-1 allows ± %2 here.").arg(QString::fromStdString(classWord(*size.keeps)), lengthUp(*allowed, units));
    }
    return sentences;
}

QString angleExactWords(const CutoutExactness& cutout) {
    std::optional<Exactness> farthest;
    for (const auto& angle : cutout.angles) {
        if (!angle) continue;
        if (!farthest) farthest = angle;
        // No class is coarser than any.
        farthest->keeps = farthest->keeps && angle->keeps ? std::max(farthest->keeps, angle->keeps) : std::nullopt;
        farthest->plusMinus = largerOf(farthest->plusMinus, angle->plusMinus);
    }
    if (!farthest) return {};
    const QString degrees = QStringLiteral("°");
    return text("angles ± %1, at worst %2 (%3)").arg(roundedUp(farthest->plusMinus.likely, 2) + degrees,
                                                   roundedUp(farthest->plusMinus.worst, 2) + degrees, classWords(farthest->keeps));
}

}  // namespace kerfwall

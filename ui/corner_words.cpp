// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/corner_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <cmath>

#include "core/geometry/boring.h"
#include "core/shop/bore.h"
#include "core/shop/finding_words.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kSeenStep = 0.005;  // mm; less reads as 0.00

QString text(const char* source) { return QCoreApplication::translate("kerfwall::Corner", source); }

}  // namespace

QString cornerText(const Corner& corner) {
    return QString::fromStdString(corner.first) + QLatin1Char(' ') + QString::fromStdString(corner.second);
}

QString regimeText(Regime regime) {
    switch (regime) {
        case Regime::Sound: return text("clean: one arc from line to line");
        case Regime::Pivot: return text("the bearing turns on both kerf mouths: the corner is gone");
        case Regime::TwoDips: return text("two hollows, the corner stands between them");
        case Regime::DeepDip: return text("deep hollows beside the corner");
        case Regime::FallsIn: return text("the bearing falls into the kerf");
        case Regime::Bored: return text("bored before the kerfs");
    }
    return {};
}

QString boreText(const Project& project, double radius) {
    const QString across = sizeFor(2 * radius, project.units);
    const BoreTool tool = boreToolFor(benchOf(project), radius);
    if (tool.drill) return text("the %1 bore at hand").arg(across);
    return tool.pivotToFar ? text("%1 across on the circle jig").arg(across) : text("no bore of %1 at hand").arg(across);
}

QString cornerNote(const Project& project, const Corner& corner) {
    QStringList lines;
    const QString angle = angleFor(std::round(corner.angle * 10) / 10);
    if (!(corner.radius > 0)) {
        lines << text("Corner %1, %2").arg(cornerText(corner), angle) << text("points into the waste: it stays as it is sawn");
    } else {
        lines << text("Corner %1, %2, radius %3").arg(cornerText(corner), angle, sizeFor(corner.radius, project.units))
              << (corner.regime == Regime::Bored ? text("bored before the kerfs: %1").arg(boreText(project, corner.radius)) : regimeText(corner.regime));
    }
    if (corner.step >= kSeenStep) lines << text("bites %1 past the lines").arg(QString::fromStdString(lengthWords(project, corner.step)));
    return lines.join(QLatin1Char('\n'));
}

}  // namespace kerfwall

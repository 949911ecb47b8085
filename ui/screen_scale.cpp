// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/screen_scale.h"

#include <QScreen>
#include <QSettings>

namespace kerfwall {
namespace {

constexpr double kInch = 25.4;
// What a screen says of itself is believed between these; televisions and virtual screens tell nonsense.
constexpr double kFewestDots = 50;   // pixels to the inch
constexpr double kMostDots = 400;
constexpr double kCommonDots = 96;   // CSS's inch

/// Kept in the screen's own dots, which no scale of the desktop changes.
QString keyOf(const QScreen& screen) {
    const QStringList parts{screen.manufacturer(), screen.model(), screen.serialNumber(), screen.name()};
    return QStringLiteral("dotsPerMm/") + parts.join(QLatin1Char(' ')).simplified().replace(QLatin1Char('/'), QLatin1Char('-'));
}

}  // namespace

bool isMeasured(const QScreen& screen) { return QSettings().value(keyOf(screen)).toDouble() > 0; }

double pixelsPerMm(const QScreen& screen) {
    const double measured = QSettings().value(keyOf(screen)).toDouble();
    if (measured > 0) return measured / screen.devicePixelRatio();
    const double said = screen.physicalDotsPerInch();
    return (said >= kFewestDots && said <= kMostDots ? said : kCommonDots) / kInch;
}

void keepPixelsPerMm(const QScreen& screen, double measured) {
    QSettings().setValue(keyOf(screen), measured * screen.devicePixelRatio());
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/step_figures.h"

#include <QEvent>
#include <QPainter>
#include <QScreen>
#include <algorithm>
#include <cmath>

#include "ui/lettering.h"
#include "ui/look.h"
#include "ui/screen_scale.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kFigureMm = 10;    // a figure's height
constexpr double kUnitShare = 0.5;  // of the figures' size
constexpr double kWordShare = 0.6;  // of a value in words, not in figures
constexpr double kLeastShare = 0.6;  // of the usual size
constexpr int kBetween = 28;        // pixels
constexpr int kUnder = 10;

QFont figureFont(double size) {
    QFont font = letteringFont(true);
    font.setPixelSize(std::max(8, static_cast<int>(std::lround(size))));
    font.setHintingPreference(QFont::PreferDefaultHinting);
    return font;
}

/// Letters of that size stand `kFigureMm` high.
double lettersFor(const QScreen& screen) {
    const QFontMetricsF metrics(letteringFont(true));
    return kFigureMm * pixelsPerMm(screen) * kLetteringSize / metrics.capHeight();
}

}  // namespace

StepFigures::StepFigures(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("stepFigures"));
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void StepFigures::show(const std::vector<SettingFigure>& figures) {
    m_figures = figures;
    for (SettingFigure& figure : m_figures) figure.value.replace(QLatin1Char('.'), QLatin1Char(decimalSign()));
    QStringList words;
    for (const SettingFigure& figure : m_figures) {
        words << figure.caption + QLatin1Char(' ') + figure.value + QLatin1Char(' ') + figure.unit;
    }
    setAccessibleName(words.join(QStringLiteral(", ")));
    setVisible(!m_figures.empty());
    updateGeometry();
    update();
}

int StepFigures::figureHeight() const {
    return static_cast<int>(std::lround(QFontMetricsF(figureFont(lettersFor(*screen()))).capHeight()));
}

double StepFigures::widthOf(const SettingFigure& figure, double size) const {
    const double value = QFontMetricsF(figureFont(size)).horizontalAdvance(figure.value);
    const double unit = QFontMetricsF(figureFont(size * kUnitShare)).horizontalAdvance(QLatin1Char(' ') + figure.unit);
    const double caption = QFontMetricsF(font()).horizontalAdvance(figure.caption);
    return std::max(caption, value + (figure.unit.isEmpty() ? 0 : unit));
}

/// In two rows if they can be; not so much smaller that they could no longer be read across a bench.
std::vector<StepFigures::Placed> StepFigures::placed(int width) const {
    const double whole = lettersFor(*screen());
    double size = whole;
    std::vector<Placed> all = placed(width, size);
    while (!all.empty() && all.back().room.top() > 1.5 * all.back().room.height() && size > kLeastShare * whole) {
        size *= 0.95;
        all = placed(width, size);
    }
    return all;
}

std::vector<StepFigures::Placed> StepFigures::placed(int width, double usual) const {
    std::vector<Placed> all;
    double x = 0;
    double y = 0;
    for (const SettingFigure& figure : m_figures) {
        const bool isNumber = std::ranges::any_of(figure.value, [](QChar letter) { return letter.isDigit(); });
        double size = isNumber ? usual : kWordShare * usual;
        while (size > usual / 3 && widthOf(figure, size) > width) size *= 0.95;
        const double wide = widthOf(figure, size);
        const double high = QFontMetricsF(font()).height() + 1.25 * QFontMetricsF(figureFont(usual)).capHeight();
        if (x > 0 && x + wide > width) {
            x = 0;
            y += high + kUnder;
        }
        all.push_back({figure, QRectF(x, y, wide, high), size});
        x += wide + kBetween;
    }
    return all;
}

int StepFigures::heightForWidth(int width) const {
    const std::vector<Placed> all = placed(std::max(width, 1));
    return all.empty() ? 0 : static_cast<int>(std::ceil(all.back().room.bottom())) + 2;
}

QSize StepFigures::sizeHint() const { return {400, heightForWidth(width() > 0 ? width() : 400)}; }

void StepFigures::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    for (const Placed& each : placed(width())) {
        painter.setFont(font());
        painter.setPen(colours().faint);
        painter.drawText(QPointF(each.room.left(), each.room.top() + painter.fontMetrics().ascent()), each.figure.caption);
        painter.setFont(figureFont(each.size));
        painter.setPen(colours().ink);
        const QPointF foot(each.room.left(), each.room.bottom() - 1);
        painter.drawText(foot, each.figure.value);
        const double value = QFontMetricsF(painter.font()).horizontalAdvance(each.figure.value);
        painter.setFont(figureFont(each.size * kUnitShare));
        painter.setPen(colours().faint);
        const QString gap = each.figure.unit == QStringLiteral("\"") ? QString() : QStringLiteral(" ");
        painter.drawText(foot + QPointF(value, 0), gap + each.figure.unit);
    }
}

void StepFigures::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) updateGeometry();
    QWidget::changeEvent(event);
}

}  // namespace kerfwall

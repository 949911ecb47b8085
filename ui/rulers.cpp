// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rulers.h"

#include <QPainter>
#include <cmath>

#include "core/says/length_text.h"
#include "ui/look.h"

namespace kerfwall {
namespace {

constexpr double kLabelRoom = 56;  // pixels from number to number
constexpr double kTickRoom = 5;    // pixels from mark to mark
constexpr double kInch = 25.4;

QString numberText(double mm, Units units) {
    if (units == Units::Inches) return QString::fromStdString(lengthText(mm, units));
    return QString::number(mm, 'f', mm == std::round(mm) ? 0 : 1);
}

struct Ruler {
    QPainter& painter;
    const ViewScale& scale;
    Units units;
    RulerMarks marks;

    void level(const QRect& strip) const;
    void upright(const QRect& strip) const;
    bool isLabelled(long step) const { return step % std::lround(marks.labelled / marks.fine) == 0; }
};

void Ruler::level(const QRect& strip) const {
    const long first = std::lround(std::ceil(scale.toPanel(strip.topLeft()).x / marks.fine));
    const long last = std::lround(std::floor(scale.toPanel(strip.topRight()).x / marks.fine));
    for (long step = first; step <= last; ++step) {
        const double x = std::round(scale.toScreen({static_cast<double>(step) * marks.fine, 0}).x());
        const bool labelled = isLabelled(step);
        painter.setPen(colours().faint);
        painter.drawLine(QPointF(x, strip.bottom() - (labelled ? 9 : 4)), QPointF(x, strip.bottom()));
        if (!labelled) continue;
        const QRectF room(x - kLabelRoom / 2, strip.top(), kLabelRoom, strip.height() - 9);
        const QString number = numberText(static_cast<double>(step) * marks.fine, units);
        const double half = painter.fontMetrics().horizontalAdvance(number) / 2.0;
        if (x - half < strip.left() || x + half > strip.right()) continue;  // no number is cut off
        painter.drawText(room, Qt::AlignHCenter | Qt::AlignVCenter, number);
    }
}

void Ruler::upright(const QRect& strip) const {
    const long first = std::lround(std::ceil(scale.toPanel(strip.bottomLeft()).y / marks.fine));
    const long last = std::lround(std::floor(scale.toPanel(strip.topLeft()).y / marks.fine));
    for (long step = first; step <= last; ++step) {
        const double y = std::round(scale.toScreen({0, static_cast<double>(step) * marks.fine}).y());
        const bool labelled = isLabelled(step);
        painter.setPen(colours().faint);
        painter.drawLine(QPointF(strip.right() - (labelled ? 9 : 4), y), QPointF(strip.right(), y));
        if (!labelled) continue;
        const QRectF room(strip.left(), y - 9, strip.width() - 12, 18);
        const double half = painter.fontMetrics().ascent() / 2.0;
        if (y - half < strip.top() || y + half > strip.bottom()) continue;
        painter.drawText(room, Qt::AlignRight | Qt::AlignVCenter, numberText(static_cast<double>(step) * marks.fine, units));
    }
}

}  // namespace

RulerMarks rulerMarks(double pixelsPerMm, Units units) {
    if (units == Units::Inches) {
        double labelled = kInch / 16;
        while (labelled * pixelsPerMm < kLabelRoom) labelled *= 2;
        double fine = labelled;
        while (fine / 2 * pixelsPerMm >= kTickRoom && fine / 2 >= kInch / 64 && labelled / fine < 8) fine /= 2;
        return {labelled, fine};
    }
    double labelled = 1;
    for (int i = 0; labelled * pixelsPerMm < kLabelRoom; ++i) labelled *= i % 3 == 1 ? 2.5 : 2;
    double fine = labelled / 10;
    if (fine * pixelsPerMm < kTickRoom) fine = labelled / 5;
    return {labelled, fine};
}

void paintRulers(QPainter& painter, const QRect& area, const ViewScale& scale, Units units, QPointF pointer) {
    const QRect level(area.left() + kRulerWidth, area.top(), area.width() - kRulerWidth, kRulerHeight);
    const QRect upright(area.left(), area.top() + kRulerHeight, kRulerWidth, area.height() - kRulerHeight);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);  // its lines lie on whole pixels
    QFont font = painter.font();
    font.setPixelSize(11);
    painter.setFont(font);
    painter.fillRect(QRect(area.left(), area.top(), area.width(), kRulerHeight), colours().desk);
    painter.fillRect(upright, colours().desk);
    const Ruler ruler{painter, scale, units, rulerMarks(scale.perMm, units)};
    painter.setClipRect(level);
    ruler.level(level);
    painter.setClipRect(upright);
    ruler.upright(upright);
    painter.setClipping(false);
    painter.setPen(QPen(colours().accent, 1));
    if (pointer.x() > level.left()) painter.drawLine(QPointF(pointer.x(), level.top() + 12), QPointF(pointer.x(), level.bottom()));
    if (pointer.y() > upright.top()) painter.drawLine(QPointF(upright.right() - 12, pointer.y()), QPointF(upright.right(), pointer.y()));
    painter.restore();
}

}  // namespace kerfwall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/place_picture.h"

#include <QPainter>

#include "ui/screen_painting.h"

namespace kerfwall {
namespace {

constexpr QSize kUsualSize{324, 150};      // pixels
constexpr double kScreenMm = 25.4 / 96;    // mm of a pixel (W3C CSS Values 3)
constexpr double kRing = 13;               // pixels: the radius of the ring round the place

}  // namespace

PlacePicture::PlacePicture(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("placePicture"));
    setFixedHeight(kUsualSize.height());
    setAccessibleName(tr("Picture of the place"));
    hide();
}

void PlacePicture::show(const Project& project, const Solved& solved, const Finding& finding) {
    m_shown = closeUp(project, solved, finding, {kUsualSize.width() * kScreenMm, kUsualSize.height() * kScreenMm});
    setVisible(m_shown.has_value());
    if (m_shown) setAccessibleDescription(QString::fromStdString(m_shown->words));
    setToolTip(accessibleDescription());
    update();
}

void PlacePicture::paintEvent(QPaintEvent*) {
    if (!m_shown) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF frame = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.fillRect(frame, colours().desk);
    painter.setClipRect(frame);
    ViewScale scale;
    scale.perMm = width() / m_shown->across;
    scale.origin = frame.center() - (scale.toScreen(m_shown->middle) - scale.origin);
    paintOnScreen(painter, m_shown->drawing, scale);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(drawingColours().work, 2));
    painter.drawEllipse(frame.center(), kRing, kRing);
    painter.setPen(QPen(colours().rule, 1));
    painter.drawRect(frame);
}

}  // namespace kerfwall

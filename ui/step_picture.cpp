// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/step_picture.h"

#include <QPainter>

#include "ui/screen_painting.h"

namespace kerfwall {
namespace {

constexpr double kScreenMm = 25.4 / 96;  // mm of a pixel (W3C CSS Values 3)

}  // namespace

StepPicture::StepPicture(const Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    setObjectName(QStringLiteral("stepPicture"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void StepPicture::show(std::size_t step) {
    m_step = step;
    renew();
}

void StepPicture::renew() {
    const OrderOfWork& order = m_session.order();
    if (m_step >= order.steps.size()) return;
    m_room = stepRoom(m_session.project(), m_session.solved(), order, m_step);
    m_scale = fittingScale(m_room, width() * kScreenMm, height() * kScreenMm);
    m_drawing = stepDrawing(m_session.project(), m_session.solved(), order, m_step, m_scale);
    update();
}

void StepPicture::resizeEvent(QResizeEvent*) { renew(); }

void StepPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), drawingColours().ground);
    const double perMm = 1 / (m_scale * kScreenMm);
    const Point middle = 0.5 * (m_drawing.bounds.low + m_drawing.bounds.high);
    const QPointF origin(width() / 2.0 - middle.x * perMm, height() / 2.0 + middle.y * perMm);
    paintDrawing(painter, m_drawing, drawingColours(), screenView(origin, perMm));
}

}  // namespace kerfwall

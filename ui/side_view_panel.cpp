// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/side_view_panel.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "core/drawing/side_view.h"
#include "ui/look.h"
#include "ui/rulers.h"
#include "ui/screen_painting.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr int kHeight = 176;          // pixels of the whole view
constexpr double kTop = 62;           // pixels from its top to the layout face
constexpr double kThickness = 62;     // pixels the panel's thickness is drawn with at least
constexpr double kMostLarger = 20;

}  // namespace

SideViewPanel::SideViewPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    setObjectName(QStringLiteral("sideView"));
    setFixedHeight(kHeight);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("Side view at the cutting line"));
    connect(&m_session, &Session::changed, this, qOverload<>(&SideViewPanel::update));
}

void SideViewPanel::follow(const ViewScale& plan) {
    m_plan = plan;
    update();
}

double SideViewPanel::exaggeration() const {
    const double plain = m_session.project().panel.thickness * m_plan.perMm;
    const double larger = std::clamp(kThickness / plain, 1.0, kMostLarger);
    return std::round(larger * 2) / 2;  // halves read well beside the heading
}

void SideViewPanel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), colours().desk);
    paintProjection(painter, kTop);
    const Drawing drawing = sideView(m_session.project(), m_session.solved(), m_session.cutHeight(), exaggeration(),
                                     m_plan.markScale());
    paintOnScreen(painter, drawing, {m_plan.perMm, QPointF(m_plan.origin.x(), kTop)});
    paintHeading(painter);
    if (hasFocus()) {
        painter.setPen(QPen(colours().accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void SideViewPanel::paintHeading(QPainter& painter) const {
    const double left = std::max<double>(kRulerWidth + 4, m_plan.origin.x());
    const double right = std::min<double>(width() - 16, m_plan.toScreen({m_session.project().panel.width, 0}).x());
    QFont bold = font();
    bold.setBold(true);
    painter.setFont(bold);
    painter.setPen(colours().ink);
    const QString title = tr("Side view at the cutting line");
    const double titleWidth = painter.fontMetrics().horizontalAdvance(title) + 18;
    painter.setFont(font());
    const QString cut = tr("%1 above the bottom edge").arg(lengthUnitFor(m_session.cutHeight(), m_session.project().units));
    const double larger = exaggeration();
    const QString note = larger == 1 ? cut : cut + tr(" · heights %1 × larger").arg(larger);
    // The note ends with the panel where there is room, else follows the title; both move left to stay in view.
    const double noteWidth = painter.fontMetrics().horizontalAdvance(note);
    const double begin = std::max<double>(kRulerWidth + 4, std::min(left, width() - 16 - titleWidth - noteWidth));
    painter.setPen(colours().faint);
    painter.drawText(QPointF(std::max(begin + titleWidth, right - noteWidth), 20), note);
    painter.setFont(bold);
    painter.setPen(colours().ink);
    painter.drawText(QPointF(begin, 20), title);
}

void SideViewPanel::paintProjection(QPainter& painter, double top) const {
    QColor thin = colours().faint;
    thin.setAlpha(140);
    painter.setPen(QPen(thin, 1, Qt::DotLine));
    const auto drop = [&](double x) {
        const double at = std::round(m_plan.toScreen({x, 0}).x()) + 0.5;
        painter.drawLine(QPointF(at, 0), QPointF(at, top));
    };
    drop(0);
    drop(m_session.project().panel.width);
    for (const SectionRun& run : sectionAt(m_session.project(), m_session.solved(), m_session.cutHeight())) {
        if (run.kind != SectionRun::Kind::Opening) continue;
        drop(run.from);
        drop(run.to);
    }
}

void SideViewPanel::keyPressEvent(QKeyEvent* event) {
    const double step = event->modifiers() & Qt::ShiftModifier ? 10 : 1;
    if (event->key() == Qt::Key_Up) return m_session.moveCut(m_session.cutHeight() + step);
    if (event->key() == Qt::Key_Down) return m_session.moveCut(m_session.cutHeight() - step);
    QWidget::keyPressEvent(event);
}

}  // namespace kerfwall

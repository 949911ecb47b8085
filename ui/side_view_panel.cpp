// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/side_view_panel.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/hand_step.h"
#include "ui/look.h"
#include "ui/rulers.h"
#include "ui/screen_painting.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

// Pixels.
constexpr int kUnderHeading = 36;      // level: from the heading's line to the layout face, for signs
constexpr int kUnderFace = 130;        // ... and from there to the view's end, for sizes and words
constexpr int kBeforeFace = 60;        // upright: from the view's side to the layout face, for texts and signs
constexpr int kBehindFace = 128;       // ... and from there to the view's end
constexpr double kThickness = 56;      // the panel's thickness is drawn about that large
constexpr double kMostLarger = 20;

}  // namespace

SideViewPanel::SideViewPanel(Session& session, CutDirection direction, QWidget* parent)
    : QWidget(parent), m_session(session), m_direction(direction) {
    setObjectName(isLevel() ? QStringLiteral("sideView") : QStringLiteral("uprightSideView"));
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(isLevel() ? tr("Side view at the level cutting line, seen from the bottom edge")
                                : tr("Side view at the upright cutting line, seen from the right edge"));
    connect(&m_session, &Session::changed, this, qOverload<>(&SideViewPanel::update));
    connect(&m_session, &Session::cutMoved, this, qOverload<>(&SideViewPanel::update));
    settleSize();
}

QSize SideViewPanel::sizeHint() const {
    const int line = fontMetrics().height();
    return {kBeforeFace + kBehindFace, line + kUnderHeading + kUnderFace};
}

void SideViewPanel::settleSize() {
    if (isLevel()) setFixedHeight(sizeHint().height());
    else setFixedWidth(sizeHint().width());
}

void SideViewPanel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) settleSize();
    QWidget::changeEvent(event);
}

void SideViewPanel::follow(const ViewScale& plan) {
    m_plan = plan;
    update();
}

void SideViewPanel::setLayers(const PlanLayers& layers) {
    m_layers = layers;
    update();
}

double SideViewPanel::exaggeration() const {
    const double larger = kThickness / (m_session.project().panel.thickness * m_plan.perMm);
    // Halves read well beside the heading, and whole parts where the zoom makes heights too large for the view.
    if (larger < 0.75) return 1 / std::round(1 / larger);
    return std::max(1.0, std::round(std::min(larger, kMostLarger) * 2) / 2);
}

void SideViewPanel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), colours().desk);
    paintProjection(painter);
    painter.setRenderHint(QPainter::Antialiasing);
    const double wordsFrom = std::max(0.0, m_plan.toPanel(QPointF(kRulerWidth + 4, 0)).x);
    const SideViewLook look{exaggeration(), m_plan.markScale(), wordsFrom, m_layers.kerfs, m_layers.dimensions, m_layers.findings};
    const Drawing drawing = sideView(m_session.project(), m_session.solved(), m_session.findings(),
                                     m_session.cut(m_direction), look);
    const QPointF origin = isLevel() ? QPointF(m_plan.origin.x(), height() - kUnderFace) : QPointF(kBeforeFace, m_plan.origin.y());
    paintOnScreen(painter, drawing, {m_plan.perMm, origin});
    isLevel() ? paintHeadingInLine(painter) : paintHeadingInColumn(painter);
    if (hasFocus()) paintFocus(painter, rect());
}

QString SideViewPanel::noteText() const {
    const QString at = lengthUnitFor(m_session.cut(m_direction).at, m_session.project().units);
    const QString cut = isLevel() ? tr("%1 above the bottom edge").arg(at) : tr("%1 from the left edge").arg(at);
    const double larger = exaggeration();
    if (larger == 1) return cut;
    const QString heights = larger > 1 ? tr("heights %1 × larger").arg(larger) : tr("heights %1 × smaller").arg(1 / larger);
    return cut + (isLevel() ? QStringLiteral(" · ") : QStringLiteral("\n")) + heights;
}

void SideViewPanel::paintHeadingInLine(QPainter& painter) const {
    const double left = std::max<double>(kRulerWidth + 4, m_plan.origin.x());
    const double right = std::min<double>(width() - 16, m_plan.toScreen({m_session.project().panel.width, 0}).x());
    const double baseline = 6 + painter.fontMetrics().ascent();
    QFont bold = font();
    bold.setBold(true);
    painter.setFont(bold);
    const QString title = tr("Side view at the cutting line");
    const double titleWidth = painter.fontMetrics().horizontalAdvance(title) + 18;
    painter.setFont(font());
    // The note ends with the panel where there is room, else follows the title; both move left to stay in view.
    const double noteWidth = painter.fontMetrics().horizontalAdvance(noteText());
    const double begin = std::max<double>(kRulerWidth + 4, std::min(left, width() - 16 - titleWidth - noteWidth));
    const double noteAt = std::max(begin + titleWidth, right - noteWidth);
    painter.setPen(colours().faint);
    painter.drawText(QPointF(noteAt, baseline), painter.fontMetrics().elidedText(noteText(), Qt::ElideRight, static_cast<int>(width() - 6 - noteAt)));
    painter.setFont(bold);
    painter.setPen(colours().ink);
    painter.drawText(QPointF(begin, baseline), title);
}

/// Title and note under one another, on a ground of their own: a panel zoomed in runs on below them.
void SideViewPanel::paintHeadingInColumn(QPainter& painter) const {
    const QRect room(8, 6, width() - 12, height());
    QFont bold = font();
    bold.setBold(true);
    const auto wrapped = [](QPainter& on, const QRect& in, const QString& words) {
        QRect taken;
        on.drawText(in, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, words, &taken);
        return taken.bottom() + 1;
    };
    const QString title = tr("Side view at the cut");
    const int titleHigh = QFontMetrics(bold).boundingRect(room, Qt::TextWordWrap, title).height();
    const int noteHigh = fontMetrics().boundingRect(room, Qt::TextWordWrap, noteText()).height();
    painter.fillRect(QRect(0, 0, width(), 6 + titleHigh + noteHigh + 4), colours().desk);
    painter.setFont(bold);
    painter.setPen(colours().ink);
    const int below = wrapped(painter, room, title);
    painter.setFont(font());
    painter.setPen(colours().faint);
    wrapped(painter, room.adjusted(0, below - room.top(), 0, 0), noteText());
}

void SideViewPanel::paintProjection(QPainter& painter) const {
    QColor thin = colours().faint;
    thin.setAlpha(140);
    painter.setPen(QPen(thin, 1, Qt::DotLine));
    for (const double along : projectedPlaces(m_session.project(), m_session.solved(), m_session.cut(m_direction))) {
        const QPointF at = m_plan.toScreen({along, along});
        const double x = std::round(at.x()) + 0.5;
        const double y = std::round(at.y()) + 0.5;
        if (isLevel()) painter.drawLine(QPointF(x, 0), QPointF(x, height() - kUnderFace));
        else painter.drawLine(QPointF(0, y), QPointF(kBeforeFace, y));
    }
}

/// The keys that move the cutting line on the plan move it here too.
void SideViewPanel::keyPressEvent(QKeyEvent* event) {
    const int more = isLevel() ? Qt::Key_Up : Qt::Key_Right;
    const int less = isLevel() ? Qt::Key_Down : Qt::Key_Left;
    if (event->modifiers() & Qt::ControlModifier || (event->key() != more && event->key() != less)) {
        return QWidget::keyPressEvent(event);
    }
    const double steps = event->modifiers() & Qt::ShiftModifier ? kFarSteps : 1;
    const double by = steps * handStep(m_plan.perMm, m_session.project().units);
    const CuttingLine& cut = m_session.cut(m_direction);
    m_session.moveCut({m_direction, cut.at + (event->key() == more ? by : -by)});
}

}  // namespace kerfwall

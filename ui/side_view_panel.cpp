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
// Upright: from the view's side to the layout face, for texts and signs, and from there to the view's end. Fractions of
// an inch take more room.
constexpr int kBeforeFace = 62;
constexpr int kBeforeFaceInches = 90;
constexpr int kBehindFace = 128;
constexpr int kBehindFaceInches = 146;
constexpr double kThickness = 56;      // the panel's thickness is drawn about that large
constexpr double kMostLarger = 20;
constexpr int kTitleAway = 18;         // from the heading's title to its note
constexpr int kNarrow = 480;           // level: words begin at the view's side

}  // namespace

SideViewPanel::SideViewPanel(Session& session, CutDirection direction, QWidget* parent)
    : QWidget(parent), m_session(session), m_direction(direction) {
    setObjectName(isLevel() ? QStringLiteral("sideView") : QStringLiteral("uprightSideView"));
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(isLevel() ? tr("Side view at the level cutting line, seen from the bottom edge")
                                : tr("Side view at the upright cutting line, seen from the right edge"));
    connect(&m_session, &Session::changed, this, [this] {
        settleSize();
        update();
    });
    connect(&m_session, &Session::cutMoved, this, qOverload<>(&SideViewPanel::update));
    settleSize();
}

QSize SideViewPanel::sizeHint() const {
    const int line = fontMetrics().height();
    const bool inches = m_session.project().units == Units::Inches;
    return {beforeFace() + (inches ? kBehindFaceInches : kBehindFace), line + kUnderHeading + kUnderFace};
}

int SideViewPanel::beforeFace() const {
    return m_session.project().units == Units::Inches ? kBeforeFaceInches : kBeforeFace;
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
    const double seenFrom = m_plan.toPanel(QPointF(kRulerWidth + 4, 0)).x;
    const double wordsFrom = width() < kNarrow ? seenFrom : std::max(0.0, seenFrom);
    const SideViewLook look{exaggeration(), m_plan.markScale(), wordsFrom, m_layers.kerfs, m_layers.dimensions, m_layers.findings};
    const Drawing drawing = sideView(m_session.project(), m_session.solved(), m_session.findings(),
                                     m_session.cut(m_direction), look);
    const QPointF origin = isLevel() ? QPointF(m_plan.origin.x(), height() - kUnderFace) : QPointF(beforeFace(), m_plan.origin.y());
    paintOnScreen(painter, drawing, {m_plan.perMm, origin});
    isLevel() ? paintHeadingInLine(painter) : paintHeadingInColumn(painter);
    if (hasFocus()) paintFocus(painter, rect());
}

QString SideViewPanel::heightsText() const {
    const double larger = exaggeration();
    if (larger == 1) return {};
    return larger > 1 ? tr("heights %1 × larger").arg(larger) : tr("heights %1 × smaller").arg(1 / larger);
}

QString SideViewPanel::cutText() const {
    const QString at = lengthUnitFor(m_session.cut(m_direction).at, m_session.project().units);
    return isLevel() ? tr("%1 above the bottom edge").arg(at) : tr("%1 from the left edge").arg(at);
}

/// The fullest heading that the view has room for.
SideViewPanel::Heading SideViewPanel::headingWithin(double room) const {
    const QString whole = tr("Side view at the cutting line"), brief = tr("Side view");
    const QString cut = cutText();
    const QString both = heightsText().isEmpty() ? cut : cut + QStringLiteral(" · ") + heightsText();
    const QString at = tr("at %1").arg(lengthUnitFor(m_session.cut(m_direction).at, m_session.project().units));
    QFont bold = font();
    bold.setBold(true);
    for (const Heading& heading : {Heading{whole, both}, {brief, both}, {brief, cut}}) {
        const int width = QFontMetrics(bold).horizontalAdvance(heading.title) + kTitleAway + fontMetrics().horizontalAdvance(heading.note);
        if (width <= room) return heading;
    }
    return {brief, at};
}

void SideViewPanel::paintHeadingInLine(QPainter& painter) const {
    constexpr double kAside = 8;
    const double least = kRulerWidth + 4;
    const double left = std::max<double>(least, m_plan.origin.x());
    const double right = std::min<double>(width() - kAside, m_plan.toScreen({m_session.project().panel.width, 0}).x());
    const Heading heading = headingWithin(width() - kAside - least);
    QFont bold = font();
    bold.setBold(true);
    const double titleWidth = QFontMetricsF(bold).horizontalAdvance(heading.title) + kTitleAway;
    const double noteWidth = fontMetrics().horizontalAdvance(heading.note);
    const double baseline = 6 + painter.fontMetrics().ascent();
    // The note ends with the panel where there is room, else follows the title; both move left to stay in view.
    const double begin = std::max(least, std::min(left, width() - kAside - titleWidth - noteWidth));
    const double noteFrom = std::max(begin + titleWidth, right - noteWidth);
    // On a ground of its own: the thin lines that join the views run on behind it.
    painter.fillRect(QRectF(begin - 2, 4, noteFrom + noteWidth - begin + 4, painter.fontMetrics().height() + 4), colours().desk);
    painter.setFont(font());
    painter.setPen(colours().faint);
    painter.drawText(QPointF(noteFrom, baseline), heading.note);
    painter.setFont(bold);
    painter.setPen(colours().ink);
    painter.drawText(QPointF(begin, baseline), heading.title);
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
    const QString title = tr("Side view");
    const QString note = (cutText() + QLatin1Char('\n') + heightsText()).trimmed();
    const int titleHigh = QFontMetrics(bold).boundingRect(room, Qt::TextWordWrap, title).height();
    const int noteHigh = fontMetrics().boundingRect(room, Qt::TextWordWrap, note).height();
    painter.fillRect(QRect(0, 0, width(), 6 + titleHigh + noteHigh + 4), colours().desk);
    painter.setFont(bold);
    painter.setPen(colours().ink);
    const int below = wrapped(painter, room, title);
    painter.setFont(font());
    painter.setPen(colours().faint);
    wrapped(painter, room.adjusted(0, below - room.top(), 0, 0), note);
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
        else painter.drawLine(QPointF(0, y), QPointF(beforeFace(), y));
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
